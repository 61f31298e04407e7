// SPDX-License-Identifier: Apache-2.0
// The day as a fold: entries in, state out. There is no other state: whoever folds the same entries
// over the same show gets the same state, to the byte of its JSON.
//
//   Fold fold(checklist, outside);
//   for (const record::Entry& entry : entries) fold.take(entry);
//   const State state = fold.at(now);
//
// An entry that breaks a rule changes nothing but the list of those ignored. Entries of other kinds
// (FORMAT.md lists ours) move the clocks and nothing else.
#pragma once

#include <memory>
#include <string>
#include <string_view>

#include "checklist/day/checklist.h"
#include "checklist/day/outside.h"
#include "checklist/day/state.h"
#include "checklist/record/entry.h"
#include "checklist/record/line.h"
#include "reader/result.h"

namespace walkdown::day {

class Fold {
 public:
  // `outside.source` is not owned, must live as long, and belongs to this fold alone.
  Fold(Checklist checklist, Outside outside);

  void take(const record::Entry& entry);
  // The same from a line of the record: a reading's body is not made a tree for it.
  void take(const record::EntryView& view);

  // The state at a moment not before the last entry's, by clocks of the same run of the machine.
  [[nodiscard]] State at(Now now) const;

  // Whether this entry would be taken, were it written now and rightly signed: every rule but the
  // signature. For makers (propose.h), before anything is written.
  [[nodiscard]] Done would_take(std::string_view kind, const nlohmann::json& body, Now now) const;

  [[nodiscard]] const Checklist& checklist() const { return list_; }
  [[nodiscard]] const Day& day() const { return day_; }
  [[nodiscard]] const Outside& outside() const { return outside_; }
  // What to judge with; valid until the next take().
  [[nodiscard]] View view() const { return {list_, outside_, day_, book_}; }

  // Puts in the day that a snapshot kept (snapshot.h), made with the same checklist and outside.
  void restore(Day day);

 private:
  Moment begin(const record::Entry& entry);
  Moment clocks(const record::Entry& entry);
  void reading(const record::Entry& entry, const std::string& pin, Moment moment);
  void ruled(const record::Entry& entry, Moment moment);
  void ignore(const record::Entry& entry, std::string why);
  void watch_release(const record::Entry& entry, Moment moment);

  Checklist list_;
  Outside outside_;
  Day day_;
  mutable PinBook book_;  // worked out from day_ when asked
};

}  // namespace walkdown::day
