// SPDX-License-Identifier: Apache-2.0
// The show day at one moment, as every screen and report shows it.
#pragma once

#include <cstdint>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

#include "checklist/day/checklist.h"
#include "checklist/day/day.h"
#include "checklist/day/standing.h"

namespace walkdown::day {

struct ItemState {
  std::string id;
  Standing standing = Standing::open;
  std::string why;                          // always says something
  std::optional<std::int64_t> until_at_ms;  // while it holds: wall time of its end
  std::optional<std::int64_t> ready_at_ms;  // while a wait runs: wall time of its end
  std::string answer;                       // what was seen, in words
  std::string by;
  std::string second;
  bool fast = false;  // answered under a second after the question
  std::optional<std::uint64_t> answered_n;
};

struct StageState {
  std::string id;
  bool locked = false;
  bool paused = false;  // its pause is closed
  std::string paused_by;
  bool over = false;  // the release rested on it, and the day is after the show
};

struct KeyState {
  std::string name;
  std::string holder;
  bool person = false;
  std::string offered_to;  // has signed for it; the holder still holds it
  std::optional<std::uint64_t> offer_n;
};

struct ReleaseState {
  ReleaseWord word = ReleaseWord::none;
  std::string why;
  std::string by;
  std::string second;
  std::optional<std::uint64_t> n;
  std::optional<std::int64_t> until_at_ms;
};

// A claim that waits for its second signature.
struct WaitingState {
  std::uint64_t n = 0;
  std::string what;
  std::string by;
};

struct State {
  std::uint64_t entries = 0;
  std::int64_t at_ms = 0;
  std::string word;  // "hold", "released", "ready", "after", "checking"
  std::optional<std::int64_t> show_at_ms;
  std::int64_t utc_offset_min = 0;    // of the clock on the wall there, as told with the show time
  std::vector<StageState> stages;     // as in the checklist
  std::vector<ItemState> items;       // as in the checklist
  std::vector<KeyState> keys;         // as in the checklist
  std::vector<std::string> in_field;  // sorted
  std::vector<std::string> tags;      // sorted
  std::optional<HoldLog> hold;        // the first of `holds`
  std::vector<HoldLog> holds;         // a lift is for all of them
  std::vector<WindLog> winds;         // by averaging time: 2 min, 10 min
  ReleaseState release;
  std::vector<std::string> against;  // what keeps the gate shut; empty: a release is possible
  std::optional<std::int64_t> would_stand_until_at_ms;  // while the gate is open
  std::vector<WaitingState> waiting;
  std::vector<Enrolled> people;
  std::uint64_t readings = 0;
  std::vector<Ignored> ignored;  // entries that broke a rule, the last of them
  std::uint64_t ignored_count = 0;
};

// Whole numbers, texts and lists; the same bytes for the same entries and moment.
[[nodiscard]] nlohmann::json to_json(const State& state);

// What changed from one state to the next, one sentence each, with the reason. Of items that nobody
// can answer yet, or whose stage is over, nothing is said.
[[nodiscard]] std::vector<std::string> changes(const Checklist& list, const State& before,
                                               const State& after);

}  // namespace walkdown::day
