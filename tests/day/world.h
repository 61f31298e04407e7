// SPDX-License-Identifier: Apache-2.0
// A show day to play with: a clock that can lie, people whose signatures are plain JSON, and pins
// that read what the test says.
#pragma once

#include <cstdint>
#include <map>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "checklist/day/fold.h"
#include "checklist/day/propose.h"
#include "checklist/day/statement.h"

namespace walkdown::day {

class FakePins : public PinSource {
 public:
  // A reading may say how its pin reads from then on.
  void take(const record::Entry& entry) override {
    ++taken;
    if (entry.body.is_object() && entry.body.contains("says")) {
      verdicts[entry.body["pin"]] = entry.body["says"];
    }
  }
  [[nodiscard]] std::vector<PinFacts> facts() const override {
    ++asked;
    std::vector<PinFacts> all;
    for (const auto& [pin, verdict] : verdicts) all.push_back({pin, verdict});
    return all;
  }
  [[nodiscard]] std::int64_t alike_groups() const override { return groups; }
  [[nodiscard]] std::string save() const override { return nlohmann::json(verdicts).dump(); }
  bool load(std::string_view text) override {
    const auto json = nlohmann::json::parse(text, nullptr, false);
    if (!json.is_object()) return false;
    verdicts = json.get<std::map<std::string, std::string>>();
    return true;
  }

  std::map<std::string, std::string> verdicts;
  std::int64_t groups = 2;
  int taken = 0;
  mutable int asked = 0;
};

// The note of a person: what they state. A real one is signed; this one is only readable.
std::string plain_note(const Who& who, const Statement& statement);
Result<Signed> check_plain_note(std::string_view note, const std::vector<Enrolled>& people);

inline constexpr std::int64_t kStart_ms = 1'783'191'600'000;  // 2026-07-04T19:00:00Z
inline constexpr std::int64_t kMinute_ms = 60'000;

inline const Who kAnn{"Ann", "lead"};
inline const Who kBo{"Bo", "safety"};
inline const Who kCy{"Cy", "crew"};

// A short checklist: stage "set" (angles: confirm; water: number with a second; loop: continuity),
// stage "clear" (field: headcount; edge: confirm, 20 min; wind; thunder; key), stage "after"
// (last-shot: text; rest: wait 15 min).
Checklist small_checklist();

class World {
 public:
  explicit World(Checklist checklist = small_checklist(), bool with_pins = true);
  World(const World&) = delete;
  World& operator=(const World&) = delete;
  World(World&&) = delete;
  World& operator=(World&&) = delete;
  ~World() = default;

  // Appends an entry as it is; its number is given back.
  std::uint64_t write(std::string_view kind, Body body);
  // Signs the body and appends it.
  std::uint64_t sign(const Who& who, std::string_view kind, Body body);
  // Appends what was proposed, signed by whom it names. Fails the test where it was refused.
  std::uint64_t put(std::string_view kind, const Result<Body>& body);

  void pass(std::int64_t ms) {
    now.at_ms += ms;
    now.up_ms += ms;
  }
  void enrol_all();
  void read_all();
  std::uint64_t answer(const Who& who, const std::string& item, const std::string& value);
  std::uint64_t second(const Who& who, std::uint64_t n) {
    return put("second", propose_second(fold, now, who, n));
  }
  // Everything up to an open gate: all items of "set" and "clear" hold.
  void ready();
  // ready(), and the release signed by Ann and Bo.
  void released();

  [[nodiscard]] State state() const { return fold.at(now); }
  [[nodiscard]] ItemState item(const std::string& id) const;
  [[nodiscard]] std::string standing(const std::string& id) const;
  // The state, folded anew from the entries so far.
  [[nodiscard]] std::string replayed() const;

  FakePins pins;
  Outside outside;
  Fold fold;
  Now now{kStart_ms, 1'000'000};
  std::vector<record::Entry> entries;
};

}  // namespace walkdown::day
