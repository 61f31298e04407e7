// SPDX-License-Identifier: Apache-2.0
#include "checklist/weather/wind.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "checklist/weather/beaufort.h"
#include "checklist/weather/decimal.h"

namespace walkdown::weather {
namespace {

constexpr std::int64_t kFastest_mm_per_s = 120'000;

std::int64_t mean(std::span<const Sample> samples) {
  std::int64_t sum = 0;
  for (const Sample& sample : samples) sum += sample.mm_per_s;
  return scaled(sum, 1, static_cast<std::int64_t>(samples.size()));
}

Done check(std::span<const Sample> samples, std::int64_t period_ms) {
  if (period_ms < kGust_ms) {
    return Error{Code::usage, "the averaging time of a wind must be at least 3 s", "", ""};
  }
  if (samples.empty()) {
    return Error{Code::bad_input, "there is no wind sample", "",
                 "check the instrument's link, or read the wind by hand"};
  }
  std::int64_t before = samples.front().up_ms;
  for (const Sample& sample : samples) {
    if (sample.mm_per_s < 0 || sample.mm_per_s > kFastest_mm_per_s) {
      return Error{Code::bad_input, "a wind sample is outside 0..120 m/s", "",
                   "check the instrument's unit"};
    }
    if (sample.up_ms < before) {
      return Error{Code::bad_input, "wind samples are not in order of time", "", ""};
    }
    before = sample.up_ms;
  }
  return done();
}

// What one sample stands for: the time since the one before, as long as the samples run on.
std::int64_t covered(std::span<const Sample> samples) {
  std::size_t first = samples.size() - 1;
  while (first > 0 && samples[first].up_ms - samples[first - 1].up_ms <= kLongestGap_ms) --first;
  const std::span<const Sample> run = samples.subspan(first);
  if (run.size() < 2) return 0;
  const std::int64_t time = run.back().up_ms - run.front().up_ms;
  return time + time / static_cast<std::int64_t>(run.size() - 1);
}

Trend trend(std::span<const Sample> samples, std::int64_t period_ms) {
  const std::int64_t half = samples.back().up_ms - period_ms / 2;
  const auto middle = std::find_if(samples.begin(), samples.end(),
                                   [&](const Sample& sample) { return sample.up_ms > half; });
  if (middle == samples.begin() || middle == samples.end()) return Trend::steady;
  const auto split = static_cast<std::size_t>(middle - samples.begin());
  const std::int64_t change = mean(samples.subspan(split)) - mean(samples.first(split));
  if (change >= kSteady_mm_per_s) return Trend::rising;
  return change <= -kSteady_mm_per_s ? Trend::falling : Trend::steady;
}

std::optional<std::int32_t> direction(std::span<const Sample> samples) {
  double east = 0;
  double north = 0;
  for (const Sample& sample : samples) {
    if (!sample.from_ddeg) return std::nullopt;
    const double angle = *sample.from_ddeg * std::numbers::pi / 1800;
    east += static_cast<double>(sample.mm_per_s) * std::sin(angle);
    north += static_cast<double>(sample.mm_per_s) * std::cos(angle);
  }
  if (std::hypot(east, north) < 1) return std::nullopt;
  const double ddeg = std::atan2(east, north) * 1800 / std::numbers::pi;
  return (static_cast<std::int32_t>(std::lround(ddeg)) + 3600) % 3600;
}

}  // namespace

std::int64_t gust_mm_per_s(std::span<const Sample> samples) {
  std::int64_t highest_mean = -1;
  std::int64_t highest_sample = 0;
  std::int64_t sum = 0;
  std::size_t first = 0;
  for (std::size_t i = 0; i < samples.size(); ++i) {
    const Sample& last = samples[i];
    sum += last.mm_per_s;
    while (last.up_ms - samples[first].up_ms >= kGust_ms) sum -= samples[first++].mm_per_s;
    highest_sample = std::max(highest_sample, last.mm_per_s);
    const std::int64_t step = i == 0 ? 0 : last.up_ms - samples[i - 1].up_ms;
    if (last.up_ms - samples.front().up_ms + step < kGust_ms) continue;
    highest_mean = std::max(highest_mean, scaled(sum, 1, static_cast<std::int64_t>(i - first + 1)));
  }
  return highest_mean < 0 ? highest_sample : highest_mean;
}

Result<Wind> wind(std::span<const Sample> samples, std::int64_t period_ms) {
  if (const Done checked = check(samples, period_ms); !checked) return checked.error();
  const std::int64_t last = samples.back().up_ms;
  const auto begin = std::find_if(samples.begin(), samples.end(), [&](const Sample& sample) {
    return last - sample.up_ms < period_ms;
  });
  const auto within = samples.subspan(static_cast<std::size_t>(begin - samples.begin()));
  Wind wind;
  wind.until_up_ms = last;
  wind.period_ms = period_ms;
  wind.covered_ms = std::min(covered(samples), period_ms);
  wind.mean_mm_per_s = mean(within);
  wind.gust_mm_per_s = gust_mm_per_s(within);
  wind.beaufort = beaufort(wind.mean_mm_per_s);
  wind.trend = trend(within, period_ms);
  wind.from_ddeg = direction(within);
  return wind;
}

}  // namespace walkdown::weather
