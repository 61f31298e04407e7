// SPDX-License-Identifier: Apache-2.0
// A text file of tester lines, taken as one sweep of the field.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "reader/match/sample.h"
#include "reader/tester/line.h"

namespace walkdown::cli {

struct RejectedLine {
  std::uint64_t line = 0;  // 1-based
  std::string text;        // as received
  std::string why;
};

struct Sweep {
  std::vector<match::Sample> samples;  // in the order of the file
  std::vector<RejectedLine> rejected;
};

[[nodiscard]] Sweep read_sweep(std::string_view bytes, const tester::LineParser& parser);

}  // namespace walkdown::cli
