// SPDX-License-Identifier: Apache-2.0
// The report as data: everything in it comes from the entries of one record, and each line names
// the entry that says it. HTML and PDF are made from this and from nothing else.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "checklist/day/state.h"
#include "checklist/desk/prepared.h"
#include "checklist/record/verify.h"
#include "reader/match/after.h"
#include "reader/match/outcome.h"
#include "reader/match/test_current.h"
#include "reader/plan/pin.h"

namespace walkdown::report {

// An entry in words. `at_ms` is wall time, UTC, here and everywhere below.
struct Line {
  std::uint64_t n = 0;
  std::int64_t at_ms = 0;
  std::string kind;
  std::string say;
};

struct Person {
  std::string name;
  std::vector<std::string> roles;
  std::string vkey;
  std::uint64_t n = 0;  // first enrolment
};

// What one item was at one moment.
struct ItemAt {
  std::string id;
  std::string question;
  std::string source;  // of its limits
  day::ItemState state;
};

struct Release {
  std::uint64_t n = 0;  // of the first signature
  std::string by;
  std::optional<std::uint64_t> second_n;  // empty: it was never countersigned
  std::string second;
  std::int64_t at_ms = 0;                   // when it began to stand; else when it was signed
  std::optional<std::int64_t> until_at_ms;  // how long it could have stood
  std::vector<ItemAt> grounds;              // every item under it, as it was at that moment
  std::optional<std::int64_t> fell_at_ms;
  std::uint64_t fell_n = 0;
  std::string fell_why;
};

// A stretch of time in which an item stood so.
struct Span {
  std::int64_t from_ms = 0;
  std::int64_t to_ms = 0;
  day::Standing standing = day::Standing::open;
};

struct ItemRow {
  std::size_t stage = 0;
  ItemAt last;
  std::vector<Span> spans;  // in order, without gaps
};

// Somebody signed an item, or a pin, away.
struct Waived {
  std::uint64_t n = 0;
  std::int64_t at_ms = 0;
  std::string what;     // item, or pin
  std::string verdict;  // of a pin
  std::string by;
  std::string second;  // empty: never countersigned, so without effect
  std::string reason;
};

struct Rehooked {
  std::uint64_t n = 0;
  std::int64_t at_ms = 0;
  std::string by;   // may be empty
  std::string why;  // may be empty
};

struct PinStory {
  plan::PinId pin;
  std::string before;  // "10.17 ohm", "over range", "not read"; the last one before the claim
  std::uint64_t before_n = 0;
  std::string after;  // the last one before the finding was gone, or of all
  std::uint64_t after_n = 0;
  std::optional<double> low_ohm, high_ohm;  // what was planned
  std::string verdict;                      // at the moment of Model::outcome
};

// A finding, from the claim that first told it to the claim that no longer did.
struct Fault {
  std::string kind;
  std::vector<plan::PinId> pins;
  std::string say;
  std::int64_t confidence_pct = 0;
  std::uint64_t found_n = 0;
  std::int64_t found_at_ms = 0;
  std::vector<Rehooked> rehooked;
  std::optional<std::uint64_t> mended_n;  // the claim
  std::optional<std::int64_t> mended_at_ms;
  std::vector<PinStory> readings;  // of the first kMostPins pins
};
inline constexpr std::size_t kMostPins = 6;

// What a claim said.
struct Sweep {
  std::uint64_t n = 0;
  std::int64_t at_ms = 0;
  std::vector<std::pair<std::string, std::int64_t>> verdicts;
  std::int64_t findings = 0;
};

struct Position {
  std::string name;  // empty: pins without one
  std::int64_t pins = 0, cues = 0;
  std::string modules;  // "1, 2, 5"
  std::int64_t fit = 0;
};

struct Wind {
  std::uint64_t n = 0;
  std::int64_t at_ms = 0;
  std::int64_t mean_mm_per_s = 0, gust_mm_per_s = 0, period_ms = 0;
  std::string by;
};

struct Held {
  std::string holder;
  bool person = false;
  std::int64_t from_ms = 0, to_ms = 0;
  std::uint64_t n = 0;  // the entry that put it there; 0: where the day began
};

struct KeyStory {
  std::string name;
  std::vector<Held> held;
  std::vector<Line> lines;
};

struct Head {
  std::int64_t at_ms = 0;
  std::int64_t inside = 0;
};

struct SignedBy {
  std::uint64_t n = 0;
  std::int64_t at_ms = 0;
  std::string person, role, statement;
  std::vector<std::pair<std::string, std::string>> facts;
};

struct Hold {
  Line called;
  std::optional<Line> lifted;
};

struct Model {
  record::Report check;  // of this file, now, with everything derived again
  std::string file;      // name of the record, without folders
  std::string origin, station;
  std::int64_t opened_at_ms = 0, last_at_ms = 0;
  std::int64_t utc_offset_min = 0;  // the record's own; for clock times
  std::optional<std::int64_t> show_at_ms;
  desk::Prepared prepared;
  std::vector<Person> people;
  std::vector<Release> releases;
  std::vector<Waived> waived_items, waived_pins;
  std::vector<ItemRow> items;
  std::vector<Position> positions;
  std::int64_t pins = 0, cues = 0, modules = 0, readings = 0, rejected = 0;
  std::vector<std::vector<plan::PinId>> alike;
  std::vector<std::string> coverage;  // sentences
  std::vector<Sweep> sweeps;
  std::vector<Fault> faults;
  match::Outcome outcome;  // what the readings said when it was first released; else at the end
  bool outcome_at_release = false;
  match::TestCurrent test_current;
  std::vector<Wind> winds;
  std::vector<Line> thunder;
  std::vector<KeyStory> keys;
  std::vector<Head> headcount;
  std::vector<Line> in_and_out;
  std::vector<Hold> holds;
  std::optional<match::After> after;  // where pins were read after the release
  std::uint64_t after_readings = 0;
  std::vector<SignedBy> signatures;
  std::vector<Line> breaks;   // clock steps, restarts, sleep, a torn end
  std::vector<Line> outside;  // cosignatures and time-stamps
  std::vector<Line> notes;    // free text and statements
};

}  // namespace walkdown::report
