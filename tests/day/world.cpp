// SPDX-License-Identifier: Apache-2.0
#include "world.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "checklist/day/read_checklist.h"

namespace walkdown::day {
namespace {

constexpr const char* kSmall = R"(
name = "small"
source = "a test"
show_length = "5m"
release_second = ["safety"]

[[key]]
name = "key"
starts = "box"
firing = "desk"

[[stage]]
id = "set"
title = "Set"
[[stage.item]]
id = "angles"
question = "Where do they point?"
kind = "confirm"
by = ["crew", "lead"]
choices = ["away", "at people"]
good = ["away"]
takes = "5m"
[[stage.item]]
id = "water"
question = "How much water?"
kind = "number"
by = ["crew"]
second = ["safety", "crew"]
unit = "l"
min = 20
source = "a test"
takes = "5m"
[[stage.item]]
id = "loop"
question = "Do all pins fit?"
kind = "continuity"
valid_for = "2h"
source = "a test"
takes = "20m"

[[stage]]
id = "clear"
title = "Clear"
[[stage.item]]
id = "field"
question = "Who is out there?"
kind = "headcount"
[[stage.item]]
id = "edge"
question = "What is inside the line?"
kind = "confirm"
by = ["safety"]
choices = ["nobody", "a person"]
good = ["nobody"]
valid_for = "20m"
source = "a test"
needs = ["field"]
broken_by = ["entered", "hold", "clock", "show-time", "suspend", "restart"]
due = "-10m"
takes = "2m"
[[stage.item]]
id = "wind"
question = "What is the wind?"
kind = "wind"
by = ["lead", "safety"]
mean_max_m_per_s = 9
gust_max_m_per_s = 11
valid_for = "30m"
source = "a test"
takes = "10m"
[[stage.item]]
id = "thunder"
question = "How long since the last thunder?"
kind = "thunder"
wait = "30m"
source = "a test"
[[stage.item]]
id = "key"
question = "Who has the key?"
kind = "custody"
key = "key"
places = ["role:lead", "desk"]

[[stage]]
id = "after"
title = "After"
release = false
[[stage.item]]
id = "last-shot"
question = "When did the last cue go?"
kind = "text"
by = ["lead"]
[[stage.item]]
id = "rest"
question = "How long since?"
kind = "wait"
after = "last-shot"
wait = "15m"
source = "a test"
)";

Outside outside_of(FakePins& pins, bool with_pins) {
  Outside outside;
  if (with_pins) {
    outside.pins = {{"M01/R1/P01", "Jetty"}, {"M01/R1/P02", "Jetty"}, {"M02/R1/P01", "Bank"}};
    for (const auto& pin : outside.pins) pins.verdicts[pin.pin] = "fits";
  }
  outside.source = &pins;
  outside.zone = ZoneFacts{true, "rules of a test"};
  outside.check_note = check_plain_note;
  return outside;
}

}  // namespace

Checklist small_checklist() {
  auto read = read_checklist(kSmall, "small.toml");
  for (const Error& mistake : read.mistakes) ADD_FAILURE() << mistake.sentence();
  return read.checklist;
}

std::string plain_note(const Who& who, const Statement& statement) {
  return nlohmann::json{{"person", who.name},
                        {"role", who.role},
                        {"statement", statement.text},
                        {"facts", statement.facts}}
      .dump();
}

Result<Signed> check_plain_note(std::string_view note, const std::vector<Enrolled>& people) {
  const auto json = nlohmann::json::parse(note, nullptr, false);
  if (!json.is_object()) return Error{Code::forged, "not a note", "", ""};
  Signed said{json["person"], json["role"], json["statement"], json["facts"]};
  const bool known = std::any_of(people.begin(), people.end(), [&](const Enrolled& each) {
    return each.name == said.person && each.role == said.role;
  });
  if (!known) return Error{Code::forged, "signed by nobody", "", ""};
  return said;
}

World::World(Checklist checklist, bool with_pins)
    : outside(outside_of(pins, with_pins)), fold(std::move(checklist), outside) {
  write("open", {{"format", 1}});
}

std::uint64_t World::write(std::string_view kind, Body body) {
  const std::uint64_t n = entries.size();
  entries.push_back({n, now.at_ms, now.up_ms, std::string(kind), std::move(body)});
  fold.take(entries.back());
  return n;
}

std::uint64_t World::sign(const Who& who, std::string_view kind, Body body) {
  body["by"] = who.name;
  body["role"] = who.role;
  body["signoff"] = plain_note(who, statement(fold.checklist(), kind, body));
  return write(kind, std::move(body));
}

std::uint64_t World::put(std::string_view kind, const Result<Body>& body) {
  if (!body) {
    ADD_FAILURE() << kind << ": " << body.error().sentence();
    return 0;
  }
  const std::uint64_t ignored = fold.day().ignored_count;
  const Who who{body->value("by", ""), body->value("role", "")};
  const std::uint64_t n = who.role.empty() ? write(kind, *body) : sign(who, kind, *body);
  EXPECT_EQ(fold.day().ignored_count, ignored) << kind << ": " << fold.day().ignored.back().why;
  return n;
}

void World::enrol_all() {
  for (const Who& who : {kAnn, kBo, kCy}) {
    put("enrol", propose_enrol(fold, now, who.name, who.role, "vkey of " + who.name));
  }
}

void World::read_all() {
  for (const PlannedPin& pin : outside.pins) write("reading", {{"pin", pin.pin}, {"raw", "x"}});
}

std::uint64_t World::answer(const Who& who, const std::string& item, const std::string& value) {
  const std::int64_t asked_up_ms = now.up_ms;
  pass(3'000);
  return put("answer", propose_answer(fold, now, who, item, {value, {}, {}}, asked_up_ms));
}

void World::ready() {
  enrol_all();
  answer(kCy, "angles", "away");
  pass(3'000);
  const auto water =
      put("answer", propose_answer(fold, now, kCy, "water", {{}, 40'000, {}}, now.up_ms - 2'000));
  second(kBo, water);
  read_all();
  put("pause", propose_pause(fold, now, kAnn, "set"));
  put("wind", propose_wind(fold, now, kBo, {4'000, 7'000, 600'000}));
  put("key-take", propose_key_take(fold, now, kAnn, "key"));
  answer(kBo, "edge", "nobody");
}

void World::released() {
  ready();
  second(kBo, put("release", propose_release(fold, now, kAnn)));
}

ItemState World::item(const std::string& id) const {
  for (const ItemState& each : state().items) {
    if (each.id == id) return each;
  }
  ADD_FAILURE() << "no item " << id;
  return {};
}

std::string World::standing(const std::string& id) const {
  return std::string(word(item(id).standing));
}

std::string World::replayed() const {
  FakePins again_pins = pins;
  Outside again_outside = outside;
  again_outside.source = &again_pins;
  Fold again(fold.checklist(), again_outside);
  for (const record::Entry& entry : entries) again.take(entry);
  return to_json(again.at(now)).dump();
}

}  // namespace walkdown::day
