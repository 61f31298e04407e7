// SPDX-License-Identifier: Apache-2.0
// Mistakes that move loads, told as findings.
#pragma once

#include <vector>

#include "reader/match/explain.h"
#include "reader/match/outcome.h"

namespace walkdown::match {

// From large to small: modules, rails, reversals, shifts, swaps; among equals by pin.
[[nodiscard]] std::vector<Finding> moves(const Field& field, const Explanation& explanation);

}  // namespace walkdown::match
