// SPDX-License-Identifier: Apache-2.0
#include "gui/faults/rounds.h"

#include <ranges>

namespace walkdown::gui {

std::string last_place(const plan::Plan& plan, const std::vector<RehookRow>& rehooks) {
  for (const RehookRow& row : std::ranges::reverse_view(rehooks)) {
    if (!row.rehook.positions.empty()) return row.rehook.positions.back();
    for (const plan::PinId pin : row.rehook.pins) {
      const plan::PlannedPin* planned = plan.find(pin);
      if (planned != nullptr && !planned->position.empty()) return planned->position;
    }
  }
  return {};
}

}  // namespace walkdown::gui
