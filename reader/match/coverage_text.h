// SPDX-License-Identifier: Apache-2.0
// Coverage and alike groups in sentences, for a screen or a printed page.
#pragma once

#include <string>
#include <vector>

#include "reader/match/coverage.h"

namespace walkdown::match {

// "Of 1,128 possible swaps of two pins of a module this test would show 61 %; 12 % no test can."
// One line a kind that is possible at all, then one for the alike groups.
[[nodiscard]] std::vector<std::string> coverage_lines(
    const Coverage& coverage, const std::vector<std::vector<plan::PinId>>& alike);

// What the commonest loads hide: the poor joint and the leak that fit. At most `most` lines.
[[nodiscard]] std::vector<std::string> load_lines(const Coverage& coverage, std::size_t most = 5);

// To be read beside "everything fits": what that does not mean.
[[nodiscard]] std::string fits_only(const Coverage& coverage);

// Pins of one group by runs: "M01/R1/P01 to P04, M01/R2/P03".
[[nodiscard]] std::string runs(const std::vector<plan::PinId>& pins);

}  // namespace walkdown::match
