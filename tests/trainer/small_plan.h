// SPDX-License-Identifier: Apache-2.0
// A plan made by hand: two modules, rails of 4 and 3 pins; one of 4. Every load differs by an ohm
// at least, so that a reading tells which load hangs on a pin.
#pragma once

#include "reader/plan/plan.h"
#include "reader/tester/model.h"

namespace walkdown::trainer {

inline plan::Plan small_plan() {
  plan::Plan plan;
  for (int i = 0; i < 12; ++i) {
    plan::Igniter igniter;
    igniter.name = "type-" + std::to_string(i + 1);
    igniter.bridge_ohm = {2.0 * i + 1.99, 2.0 * i + 2.01};
    plan.catalogue.igniters.push_back(igniter);
  }
  plan.catalogue.wires.push_back({"thin", {100, 100}, 0.00393, "invented"});
  plan.catalogue.wiring.contact_ohm = {0, 0.01};
  plan.catalogue.wiring.lead_tol_pct = 0;
  plan.layout.rails = {{1, {4, 3}}, {2, {4}}};
  std::uint16_t igniter = 0;
  const auto add = [&](plan::PinId id, std::uint16_t count, plan::Join join) {
    plan::PlannedPin planned;
    planned.id = id;
    planned.load = {igniter++, count, join, 0, 5};  // 5 m of 100 ohm/km, both ways: 1 ohm
    plan.pins.push_back(planned);
  };
  for (std::uint16_t pin = 1; pin <= 4; ++pin) add({1, 1, pin}, 1, plan::Join::series);
  add({1, 2, 1}, 3, plan::Join::series);
  add({1, 2, 2}, 2, plan::Join::parallel);
  for (std::uint16_t pin = 1; pin <= 3; ++pin) add({2, 1, pin}, 1, plan::Join::series);
  return plan;
}

// A tester without error or noise worth the name.
inline tester::Model exact_tester() {
  tester::Model model;
  model.accuracy_pct = 0;
  model.accuracy_ohm = 0;
  model.noise_ohm = 0;
  return model;
}

}  // namespace walkdown::trainer
