// SPDX-License-Identifier: Apache-2.0
#include "tests/gui/wide_field.h"

#include <cmath>
#include <string>

namespace walkdown::gui {

WideField wide_field(std::uint16_t positions, std::uint16_t modules) {
  WideField out;
  out.plan.catalogue.igniters.push_back({.name = "plain",
                                         .bridge_ohm = {1.5, 2.5},
                                         .source = "made up",
                                         .all_fire_a = {},
                                         .no_fire_a = {},
                                         .test_max_a = {},
                                         .fitted_lead_ohm = {}});
  std::uint16_t module = 0;
  for (std::uint16_t p = 0; p < positions; ++p) {
    const std::string name = "Place " + std::to_string(p + 1);
    const double turn = 6.2832 * p / positions;
    out.site.positions.push_back(
        {name, {10 + 0.004 * std::cos(turn), 50 + 0.002 * std::sin(turn)}, 0});
    for (std::uint16_t m = 0; m < modules; ++m) {
      out.plan.layout.rails[++module] = {16, 16, 16};
      for (std::uint16_t r = 1; r <= 3; ++r) {
        for (std::uint16_t i = 1; i <= 16; ++i) {
          plan::PlannedPin pin;
          pin.id = {module, r, i};
          pin.position = name;
          pin.cue = std::to_string(i);
          out.plan.pins.push_back(pin);
        }
      }
    }
  }
  return out;
}

CellFacts mixed_facts(const Scene& scene) {
  CellFacts facts = facts_of(scene, {});
  for (std::size_t i = 0; i < facts.verdicts.size(); ++i) {
    const bool good = i % 10 != 0;
    facts.verdicts[i] =
        good ? match::Verdict::fits : static_cast<match::Verdict>((i / 10) % match::kVerdicts);
    facts.ohm[i] = 2.0F;
  }
  return facts;
}

}  // namespace walkdown::gui
