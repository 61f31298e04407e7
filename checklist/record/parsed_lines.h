// SPDX-License-Identifier: Apache-2.0
// The lines of a file, read, parsed and hashed in threads of their own and given in order. Memory:
// a few blocks of a quarter of a megabyte, or of the longest line.
#pragma once

#include <cstddef>
#include <functional>
#include <string>
#include <string_view>

#include "checklist/record/line.h"
#include "checklist/record/sha256.h"

namespace walkdown::record {

struct ParsedSink {
  // False ends the reading. The views live for the call.
  std::function<bool(std::string_view line, const EntryView& entry, const Hash& leaf)> entry;
  std::function<bool(std::string_view line, const Result<LineView>& parsed)> other;
  std::function<void()> too_long;  // of the line to come; ends the reading
};

// Calls the sink in the caller's thread. Returns what stands behind the last LF; empty also where
// the sink ended the reading. io where the file cannot be read.
[[nodiscard]] Result<std::string> read_parsed_lines(const std::string& path, Bodies bodies,
                                                    const ParsedSink& sink);

}  // namespace walkdown::record
