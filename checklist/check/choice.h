// SPDX-License-Identifier: Apache-2.0
// Which entries of a record somebody wants, as an expression:
//   kind=reading,rehook and position="North bank" and at=2026-07-04T19:00Z..2026-07-04T20:00Z
// Terms are joined by `and`; the values of one term are alternatives. Values with a space or a
// comma stand in double quotes.
//   kind      as the record spells it
//   person    the entry names them, in its members or its sign-offs (case does not matter)
//   position  as in the plan: readings and re-hooks of its pins, and entries that name it
//   pin       M01/R1/P05: the same for a pin
//   n         3, 3..7, 3.. or ..7: numbers of entries, both ends taken
//   at        UTC, to the minute, the second or the millisecond: a moment, or a span as above
#pragma once

#include <cstdint>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "checklist/audit/drafts.h"
#include "checklist/record/line.h"
#include "checklist/record/signoff.h"
#include "reader/plan/plan.h"
#include "reader/result.h"

namespace walkdown::check {

// Both ends taken; empty: no end.
struct Between {
  std::optional<std::int64_t> from, to;

  [[nodiscard]] bool has(std::int64_t value) const {
    return (!from || value >= *from) && (!to || value <= *to);
  }
};

class Choice {
 public:
  // Errors: usage, with what would be right.
  [[nodiscard]] static Result<Choice> parse(std::string_view expression);

  // What the record must say before entries can be chosen by position or person. refused: a
  // position or a pin that the plan does not have, a person nobody has enrolled.
  Done know(const plan::Plan& plan, const std::vector<record::Person>& people);

  // Precondition: know() said done.
  [[nodiscard]] bool takes(const record::EntryView& entry) const;

 private:
  Done term(std::string_view name, std::vector<std::string> values);
  [[nodiscard]] bool takes_body(const record::Entry& entry) const;
  [[nodiscard]] bool touches(const audit::Rehook& rehook) const;
  [[nodiscard]] bool about_pins(const record::Entry& entry) const;

  bool empty_ = true;
  std::set<std::string, std::less<>> kinds_;
  std::vector<std::string> persons_, positions_;
  std::vector<plan::PinId> pins_;
  std::vector<Between> numbers_, times_;  // of any
  // From know():
  std::vector<std::string> phrases_;
  struct Place {
    plan::PinId pin;
    std::string position;  // empty where the plan names none
    bool asked = false;
  };
  std::vector<Place> places_;  // of the whole plan
  std::set<std::string, std::less<>>
      quotes_;  // pins and positions asked for, as an entry may write them
};

}  // namespace walkdown::check
