// SPDX-License-Identifier: Apache-2.0
// The plan backwards from the show: when each item must begin at the latest, how much slack that
// leaves, and whether a release that covers the show is possible at all. Made anew at every look.
//
// A release must cover the show from its time to its end (show_length). So an item that is valid
// for V must be answered no earlier than V before the end, and no later than what rests on it can
// begin.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "checklist/day/fold.h"

namespace walkdown::day {

// One item of the release. Wall times in UTC.
struct Slot {
  std::string id;
  bool done = false;                             // holds, to the end of the show and beyond
  std::optional<std::int64_t> not_before_at_ms;  // an answer before this would not last
  std::int64_t latest_at_ms = 0;                 // answered by then at the latest
  std::int64_t latest_start_at_ms = 0;
  std::int64_t slack_ms = 0;  // to the latest start; negative: too late
  bool critical = false;      // the least slack of all that is not done
  std::string say;            // empty where there is nothing to say
};

struct Schedule {
  std::optional<std::int64_t> show_at_ms;
  bool feasible = false;
  std::vector<Slot> slots;  // the items the release rests on, in order; none once a show that was
                            // released has begun
  std::string say;          // one sentence: the worst of it, and what to do
};

// Clock times in sentences are those of the clock on the wall there (`utc_offset_min` of
// show-time).
[[nodiscard]] Schedule schedule(const Fold& fold, Now now);

}  // namespace walkdown::day
