// SPDX-License-Identifier: Apache-2.0
// The gate: whether a release is possible at a moment, and everything that stands against it.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "checklist/day/standing.h"

namespace walkdown::day {

struct Gate {
  std::vector<std::string> against;           // sentences, all of them; empty: open
  std::optional<std::int64_t> until_aged_ms;  // while open: the first item to expire; empty: no end
  std::string first_to_go;                    // id of that item

  [[nodiscard]] bool open() const { return against.empty(); }
};

[[nodiscard]] Gate gate(const View& view, Moment moment);

// Whether the release stands at this moment: it may have fallen since the last entry.
[[nodiscard]] bool stands(const View& view, Moment moment);

}  // namespace walkdown::day
