// SPDX-License-Identifier: Apache-2.0
// One thing that is wrong, or looks wrong, in a plan: where it stands, and what would be right.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace walkdown::plan {

struct Problem {
  std::size_t row = 0;  // as a spreadsheet counts: the header is row 1; 0 where no row is meant
  std::string column;   // the plan's own name of it; empty where the whole row is meant
  std::string value;    // what stands there, cut to kMaxShown bytes, control characters replaced
  std::string remedy;   // what would be right

  // "row 12, column pin, 'x': write a whole number from 1 to 9999."
  [[nodiscard]] std::string sentence() const;
};

inline constexpr std::size_t kMaxShown = 80;

// Text from a file, made fit to stand in a sentence: at most kMaxShown bytes, cut between
// characters and marked with "...", control characters as '?', bytes that are not UTF-8 as '?'.
[[nodiscard]] std::string shown(std::string_view raw);

}  // namespace walkdown::plan
