// SPDX-License-Identifier: Apache-2.0
// The lines of a file, read and parsed in a thread of their own, so that a verifier hashes while
// the next lines are parsed. Memory: a few blocks of a quarter of a megabyte, or of the longest
// line.
#pragma once

#include <cstddef>
#include <functional>
#include <string>
#include <string_view>

#include "checklist/record/line.h"

namespace walkdown::record {

struct ParsedSink {
  // False ends the reading. The views live for the call.
  std::function<bool(std::string_view line, const Result<LineView>& parsed)> line;
  std::function<void()> too_long;  // of the line to come; ends the reading
};

// Calls the sink in the caller's thread. Returns what stands behind the last LF; empty also where
// the sink ended the reading. io where the file cannot be read.
[[nodiscard]] Result<std::string> read_parsed_lines(const std::string& path,
                                                    const ParsedSink& sink);

}  // namespace walkdown::record
