// SPDX-License-Identifier: Apache-2.0
// Whether the field is proved: every planned pin read, since its last re-hook, recently enough, and
// fitting, or waived by name for exactly the verdict it has.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

#include "checklist/day/day.h"
#include "checklist/day/outside.h"

namespace walkdown::day {

struct Continuity {
  bool holds = false;
  std::int64_t planned = 0;
  std::int64_t fit = 0;
  std::int64_t waived = 0;
  std::int64_t unread = 0;                    // never, or not since the last re-hook or entry
  std::int64_t stale = 0;                     // read too long ago
  std::vector<std::string> bad;               // "M01/R1/P05 open": others that do not fit
  std::optional<std::int64_t> until_aged_ms;  // the first reading to grow stale
  std::string why;                            // a sentence
  // What fails, to the last pin: SHA-256 of all of them with their verdicts; empty while it holds.
  // The sentence names three, and a waiver for five must not cover a sixth that took one's place.
  std::string failure;
};

// The verdict of every planned pin as it counts: the diagnosis's word, or unread, or stale.
class PinBook {
 public:
  explicit PinBook(const Outside& outside);

  // Index into Outside::pins; npos where the plan has no such pin.
  static constexpr std::size_t npos = static_cast<std::size_t>(-1);
  [[nodiscard]] std::size_t find(const std::string& pin) const;

  // Forgets what it worked out: a reading, a re-hook, somebody in the field or a waiver came.
  void forget() {
    worked_out_.clear();
    facts_known_ = false;
  }
  void forget_waivers() { worked_out_.clear(); }

  [[nodiscard]] const Continuity& continuity(const Outside& outside, const Day& day,
                                             std::optional<std::int64_t> valid_for_ms,
                                             std::int64_t aged_ms);
  [[nodiscard]] std::string verdict(const Outside& outside, const Day& day, std::size_t index);

 private:
  void know(const Outside& outside);

  std::unordered_map<std::string, std::size_t> index_;
  std::vector<std::string> verdicts_;  // as in Outside::pins
  std::vector<std::string> strays_;
  bool facts_known_ = false;
  std::map<std::int64_t, Continuity> worked_out_;  // by validity; -1: none
};

}  // namespace walkdown::day
