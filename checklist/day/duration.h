// SPDX-License-Identifier: Apache-2.0
// Spans of time as a checklist writes them: "90s", "15m", "1h30m", "-2h".
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace walkdown::day {

// Hours, minutes, seconds in this order, each at most once, whole numbers; a leading '-' where
// `negative` allows it. At most 48 h. Empty for anything else.
[[nodiscard]] std::optional<std::int64_t> parse_duration(std::string_view text,
                                                         bool negative = false);

// For sentences: "4 min", "1 h 30 min", "45 s"; a duration below zero reads as its size.
[[nodiscard]] std::string say_duration(std::int64_t ms);

// "21:31": hours and minutes of a wall time, shifted from UTC by so many minutes.
[[nodiscard]] std::string say_clock(std::int64_t at_ms, std::int64_t utc_offset_min = 0);

}  // namespace walkdown::day
