// SPDX-License-Identifier: Apache-2.0
// Mean wind, gust and trend from samples.
//
// The mean is over 10 minutes (WMO-No. 8) or 2 minutes (US FMH-1); which of them is kept with the
// value, since the two do not compare. The gust is the highest 3-second running mean in the same
// period (WMO-No. 306, regulation 15.5.5), not the highest sample.
#pragma once

#include <cstdint>
#include <optional>
#include <span>

#include "reader/result.h"

namespace walkdown::weather {

inline constexpr std::int64_t kTenMinutes_ms = 600'000;
inline constexpr std::int64_t kTwoMinutes_ms = 120'000;
inline constexpr std::int64_t kGust_ms = 3'000;
// A longer silence of the instrument is a hole in the mean. Common practice, no source.
inline constexpr std::int64_t kLongestGap_ms = 15'000;
// Wind below this change from one half of the period to the other is steady. Common practice, no
// source.
inline constexpr std::int64_t kSteady_mm_per_s = 1'000;

struct Sample {
  std::int64_t up_ms = 0;                 // boot clock
  std::int64_t mm_per_s = 0;              // 0..120000
  std::optional<std::int32_t> from_ddeg;  // where it blows from, tenths of a degree, 0..3599
};

enum class Trend : std::uint8_t { steady, rising, falling };

struct Wind {
  std::int64_t until_up_ms = 0;  // boot clock of the last sample
  std::int64_t period_ms = 0;    // asked for: the averaging time
  std::int64_t covered_ms = 0;   // really covered, with no hole
  std::int64_t mean_mm_per_s = 0;
  std::int64_t gust_mm_per_s = 0;
  int beaufort = 0;                       // of the mean
  Trend trend = Trend::steady;            // second half of the period against the first
  std::optional<std::int32_t> from_ddeg;  // of the mean wind vector; empty when calm or not sent

  // A mean over less than its period is no mean of that period: it must not pass for one.
  [[nodiscard]] bool complete() const { return covered_ms >= period_ms; }
};

// The wind over the period that ends at the last sample. Samples in order of time; those before
// the period are passed over. Errors: bad_input for no sample, samples out of order or out of
// range, a period under the gust's 3 s.
Result<Wind> wind(std::span<const Sample> samples, std::int64_t period_ms);

// The highest 3 s running mean. Only windows that are filled count; while none is, the highest
// sample stands in, which can only be higher. Precondition: not empty, in order of time.
[[nodiscard]] std::int64_t gust_mm_per_s(std::span<const Sample> samples);

}  // namespace walkdown::weather
