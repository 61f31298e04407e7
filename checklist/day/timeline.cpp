// SPDX-License-Identifier: Apache-2.0
#include "checklist/day/timeline.h"

#include <algorithm>
#include <cstdlib>

namespace walkdown::day {

Clocks Timeline::look(const record::Entry& entry) const {
  Clocks clocks;
  if (!started_) return clocks;
  const std::int64_t by_wall = entry.at_ms - at_ms_;
  const std::int64_t by_boot = entry.up_ms - up_ms_;
  const bool kept_pace = std::abs(entry.at_ms - entry.up_ms - offset_ms_) <= kPace_ms;
  // A program that is started anew on a machine that ran on has lost no time.
  clocks.restarted = by_boot < 0 || (entry.kind == "resumed" && !kept_pace);
  clocks.stepped = !clocks.restarted && (entry.kind == "clock-step" || !kept_pace);
  clocks.age_unknown = clocks.restarted && by_wall < 0;
  std::int64_t most = by_boot;
  std::int64_t least = by_boot;
  if (clocks.restarted) {
    most = std::max(by_wall, by_boot);
    // After a reboot the machine has run at least since it was started.
    least = std::min(by_wall, by_boot < 0 ? entry.up_ms : by_boot);
  }
  clocks.moment.aged_ms = moment_.aged_ms + std::max<std::int64_t>(most, 0);
  clocks.moment.sure_ms = moment_.sure_ms + std::max<std::int64_t>(least, 0);
  return clocks;
}

void Timeline::take(const record::Entry& entry, const Clocks& clocks) {
  if (!started_ || clocks.stepped || clocks.restarted) offset_ms_ = entry.at_ms - entry.up_ms;
  started_ = true;
  at_ms_ = entry.at_ms;
  up_ms_ = entry.up_ms;
  moment_ = clocks.moment;
}

Moment Timeline::moment(Now now) const {
  const std::int64_t by_boot = now.up_ms - up_ms_;
  const std::int64_t by_wall = std::max<std::int64_t>(now.at_ms - at_ms_, 0);
  return {moment_.aged_ms + (by_boot >= 0 ? by_boot : by_wall),
          moment_.sure_ms + std::max<std::int64_t>(by_boot, 0)};
}

}  // namespace walkdown::day
