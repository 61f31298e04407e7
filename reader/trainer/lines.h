// SPDX-License-Identifier: Apache-2.0
// Readings as the lines that the default tester profile reads, without line end.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "reader/tester/reading.h"

namespace walkdown::trainer {

struct LineForm {
  bool check = false;                // "*hh" behind the line
  std::optional<std::uint64_t> seq;  // a line number behind the unit
};

// "M07,R2,P05,2.31,ohm", "M07,R2,P05,OL,ohm,12*3F". At least two decimals, and as many as the value
// has.
[[nodiscard]] std::string line(const tester::Reading& reading, const LineForm& form = {});

}  // namespace walkdown::trainer
