// SPDX-License-Identifier: Apache-2.0
// For meters that send a bare value: the program names the pin, the person holds the probe to it,
// and the value is taken when it is steady. Pure logic; no port, no clock.
//
// Steady: the last kSteadyValues values are all numbers, and the largest less the smallest is no
// more than 6 standard deviations of one reading plus one last digit. Five normal values spread
// over more than 5.5 standard deviations once in a thousand; the last digit is the rounding.
//
// Between two pins the probe must have been lifted: the meter has to say "above range" once. So the
// value of one pin can never be taken for the next. A pin that is open reads like a lifted probe
// and is therefore never taken by itself: the person says so (take_open).
#pragma once

#include <cstddef>
#include <cstdint>
#include <deque>
#include <optional>
#include <vector>

#include "reader/plan/pin.h"
#include "reader/tester/line.h"
#include "reader/tester/model.h"
#include "reader/tester/reading.h"

namespace walkdown::tester {

class Walk {
 public:
  static constexpr std::size_t kSteadyValues = 5;

  // Pins in the order to be walked.
  Walk(std::vector<plan::PinId> pins, const Model& model);

  // The pin to hold the probe to; empty when all are done.
  [[nodiscard]] std::optional<plan::PinId> current() const;
  [[nodiscard]] std::size_t done() const { return at_; }
  [[nodiscard]] std::size_t of() const { return pins_.size(); }
  // True where the last value was taken and the probe has not been lifted since.
  [[nodiscard]] bool waits_for_lift() const { return waits_for_lift_; }

  // One value of the meter. A reading, once it is steady: the median of the steady values, for the
  // pin that was current; the walk has then moved on.
  std::optional<Reading> see(const BareValue& value);

  // The person says that the probe is on the current pin and the meter reads above range. Taken
  // only while the meter's last value was just that.
  std::optional<Reading> take_open();

  // Leaves the current pin unread. Nothing is made up for it.
  void skip();
  // To the pin before, to read it once more. What was read of it stays read.
  void back();

 private:
  [[nodiscard]] bool steady() const;
  void move(std::size_t to);

  std::vector<plan::PinId> pins_;
  std::int64_t spread_micro_ohm_;
  std::deque<std::int64_t> last_;
  std::size_t at_ = 0;
  bool waits_for_lift_ = false;
  bool over_now_ = false;
};

}  // namespace walkdown::tester
