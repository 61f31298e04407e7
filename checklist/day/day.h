// SPDX-License-Identifier: Apache-2.0
// Everything the entries have left behind: plain data, changed by the fold alone. Times are
// moments of timeline.h; `n` is the number of the entry that is the reason.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "checklist/day/outside.h"
#include "checklist/day/timeline.h"

namespace walkdown::day {

// A claim of one person, and the countersignature of another where one is asked for.
struct Claim {
  std::uint64_t n = 0;
  Moment moment;
  std::string by;
  std::string what;    // what a second person confirms, in words
  std::string second;  // empty: not yet
  std::uint64_t second_n = 0;
};

struct Answer {
  Claim claim;
  std::string value;  // as it is read to people
  bool good = false;
  bool fast = false;  // under a second after the question
  std::string why;    // where it is not good
};

struct Broken {
  std::uint64_t n = 0;
  std::string why;
};

// What a waiver is for: exactly one failure. Any other failure of the same item is a new one.
struct Failure {
  std::uint8_t standing = 0;
  std::uint64_t n = 0;
  std::string what;  // for derived items: what failed

  friend bool operator==(const Failure&, const Failure&) = default;
};

struct Waiver {
  Claim claim;
  std::string reason;
  Failure failure;
};

struct ItemLog {
  std::optional<Answer> answer;
  std::optional<Broken> broken;  // since the answer
  std::optional<Waiver> waiver;
};

struct KeyLog {
  std::string holder;  // exactly one: a place or a person
  bool person = false;
  std::string offered_to;  // a receiver who has signed; empty: nobody
  std::uint64_t offer_n = 0;
  std::uint64_t since_n = 0;
};

// Somebody else's tag or absence, told by one person and not yet confirmed by a second.
struct Return {
  Claim claim;
  std::string person;
  bool tag = false;
};

struct PinLog {
  std::uint64_t read_n = 0;  // 0: never; entry 0 is never a reading
  std::int64_t read_aged_ms = 0;
  std::uint64_t undone_n = 0;  // last re-hook, or last time somebody went to its position
};

struct PinWaiver {
  Claim claim;
  std::string reason;
  std::string verdict;         // the failure it is for
  std::uint64_t undone_n = 0;  // of the pin, when it was given
};

struct WindLog {
  std::uint64_t n = 0;
  std::int64_t aged_ms = 0;
  std::int64_t mean_mm_per_s = 0;
  std::int64_t gust_mm_per_s = 0;
  std::string by;    // a person, or "instrument"
  std::string role;  // empty for the instrument
};

// One hold for each that was called: the second caller saw something of his own.
struct HoldLog {
  std::uint64_t n = 0;
  std::string by;
  std::string reason;
};

// "Cy called a hold: smoke"
[[nodiscard]] std::string said(const HoldLog& hold);

enum class ReleaseWord : std::uint8_t { none, pending, stands, fallen };

struct ReleaseLog {
  ReleaseWord word = ReleaseWord::none;
  Claim claim;
  std::optional<std::int64_t> until_aged_ms;
  std::string why;  // of the last change
};

struct ThunderLog {
  std::uint64_t n = 0;
  std::int64_t sure_ms = 0;
  std::optional<std::int64_t> flash_ms;
};

struct Ignored {
  std::uint64_t n = 0;
  std::string why;
};

struct Day {
  Timeline time;
  std::uint64_t entries = 0;  // taken so far
  std::vector<Enrolled> people;
  std::optional<std::int64_t> show_at_ms;
  std::int64_t utc_offset_min = 0;           // of the clock times in sentences
  std::vector<ItemLog> items;                // as in the checklist
  std::vector<std::optional<Claim>> pauses;  // a stage each
  std::vector<KeyLog> keys;                  // as in the checklist
  std::map<std::string, std::uint64_t> in_field;
  std::map<std::string, std::uint64_t> tags;
  std::vector<Return> returns;
  std::vector<PinLog> pins;                      // as in Outside::pins
  std::map<std::string, PinWaiver> pin_waivers;  // by address
  std::map<std::int64_t, WindLog> winds;         // by averaging time in ms
  std::vector<ThunderLog> thunder;               // in order
  std::vector<HoldLog> holds;                    // since the last lift, in order
  ReleaseLog release;
  bool released_once = false;
  std::optional<std::size_t> last_answered;
  std::int64_t last_answer_sure_ms = 0;
  std::uint64_t readings = 0;
  std::vector<Ignored> ignored;  // the last kMostIgnored
  std::uint64_t ignored_count = 0;

  static constexpr std::size_t kMostIgnored = 1'000;
  static constexpr std::size_t kMostHolds = 100;  // then the last gives way to the next
};

}  // namespace walkdown::day
