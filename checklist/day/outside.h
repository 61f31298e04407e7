// SPDX-License-Identifier: Apache-2.0
// What the state of the day rests on besides the entries: all of it frozen in the show, or derived
// from the same entries by somebody else. Handed in, so that the day knows neither signatures nor
// the diagnosis, and a test can lie about both.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "checklist/record/entry.h"
#include "reader/result.h"

namespace walkdown::day {

// Somebody enrolled. One name is one key is one person, in one or more roles.
struct Enrolled {
  std::string name;
  std::string role;
  std::string vkey;

  friend bool operator==(const Enrolled&, const Enrolled&) = default;
};

// What a signed note says, once its signature was found to be that of the person enrolled.
struct Signed {
  std::string person;
  std::string role;
  std::string statement;
  std::vector<std::pair<std::string, std::string>> facts;
};

// Checks a note against the people; an error, with its reason, where it does not hold.
using CheckNote =
    std::function<Result<Signed>(std::string_view note, const std::vector<Enrolled>& people)>;

// A pin the plan puts a load on: its address as entries write it, "M01/R1/P05".
struct PlannedPin {
  std::string pin;
  std::string position;
};

// What the diagnosis says of one pin now. `verdict` is a word of the verdicts; only "fits" is good.
// Pins that are not planned belong to it where something was read on them.
struct PinFacts {
  std::string pin;
  std::string verdict;
};

// Who judges the readings. The fold hands over every `reading`, `rehook` and `in` entry in order,
// and asks only when something rests on the answer.
class PinSource {
 public:
  PinSource() = default;
  PinSource(const PinSource&) = default;
  PinSource(PinSource&&) = default;
  PinSource& operator=(const PinSource&) = default;
  PinSource& operator=(PinSource&&) = default;
  virtual ~PinSource() = default;

  virtual void take(const record::Entry& entry) = 0;
  [[nodiscard]] virtual std::vector<PinFacts> facts() const = 0;
  // Groups of pins that the test cannot tell apart.
  [[nodiscard]] virtual std::int64_t alike_groups() const = 0;
  // What a snapshot keeps of it; load() answers false where the text is not its own.
  [[nodiscard]] virtual std::string save() const = 0;
  virtual bool load(std::string_view text) = 0;
};

// The distances of the site, judged once: plan, site and table are frozen in the show.
struct ZoneFacts {
  bool holds = false;
  std::string why;  // the rule set's name, and what does not hold
};

struct Outside {
  std::vector<PlannedPin> pins;
  PinSource* source = nullptr;    // not owned; without it no continuity ever holds
  std::optional<ZoneFacts> zone;  // without it no zone ever holds
  CheckNote check_note;           // without it no signature ever holds
};

}  // namespace walkdown::day
