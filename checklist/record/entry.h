// SPDX-License-Identifier: Apache-2.0
// One line of the record, parsed. The bytes that were hashed are the line itself; this is a view
// of it for people and folds.
#pragma once

#include <cstdint>
#include <nlohmann/json.hpp>
#include <string>

namespace walkdown::record {

// `at` is wall time, milliseconds since 1970-01-01T00:00:00Z, written as RFC 3339 with three
// decimals. `up_ms` is the boot clock (CLOCK_BOOTTIME): it runs on through suspend and starts anew
// at a reboot. `body` holds no floating-point number: quantities are whole micro-ohm, millimetres,
// milli-units, and are named so.
struct Entry {
  std::uint64_t n = 0;
  std::int64_t at_ms = 0;
  std::int64_t up_ms = 0;
  std::string kind;
  nlohmann::json body;
};

}  // namespace walkdown::record
