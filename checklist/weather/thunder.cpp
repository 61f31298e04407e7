// SPDX-License-Identifier: Apache-2.0
#include "checklist/weather/thunder.h"

#include <algorithm>
#include <cmath>

#include "checklist/weather/decimal.h"

namespace walkdown::weather {

std::int64_t speed_of_sound_mm_per_s(std::int64_t temp_milli_degc) {
  const auto bounded = std::clamp<std::int64_t>(temp_milli_degc, -60'000, 60'000);
  const double temp_degc = static_cast<double>(bounded) / 1000;
  return std::llround(331'300 * std::sqrt(1 + temp_degc / 273.15));
}

std::int64_t flash_distance_m(std::int64_t flash_to_bang_ms, std::int64_t temp_milli_degc) {
  const auto time_ms = std::clamp<std::int64_t>(flash_to_bang_ms, 0, 600'000);
  return scaled(time_ms, speed_of_sound_mm_per_s(temp_milli_degc), 1'000'000);
}

void ThunderWait::hear(std::int64_t at_ms, std::optional<std::int64_t> flash_to_bang_ms) {
  const bool near = !flash_to_bang_ms || *flash_to_bang_ms <= rule_.near_ms;
  if (!near && !waiting(at_ms)) return;
  const std::int64_t clear = at_ms + rule_.wait_ms;
  clear_at_ms_ = std::max(clear, clear_at_ms_.value_or(clear));
}

}  // namespace walkdown::weather
