// SPDX-License-Identifier: Apache-2.0
// Times as a person types them on the day.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "reader/result.h"

namespace walkdown::cli {

struct TypedTime {
  std::int64_t at_ms = 0;
  std::int64_t utc_offset_min = 0;  // of the clock on the wall there
};

// "21:45" is the next moment at which this computer's wall clock shows it;
// "2026-07-04T21:45:00+02:00" is what it says. usage where it is neither.
Result<TypedTime> typed_time(const std::string& text, std::int64_t now_ms);

// "4.2" -> 4200: a plain decimal number, not negative. usage for anything else.
Result<std::int64_t> typed_milli(const std::string& text, const std::string& what);

}  // namespace walkdown::cli
