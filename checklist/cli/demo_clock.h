// SPDX-License-Identifier: Apache-2.0
// The clock of a demonstration: it runs as the real one does, from an invented hour on, and skips
// the waits of a day when told to. Wall and boot clock skip together, so nothing in the record
// looks like a stepped clock; that it is a simulated one stands in the record in words.
#pragma once

#include <atomic>
#include <chrono>

#include "checklist/record/clock.h"

namespace walkdown::cli {

class DemoClock final : public record::Clock {
 public:
  explicit DemoClock(std::int64_t start_at_ms) : start_at_ms_(start_at_ms) {}

  [[nodiscard]] std::int64_t at_ms() const override { return start_at_ms_ + passed_ms(); }
  [[nodiscard]] std::int64_t up_ms() const override { return kUp_ms + passed_ms(); }

  void skip(std::int64_t ms) { skipped_ms_ += ms; }
  // Skips to a moment; nothing where that is past.
  void skip_to(std::int64_t at) {
    if (at > at_ms()) skip(at - at_ms());
  }

 private:
  static constexpr std::int64_t kUp_ms = 600'000;  // as if started ten minutes before

  [[nodiscard]] std::int64_t passed_ms() const {
    const auto real = std::chrono::steady_clock::now() - begun_;
    return skipped_ms_ + std::chrono::duration_cast<std::chrono::milliseconds>(real).count();
  }

  std::int64_t start_at_ms_;
  std::chrono::steady_clock::time_point begun_ = std::chrono::steady_clock::now();
  std::atomic<std::int64_t> skipped_ms_{0};
};

}  // namespace walkdown::cli
