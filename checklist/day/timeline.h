// SPDX-License-Identifier: Apache-2.0
// One line of time through clocks that step, machines that sleep and machines that start anew.
//
// Within one run of the machine time is the boot clock, which runs on through suspend. Over a
// restart nobody knows for certain how much passed, so two counts are kept, neither of which goes
// back: `aged_ms`, which is never too little, for what stays valid only so long; and `sure_ms`,
// which is never too much, for what has to be waited for. Where the wall clock went back over a
// restart no age is known at all, and everything that ages breaks.
#pragma once

#include <cstdint>
#include <optional>

#include "checklist/record/entry.h"

namespace walkdown::day {

struct Now {
  std::int64_t at_ms = 0;  // wall clock, UTC
  std::int64_t up_ms = 0;  // boot clock
};

struct Moment {
  std::int64_t aged_ms = 0;  // at most so long since the first entry
  std::int64_t sure_ms = 0;  // at least so long

  friend bool operator==(const Moment&, const Moment&) = default;
};

// What one entry showed about the clocks.
struct Clocks {
  Moment moment;
  bool stepped = false;    // wall and boot clock fell apart by more than kPace_ms
  bool restarted = false;  // the boot clock went back, or `resumed` with clocks out of pace
  bool age_unknown = false;
};

class Timeline {
 public:
  // The clocks may drift so far apart before it counts as a step. Our choice.
  static constexpr std::int64_t kPace_ms = 2'000;

  [[nodiscard]] Clocks look(const record::Entry& entry) const;
  void take(const record::Entry& entry, const Clocks& clocks);

  // The moment of a later look at the clocks, in the same run as the last entry.
  [[nodiscard]] Moment moment(Now now) const;
  // Wall time of a count, by the clocks of the last entry.
  [[nodiscard]] std::int64_t at_of_aged(std::int64_t aged_ms) const {
    return at_ms_ + aged_ms - moment_.aged_ms;
  }
  [[nodiscard]] std::int64_t at_of_sure(std::int64_t sure_ms) const {
    return at_ms_ + sure_ms - moment_.sure_ms;
  }
  [[nodiscard]] std::int64_t last_at_ms() const { return at_ms_; }
  [[nodiscard]] Moment last() const { return moment_; }

  // For the snapshot: the fields in the order they are kept.
  template <typename Archive>
  void fields(Archive&& archive) {
    archive(started_, at_ms_, up_ms_, moment_.aged_ms, moment_.sure_ms, offset_ms_);
  }

 private:
  bool started_ = false;
  std::int64_t at_ms_ = 0;
  std::int64_t up_ms_ = 0;
  Moment moment_;
  std::int64_t offset_ms_ = 0;  // at - up, as last told
};

}  // namespace walkdown::day
