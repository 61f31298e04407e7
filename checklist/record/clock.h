// SPDX-License-Identifier: Apache-2.0
// Time: the wall clock for people, the boot clock for durations, and RFC 3339 text.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace walkdown::record {

// Both clocks in milliseconds. Handed in wherever time is read, so that tests and the demo may
// lie about it. Called from several threads.
class Clock {
 public:
  Clock() = default;
  Clock(const Clock&) = delete;
  Clock& operator=(const Clock&) = delete;
  Clock(Clock&&) = delete;
  Clock& operator=(Clock&&) = delete;
  virtual ~Clock() = default;
  [[nodiscard]] virtual std::int64_t at_ms() const = 0;  // since 1970-01-01T00:00:00Z; may step
  [[nodiscard]] virtual std::int64_t up_ms() const = 0;  // since boot, through suspend; never back
};

// CLOCK_REALTIME and CLOCK_BOOTTIME.
class SystemClock final : public Clock {
 public:
  [[nodiscard]] std::int64_t at_ms() const override;
  [[nodiscard]] std::int64_t up_ms() const override;
};

// "2026-07-04T19:02:11.123Z": always three decimals, always Z. Years 0000 to 9999.
[[nodiscard]] std::string rfc3339(std::int64_t at_ms);

// Reads exactly what rfc3339() writes: 24 characters, nothing else.
[[nodiscard]] std::optional<std::int64_t> parse_at(std::string_view text);

// Any date-time of RFC 3339: offset or Z, any number of decimals (cut to milliseconds, towards the
// past), a leap second where one can be (23:59:60 UTC on the last day of a month), which is the
// same instant as the second after it. Nothing for what RFC 3339 does not allow: a missing zone, a
// day that the month does not have. Lower-case t and z are allowed there and so here.
[[nodiscard]] std::optional<std::int64_t> parse_rfc3339(std::string_view text);

}  // namespace walkdown::record
