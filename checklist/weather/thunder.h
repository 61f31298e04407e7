// SPDX-License-Identifier: Apache-2.0
// Thunder: how far the flash was, and how long to wait after it.
//
// The 30/30 rule: thunder within 30 s of its flash means shelter, and the wait is 30 min after the
// last thunder heard ("Updated Recommendations for Lightning Safety - 1998", BAMS). It cannot warn
// of the first flash.
#pragma once

#include <cstdint>
#include <optional>

namespace walkdown::weather {

// In still dry air, c = 331.3 m/s sqrt(1 + T/273.15). temperature: -60..60 degC in thousandths;
// outside, the nearer bound is taken.
[[nodiscard]] std::int64_t speed_of_sound_mm_per_s(std::int64_t temp_milli_degc);

// How far the flash was, in metres, from the time between seeing and hearing it.
[[nodiscard]] std::int64_t flash_distance_m(std::int64_t flash_to_bang_ms,
                                            std::int64_t temp_milli_degc);

struct ThunderRule {
  std::int64_t near_ms = 30'000;     // at most so long from flash to bang: shelter
  std::int64_t wait_ms = 1'800'000;  // after the last thunder
};

// The wait, on one clock of milliseconds. Takes thunder in any order: the latest one rules.
class ThunderWait {
 public:
  explicit ThunderWait(ThunderRule rule = {}) : rule_(rule) {}

  // Thunder heard at `at_ms`. A flash-to-bang time that was not taken counts as near. Thunder
  // farther off starts no wait, but lengthens one that runs.
  void hear(std::int64_t at_ms, std::optional<std::int64_t> flash_to_bang_ms);

  // Empty when no thunder has been near. Otherwise the moment the wait ends, also if it is past.
  [[nodiscard]] std::optional<std::int64_t> clear_at_ms() const { return clear_at_ms_; }
  [[nodiscard]] bool waiting(std::int64_t now_ms) const {
    return clear_at_ms_ && now_ms < *clear_at_ms_;
  }

 private:
  ThunderRule rule_;
  std::optional<std::int64_t> clear_at_ms_;
};

}  // namespace walkdown::weather
