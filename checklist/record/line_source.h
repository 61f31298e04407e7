// SPDX-License-Identifier: Apache-2.0
// A file cut into lines, with memory for the longest line and no more.
#pragma once

#include <cstdint>
#include <functional>
#include <string>
#include <string_view>

#include "reader/result.h"

namespace walkdown::record {

struct LineSink {
  std::function<bool(std::string_view line)> line;  // without LF; false ends the reading
  std::function<std::size_t()> longest;             // of the line to come
  std::function<void()> too_long;                   // ends the reading
};

// Returns what stands behind the last LF; empty also where the sink ended the reading.
[[nodiscard]] Result<std::string> read_lines(const std::string& path, const LineSink& sink);

}  // namespace walkdown::record
