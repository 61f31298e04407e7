// SPDX-License-Identifier: Apache-2.0
#include "reader/plan/lint.h"

#include <algorithm>

namespace walkdown::plan {
namespace {

void lint_pin(const PlannedPin& pin, std::vector<Problem>& out) {
  if (pin.load.count == 0) {
    out.push_back(
        {pin.row, "count", "0", "no igniter is planned here, so this pin must read open"});
  }
  if (pin.load.wire == kNoWire && pin.load.lead_m > 0) {
    out.push_back({pin.row, "wire", "", "a lead without a wire counts as 0 ohm; name its wire"});
  }
  if (pin.load.wire != kNoWire && pin.load.lead_m == 0) {
    out.push_back({pin.row, "lead_m", "", "a wire without a length counts as 0 ohm; give lead_m"});
  }
}

}  // namespace

std::vector<Problem> lint(const Plan& plan) {
  std::vector<Problem> out;
  const bool none = std::all_of(plan.pins.begin(), plan.pins.end(),
                                [](const PlannedPin& pin) { return pin.position.empty(); });
  if (none && !plan.pins.empty()) {
    out.push_back({1, "position", "", "no cue has a position, so no walking order can be given"});
  }
  for (const PlannedPin& pin : plan.pins) {
    if (!none && pin.position.empty()) {
      out.push_back({pin.row, "position", "", "cue " + shown(pin.cue) + " has no position"});
    }
    lint_pin(pin, out);
  }
  std::stable_sort(out.begin(), out.end(),
                   [](const Problem& a, const Problem& b) { return a.row < b.row; });
  return out;
}

}  // namespace walkdown::plan
