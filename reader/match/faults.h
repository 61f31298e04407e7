// SPDX-License-Identifier: Apache-2.0
// Findings about one pin, and the sentences of all findings.
#pragma once

#include <cstdint>
#include <vector>

#include "reader/match/verdict.h"

namespace walkdown::match {

// One finding for every pin that does not fit and that no mistake in `moved` (slot -> yes)
// explains by itself. Unread and stale pins have a verdict and no finding: nothing is known.
[[nodiscard]] std::vector<Finding> faults(const Field& field, const Mixture& mixture,
                                          const State& state, const Judged& judged,
                                          const std::vector<bool>& moved);

}  // namespace walkdown::match
