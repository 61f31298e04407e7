// SPDX-License-Identifier: Apache-2.0
// A checklist: stages in order, each a few items, closed by a pause. Read from TOML by
// read_checklist.h; FORMAT.md is the manual of the file.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace walkdown::day {

enum class Kind : std::uint8_t {
  confirm,     // a state chosen from a list
  number,      // a value with a unit and limits
  continuity,  // every planned pin fits, or is waived by name
  zone,        // the distances of the site
  wind,        // the latest wind, by instrument or by hand
  thunder,     // no wait after thunder runs
  custody,     // a key is where it has to be, and all tags are back
  headcount,   // nobody is in the field
  wait,        // so long after another item was answered
  file,        // a photo or permit, by its hash
  text,        // a name or a remark
};
inline constexpr std::size_t kKinds = 11;

// What can break an answer.
enum class Event : std::uint8_t {
  entered,    // somebody went into the field
  rehook,     // a pin was hooked up anew
  hold,       // a hold was called
  clock,      // the wall clock stepped
  suspend,    // the machine slept
  restart,    // the machine was started anew
  show_time,  // the show time moved
  thunder,    // thunder was heard
  custody,    // a key went from one hand or place to another
};
inline constexpr std::size_t kEvents = 9;

[[nodiscard]] std::string_view word(Kind kind);
[[nodiscard]] std::string_view word(Event event);
[[nodiscard]] std::optional<Kind> kind_of(std::string_view word);
[[nodiscard]] std::optional<Event> event_of(std::string_view word);

using Roles = std::vector<std::string>;

struct Item {
  std::string id;
  std::string question;
  Kind kind = Kind::confirm;
  std::size_t stage = 0;
  Roles by;                                  // who may answer; empty: derived, nobody has to
  Roles second;                              // who may countersign; empty: one signature is enough
  std::optional<std::int64_t> valid_for_ms;  // empty: until broken
  std::optional<std::int64_t> due_ms;        // against the show time; negative: before it
  std::int64_t takes_ms = 0;                 // for planning
  std::vector<std::size_t> needs;            // items that must hold when it is answered
  std::uint32_t broken_by = 0;               // one bit an Event
  std::string source;                        // of the limits
  bool killer = false;                       // lives hang on it: repeated late
  std::optional<std::size_t> repeats;        // the earlier item that this one asks again

  std::vector<std::string> choices;       // confirm, and derived kinds that are signed
  std::vector<std::string> good;          // those of them that let it hold
  std::string unit;                       // number
  std::optional<std::int64_t> min_milli;  // number, in thousandths of the unit
  std::optional<std::int64_t> max_milli;
  std::optional<std::int64_t> mean_max_mm_per_s;  // wind
  std::optional<std::int64_t> gust_max_mm_per_s;
  std::int64_t period_ms = 600'000;  // wind: averaging time
  std::int64_t near_ms = 30'000;     // thunder: flash to bang
  std::int64_t wait_ms = 0;          // thunder, wait
  std::optional<std::size_t> after;  // wait: the item it counts from
  std::string key;                   // custody
  std::vector<std::string> places;   // custody: any of them; "role:lead" for a person
  bool alike = false;                // confirm: the pins that read alike, seen by eye

  [[nodiscard]] bool breaks(Event event) const {
    return (broken_by >> static_cast<unsigned>(event) & 1U) != 0;
  }
  // Whether somebody has to answer it, besides what is derived.
  [[nodiscard]] bool asked() const { return !by.empty(); }
};

struct Stage {
  std::string id;
  std::string title;
  Roles pause_by;         // who closes the pause at its end
  bool release = true;    // whether the release rests on its items
  std::size_t first = 0;  // items first .. first + count - 1
  std::size_t count = 0;
};

struct Key {
  std::string name;
  std::string starts;               // the place it is in when the day begins
  std::vector<std::string> places;  // where it can lie; `starts` and `firing` among them
  std::string firing;               // the place from which it arms
  Roles takers;                     // who may take it out of a place
};

struct Checklist {
  std::string name;
  std::string source;
  std::int64_t show_length_ms = 0;        // a release must cover the show and this much after
  std::int64_t break_after_ms = 900'000;  // a silence as long as this is a break
  Roles release_by;                       // who signs the release
  Roles release_second;                   // who countersigns it
  Roles lead;                             // who lifts a hold and waives
  std::vector<Key> keys;
  std::vector<Stage> stages;
  std::vector<Item> items;  // in order of stages

  static constexpr std::size_t npos = static_cast<std::size_t>(-1);
  [[nodiscard]] std::size_t item(std::string_view id) const;  // npos where there is none
  [[nodiscard]] std::size_t stage(std::string_view id) const;
  [[nodiscard]] std::size_t key(std::string_view name) const;
  // The last stage the release rests on.
  [[nodiscard]] std::size_t last_release_stage() const;
};

[[nodiscard]] bool contains(const Roles& roles, std::string_view role);

// Words that say nothing of what was seen: "n/a", "ok", "yes", "done", "checked", ...; any case.
[[nodiscard]] bool says_nothing(std::string_view answer);

}  // namespace walkdown::day
