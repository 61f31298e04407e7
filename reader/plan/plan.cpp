// SPDX-License-Identifier: Apache-2.0
#include "reader/plan/plan.h"

#include <algorithm>

namespace walkdown::plan {

std::uint16_t Layout::pins_on(std::uint16_t module, std::uint16_t rail) const {
  const auto found = rails.find(module);
  if (found == rails.end() || rail == 0 || rail > found->second.size()) return 0;
  return found->second[rail - 1U];
}

const PlannedPin* Plan::find(PinId id) const {
  const auto at =
      std::lower_bound(pins.begin(), pins.end(), id,
                       [](const PlannedPin& pin, PinId wanted) { return pin.id < wanted; });
  return at != pins.end() && at->id == id ? &*at : nullptr;
}

}  // namespace walkdown::plan
