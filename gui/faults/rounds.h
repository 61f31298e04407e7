// SPDX-License-Identifier: Apache-2.0
// Where a walk of the faults starts; its order is desk/round.h.
#pragma once

#include <string>
#include <vector>

#include "checklist/desk/round.h"
#include "gui/live/ledger.h"
#include "reader/plan/plan.h"

namespace walkdown::gui {

using desk::Round;
using desk::round_of;

// Where the crew was last, as far as the record tells: the position of the last re-hook, or of the
// last who went in. Empty: nowhere yet.
[[nodiscard]] std::string last_place(const plan::Plan& plan, const std::vector<RehookRow>& rehooks);

}  // namespace walkdown::gui
