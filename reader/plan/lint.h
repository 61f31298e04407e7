// SPDX-License-Identifier: Apache-2.0
// What is allowed in a plan but looks like an oversight. What depends on the tester or on the
// supply is judged in reader/match/current.
#pragma once

#include <vector>

#include "reader/plan/plan.h"
#include "reader/plan/problem.h"

namespace walkdown::plan {

// In the order of rows: a cue without a position (once for the whole plan, as row 1, where no row
// has one), count 0, a lead length without a wire and a wire without a length.
[[nodiscard]] std::vector<Problem> lint(const Plan& plan);

}  // namespace walkdown::plan
