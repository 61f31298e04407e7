// SPDX-License-Identifier: Apache-2.0
#include "gui/field/pin_current.h"

#include <algorithm>

namespace walkdown::gui {
namespace {

std::optional<match::MeasuredLoop> loop_of(const match::Outcome& outcome, plan::PinId pin) {
  const auto found = std::lower_bound(
      outcome.pins.begin(), outcome.pins.end(), pin,
      [](const match::PinVerdict& each, plan::PinId wanted) { return each.pin < wanted; });
  if (found == outcome.pins.end() || found->pin != pin) return std::nullopt;
  return match::measured_loop(*found, outcome.field);
}

}  // namespace

std::optional<match::FiringCurrent> current_of(const plan::Plan& plan,
                                               const match::Outcome& outcome, plan::PinId pin) {
  const plan::PlannedPin* wanted = plan.find(pin);
  if (wanted == nullptr) return std::nullopt;
  plan::Plan cue;  // the pins that draw with it, and no others: the answer is the same
  cue.catalogue = plan.catalogue;
  std::vector<match::MeasuredLoop> loops;
  for (const plan::PlannedPin& each : plan.pins) {
    if (each.cue != wanted->cue) continue;
    cue.pins.push_back(each);
    if (const auto loop = loop_of(outcome, each.id)) loops.push_back(*loop);
  }
  for (match::FiringCurrent& each : match::firing_currents(cue, loops)) {
    if (each.pin == pin) return std::move(each);
  }
  return std::nullopt;
}

}  // namespace walkdown::gui
