// SPDX-License-Identifier: Apache-2.0
#include "gui/faults/rounds.h"

namespace walkdown::gui {

std::string last_place(const plan::Plan& plan, const std::vector<RehookRow>& rehooks) {
  for (auto it = rehooks.rbegin(); it != rehooks.rend(); ++it) {
    if (!it->rehook.positions.empty()) return it->rehook.positions.back();
    for (const plan::PinId pin : it->rehook.pins) {
      const plan::PlannedPin* planned = plan.find(pin);
      if (planned != nullptr && !planned->position.empty()) return planned->position;
    }
  }
  return {};
}

}  // namespace walkdown::gui
