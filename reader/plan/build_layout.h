// SPDX-License-Identifier: Apache-2.0
// The layout from stated module sizes and from the plan. Internal to this folder.
#pragma once

#include <vector>

#include "reader/plan/modules_file.h"
#include "reader/plan/plan.h"
#include "reader/plan/problem.h"

namespace walkdown::plan {

// A pin beyond a stated size is an error; so is a layout beyond the bounds of import.h.
[[nodiscard]] Layout build_layout(const std::vector<PlannedPin>& pins, const ModuleSizes* sizes,
                                  std::vector<Problem>& errors);

}  // namespace walkdown::plan
