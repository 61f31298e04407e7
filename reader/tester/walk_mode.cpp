// SPDX-License-Identifier: Apache-2.0
#include "reader/tester/walk_mode.h"

#include <algorithm>
#include <cmath>

namespace walkdown::tester {

Walk::Walk(std::vector<plan::PinId> pins, const Model& model)
    : pins_(std::move(pins)),
      spread_micro_ohm_(std::llround((6 * model.noise() + model.resolution_ohm) * 1e6)) {}

std::optional<plan::PinId> Walk::current() const {
  return at_ < pins_.size() ? std::optional(pins_[at_]) : std::nullopt;
}

bool Walk::steady() const {
  if (last_.size() < kSteadyValues) return false;
  const auto [low, high] = std::minmax_element(last_.begin(), last_.end());
  return *high - *low <= spread_micro_ohm_;
}

void Walk::move(std::size_t to) {
  at_ = to;
  // The probe is still where it was: its next values belong to the pin before.
  waits_for_lift_ = waits_for_lift_ || !last_.empty();
  last_.clear();
}

std::optional<Reading> Walk::see(const BareValue& value) {
  over_now_ = value.over;
  if (value.over) {
    waits_for_lift_ = false;
    last_.clear();
    return std::nullopt;
  }
  if (waits_for_lift_ || at_ >= pins_.size()) return std::nullopt;
  last_.push_back(value.micro_ohm);
  if (last_.size() > kSteadyValues) last_.pop_front();
  if (!steady()) return std::nullopt;
  std::vector<std::int64_t> sorted(last_.begin(), last_.end());
  std::nth_element(sorted.begin(), sorted.begin() + kSteadyValues / 2, sorted.end());
  const Reading reading{pins_[at_], false, sorted[kSteadyValues / 2], value.seq};
  move(at_ + 1);
  return reading;
}

std::optional<Reading> Walk::take_open() {
  if (!over_now_ || at_ >= pins_.size()) return std::nullopt;
  const Reading reading{pins_[at_], true, 0, std::nullopt};
  over_now_ = false;  // one press takes one pin
  move(at_ + 1);
  return reading;
}

void Walk::skip() {
  if (at_ < pins_.size()) move(at_ + 1);
}

void Walk::back() {
  if (at_ > 0) move(at_ - 1);
}

}  // namespace walkdown::tester
