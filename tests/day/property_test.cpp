// SPDX-License-Identifier: Apache-2.0
// Entries of any kind, in any order, honest and forged: what must never be, never is.
#include <gmock/gmock.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

#include "checklist/day/snapshot.h"
#include "world.h"

namespace walkdown::day {
namespace {

// One random act: `kind` picks what, the others who, whom and how honestly.
struct Step {
  int kind = 0;
  int who = 0;
  int whom = 0;
  int value = 0;
};

std::ostream& operator<<(std::ostream& out, const Step& step) {
  return out << "{" << step.kind << "," << step.who << "," << step.whom << "," << step.value << "}";
}

const Who kPeople[] = {kAnn, kBo, kCy, {"Ann", "safety"}, {"Dee", "witness"}, {"Eve", "lead"}};
constexpr int kKinds = 24;

class Acting {
 public:
  explicit Acting(World& world) : world_(world) {}

  void act(const Step& step) {
    const Who who = kPeople[step.who];
    const std::string whom = kPeople[step.whom].name;
    switch (step.kind) {
      case 0:
        return pass(step.value);
      case 1:
        return raw("in", {{"person", whom}});
      case 2:
        return sign(step, "out", {{"person", whom}, {"reason", "seen at the van"}});
      case 3:
        return raw("tag-hang", {{"person", whom}});
      case 4:
        return sign(step, "tag-back", {{"person", whom}, {"reason", "lost it"}});
      case 5:
        return raw("hold", {{"by", who.name}});
      case 6:
        return sign(step, "lift", {{"reason", "it was nothing"}});
      case 7:
        return sign(step, "answer", {{"item", "edge"}, {"value", choice(step, "a person")}});
      case 8:
        return sign(step, "answer", {{"item", "angles"}, {"value", choice(step, "at people")}});
      case 9:
        return sign(step, "answer", {{"item", "water"}, {"milli", step.value * 10'000}});
      case 10:
        return second(step);
      case 11:  // Ann, who is in two roles, under whatever waits, also her own
        return second({step.kind, 3, step.whom, step.value});
      case 12:
        return sign(step, "pause", {{"stage", step.value % 2 == 0 ? "set" : "clear"}});
      case 13:
        return sign(step, "wind",
                    {{"from", "hand"},
                     {"mean_mm_per_s", step.value * 2'000},
                     {"gust_mm_per_s", step.value * 3'000},
                     {"period_ms", 600'000}});
      case 14:
        return raw("thunder", Body::object());
      case 15:
        return sign(step, "key-take", {{"key", "key"}, {"place", holder()}});
      case 16:
        return sign(step, "key-put", {{"key", "key"}, {"place", step.value < 3 ? "desk" : "box"}});
      case 17:
        return sign(step, "key-offer", {{"key", "key"}, {"from", holder()}});
      case 18:
        return sign(step, "key-give",
                    {{"key", "key"},
                     {"of", world_.fold.day().keys[0].offer_n},
                     {"to", world_.fold.day().keys[0].offered_to}});
      case 19:
      case 20:
        return sign(step, "release", Body::object());
      case 21:
        return sign(step, "waive", {{"item", item(step)}, {"reason", "seen and weighed"}});
      case 22:
        return reading(step);
      default:
        return raw("rehook", {{"pins", {pin(step)}}});
    }
  }

 private:
  [[nodiscard]] std::string holder() const { return world_.fold.day().keys[0].holder; }
  static std::string choice(const Step& step, const char* bad) {
    if (step.value == 0) return bad;
    return std::string(bad) == "a person" ? "nobody" : "away";
  }
  static std::string item(const Step& step) {
    static constexpr const char* kItems[] = {"edge", "wind", "field", "key", "loop", "water"};
    return kItems[step.value];
  }
  [[nodiscard]] std::string pin(const Step& step) const {
    return world_.outside.pins[static_cast<std::size_t>(step.value) % 3].pin;
  }

  void pass(int value) {
    static constexpr std::int64_t kMinutes[] = {1, 4, 11, 16, 31, 121};
    world_.pass(kMinutes[value] * kMinute_ms);
  }
  void raw(std::string_view kind, Body body) { world_.write(kind, std::move(body)); }

  // One in six is forged: signed by somebody else, or for another body.
  void sign(const Step& step, std::string_view kind, Body body) {
    const Who who = kPeople[step.who];
    body["by"] = who.name;
    body["role"] = who.role;
    Body noted = body;
    if (step.value == 5 && step.whom % 2 == 0) noted["reason"] = "another";
    const Who noting = step.value == 5 ? kPeople[step.whom] : who;
    body["signoff"] = plain_note(noting, statement(world_.fold.checklist(), kind, noted));
    world_.write(kind, std::move(body));
  }
  void second(const Step& step) {
    const auto waiting = world_.state().waiting;
    if (waiting.empty()) return sign(step, "second", {{"of", step.value}, {"what", "the release"}});
    const auto& each = waiting[static_cast<std::size_t>(step.value) % waiting.size()];
    sign(step, "second", {{"of", each.n}, {"what", each.what}});
  }
  void reading(const Step& step) {
    raw("reading", {{"pin", pin(step)}, {"raw", "x"}, {"says", step.whom == 0 ? "open" : "fits"}});
  }

  World& world_;
};

// What an outsider who reads the entries asks of the state; nothing here is asked of the fold's own
// gate.
class Outsider {
 public:
  explicit Outsider(World& world) : world_(world) {}

  void look() {
    const State state = world_.state();
    keys(state);
    answers(state);
    if (state.release.word == ReleaseWord::stands) release(state);
    before_ = state;
  }
  [[nodiscard]] int releases() const { return releases_; }

 private:
  [[nodiscard]] const Body& body(std::uint64_t n) const { return world_.entries.at(n).body; }

  // Signed by a person enrolled in a role of the list, with a note of that person's.
  void signed_by(std::uint64_t n, const Roles& roles) {
    const Body& entry = body(n);
    const std::string by = entry.value("by", "");
    const std::string role = entry.value("role", "");
    RC_ASSERT(contains(roles, role));
    const auto& people = world_.fold.day().people;
    RC_ASSERT(std::any_of(people.begin(), people.end(), [&](const Enrolled& each) {
      return each.name == by && each.role == role;
    }));
    const auto note = Body::parse(entry.value("signoff", ""));
    RC_ASSERT(note["person"] == by);
    RC_ASSERT(note["role"] == role);
  }

  // Whether some entry confirms entry n, rightly signed by that person in such a role.
  void seconded_by(std::uint64_t n, const std::string& second, const Roles& roles) {
    RC_ASSERT(
        std::any_of(world_.entries.begin(), world_.entries.end(), [&](const record::Entry& entry) {
          if (entry.kind != "second" || entry.body.value("of", std::uint64_t{0}) != n) return false;
          const auto note = Body::parse(entry.body.value("signoff", ""));
          const std::string role = entry.body.value("role", "");
          return entry.body.value("by", "") == second && note["person"] == second &&
                 note["role"] == role && contains(roles, role);
        }));
  }

  void answers(const State& state) {
    const Checklist& list = world_.fold.checklist();
    for (std::size_t i = 0; i < list.items.size(); ++i) {
      const ItemState& shown = state.items[i];
      if (shown.standing != Standing::holds || !shown.answered_n) continue;
      signed_by(*shown.answered_n, list.items[i].by);
      if (list.items[i].second.empty()) continue;
      RC_ASSERT(!shown.second.empty());
      RC_ASSERT(shown.second != shown.by);
      seconded_by(*shown.answered_n, shown.second, list.items[i].second);
    }
  }

  // A key is in one place or hand, and leaves it only by the signature of whoever holds it.
  void keys(const State& state) {
    const KeyState& key = state.keys.at(0);
    const Key& rules = world_.fold.checklist().keys[0];
    RC_ASSERT(key.person != contains(rules.places, key.holder));
    if (!before_ || before_->keys.at(0).holder == key.holder) return;
    const KeyState& was = before_->keys.at(0);
    const record::Entry& last = world_.entries.back();
    if (!was.person) {
      RC_ASSERT(last.kind == "key-take");
      RC_ASSERT(last.body.value("by", "") == key.holder);
      signed_by(last.n, rules.takers);
      return;
    }
    RC_ASSERT(last.kind == "key-give" || last.kind == "key-put");
    RC_ASSERT(last.body.value("by", "") == was.holder);
    if (last.kind == "key-give") RC_ASSERT(was.offered_to == key.holder);
    if (key.holder == rules.firing) {
      RC_ASSERT(state.in_field.empty());
      RC_ASSERT(state.tags.empty());
      RC_ASSERT(!state.hold);
    }
  }

  // Whoever went in, and has not signed out since, nor was told out by two.
  [[nodiscard]] bool may_be_in(const std::string& person) const {
    bool in = false;
    for (const record::Entry& entry : world_.entries) {
      const std::string of = entry.body.value("person", "");
      if (entry.kind == "in" && of == person) in = true;
      const bool by_self = entry.body.value("by", "") == person;
      if (entry.kind == "out" && of == person && by_self) in = false;
      const std::string what = entry.body.value("what", "");
      if (entry.kind == "second" && what.starts_with(person + " is out")) in = false;
    }
    return in;
  }

  void release(const State& state) {
    ++releases_;
    const Checklist& list = world_.fold.checklist();
    for (std::size_t i = 0; i < list.items.size(); ++i) {
      if (!list.stages[list.items[i].stage].release) continue;
      const Standing standing = state.items[i].standing;
      RC_ASSERT(standing == Standing::holds || standing == Standing::waived);
      const bool never =
          list.items[i].kind == Kind::headcount || list.items[i].kind == Kind::custody;
      RC_ASSERT(!(never && standing == Standing::waived));
    }
    RC_ASSERT(state.in_field.empty());
    for (const Who& who : kPeople) RC_ASSERT(!may_be_in(who.name));
    RC_ASSERT(!state.hold);
    RC_ASSERT(state.release.by != state.release.second);
    signed_by(*state.release.n, list.release_by);
    seconded_by(*state.release.n, state.release.second, list.release_second);
    const std::string key = state.keys.at(0).holder;
    RC_ASSERT(key == "desk" || key == "Ann" || key == "Eve");
  }

  World& world_;
  std::optional<State> before_;
  int releases_ = 0;
};

// The same whatever the size of the case: small cases would else only know the first kinds.
rc::Gen<int> evenly(int from, int to) {
  return rc::gen::resize(rc::kNominalSize, rc::gen::inRange(from, to));
}

rc::Gen<std::vector<Step>> steps() {
  return rc::gen::container<std::vector<Step>>(rc::gen::build<Step>(
      rc::gen::set(&Step::kind, evenly(0, kKinds)),
      rc::gen::set(&Step::who, rc::gen::weightedOneOf<int>({{6, evenly(0, 3)}, {1, evenly(3, 6)}})),
      rc::gen::set(&Step::whom, evenly(0, 6)), rc::gen::set(&Step::value, evenly(0, 6))));
}

void enrol_more(World& world) {
  world.put("enrol", propose_enrol(world.fold, world.now, "Ann", "safety", "vkey of Ann"));
  world.put("enrol", propose_enrol(world.fold, world.now, "Dee", "witness", "vkey of Dee"));
}

RC_GTEST_PROP(Day, WhatMustNeverBeNeverIs, ()) {
  World world;
  const int from = *evenly(0, 3);
  if (from == 0) world.enrol_all();
  if (from == 1) world.ready();
  if (from == 2) world.released();
  enrol_more(world);
  Acting acting(world);
  Outsider outsider(world);
  outsider.look();
  for (const Step& step : *steps()) {
    acting.act(step);
    outsider.look();
  }
  RC_CLASSIFY(outsider.releases() > 0, "with a release");
}

// Also without anybody having looked in between, and for a second reader who comes late.
RC_GTEST_PROP(Day, TheSameEntriesAreTheSameStateToTheByte, ()) {
  World world;
  if (*rc::gen::arbitrary<bool>()) {
    world.released();
  } else {
    world.enrol_all();
  }
  enrol_more(world);
  Acting acting(world);
  const bool looked_at = *rc::gen::arbitrary<bool>();
  for (const Step& step : *steps()) {
    acting.act(step);
    if (looked_at) (void)world.state();
  }
  FakePins again_pins = world.pins;
  for (auto& [pin, verdict] : again_pins.verdicts) verdict = "fits";  // as before the first entry
  Outside outside = world.outside;
  outside.source = &again_pins;
  Fold again(world.fold.checklist(), outside);
  for (const record::Entry& entry : world.entries) again.take(entry);
  RC_ASSERT(to_json(again.at(world.now)).dump() == to_json(world.state()).dump());
}

// Whoever goes on from a snapshot taken at any moment sees the same day.
RC_GTEST_PROP(Day, ASnapshotAtAnyMomentChangesNothing, ()) {
  World world;
  world.released();
  enrol_more(world);
  Acting acting(world);
  const auto before = *steps();
  const auto behind = *steps();
  for (const Step& step : before) acting.act(step);
  FakePins pins;
  Outside outside = world.outside;
  outside.source = &pins;
  Fold again(world.fold.checklist(), outside);
  RC_ASSERT(restore(again, snapshot(world.fold)));
  const std::size_t from = world.entries.size();
  for (const Step& step : behind) acting.act(step);
  for (std::size_t i = from; i < world.entries.size(); ++i) again.take(world.entries[i]);
  RC_ASSERT(to_json(again.at(world.now)).dump() == to_json(world.state()).dump());
}

// The maker and the fold know the same rules: what is taken when proposed is taken when written.
RC_GTEST_PROP(Day, WhatIsProposedAndSignedIsTaken, ()) {
  World world;
  world.ready();
  enrol_more(world);
  Acting acting(world);
  for (const Step& step : *steps()) {
    acting.act(step);
    const Who who = kPeople[static_cast<std::size_t>(step.whom)];
    const auto body = propose_lift(world.fold, world.now, who, "it was nothing");
    const auto release = propose_release(world.fold, world.now, who);
    const auto& proposed = step.value % 2 == 0 ? body : release;
    if (!proposed) continue;
    const auto ignored = world.fold.day().ignored_count;
    world.sign(who, step.value % 2 == 0 ? "lift" : "release", *proposed);
    RC_ASSERT(world.fold.day().ignored_count == ignored);
  }
}

}  // namespace
}  // namespace walkdown::day
