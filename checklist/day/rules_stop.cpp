// SPDX-License-Identifier: Apache-2.0
// hold, lift, release, withdraw, close
#include <array>

#include "checklist/day/body.h"
#include "checklist/day/gate.h"
#include "checklist/day/rules.h"

namespace walkdown::day {
namespace {

Done always(const Scene& /*scene*/) { return done(); }

// Anyone, at once: no name, no signature, no reason is asked for.
void apply_hold(const Scene& scene, Day& day, PinBook& book) {
  if (day.holds.size() >= Day::kMostHolds) day.holds.pop_back();
  day.holds.push_back({scene.entry.n, scene.by(), scene.text("reason")});
  break_items(scene.view.list, day, book, Event::hold, scene.entry.n, "a hold was called");
}

// Nobody lifts a hold that he did not know of.
Done check_lift(const Scene& scene) {
  const auto& holds = scene.day().holds;
  if (holds.empty()) return refusal("no hold is on", "go on");
  const auto of = whole_in(scene.body(), "of");
  if (of && (*of < 0 || static_cast<std::uint64_t>(*of) < holds.back().n)) {
    return refusal("another hold was called since: " + said(holds.back()),
                   "see to that one too, and lift both");
  }
  if (scene.text("reason").empty()) return refusal("a hold is lifted with a reason", "write why");
  return signed_by(scene, scene.view.list.lead);
}

void apply_lift(const Scene& scene, Day& day, PinBook& /*book*/) {
  day.holds.clear();
  ask_again(scene.view.list, day, scene.entry.n, "comes up again after the hold");
}

Done check_release(const Scene& scene) {
  if (stands(scene.view, scene.moment)) {
    return refusal("a release stands already", "take it back first if it must be signed anew");
  }
  const Gate now = gate(scene.view, scene.moment);
  if (!now.open()) return gate_is_shut(now);
  return signed_by(scene, scene.view.list.release_by);
}

void apply_release(const Scene& scene, Day& day, PinBook& /*book*/) {
  const Gate now = gate(scene.view, scene.moment);
  day.release = {ReleaseWord::pending, claim(scene, "the release"), now.until_aged_ms,
                 "waits for its second signature"};
}

// What is not there cannot be taken back: the record would tell of a release that never was.
Done check_withdraw(const Scene& scene) {
  const bool waits = scene.day().release.word == ReleaseWord::pending;
  if (waits || stands(scene.view, scene.moment)) return done();
  return refusal("nothing is released, so nothing can be taken back",
                 "call a hold if the show has to stop");
}

void apply_withdraw(const Scene& scene, Day& day, PinBook& /*book*/) {
  const std::string reason = scene.text("reason");
  fall(day, (scene.by().empty() ? "somebody" : scene.by()) + " withdrew it" +
                (reason.empty() ? "" : ": " + reason));
}

void apply_close(const Scene& /*scene*/, Day& day, PinBook& /*book*/) {
  fall(day, "the record was closed");
}

constexpr std::array<Rule, 5> kRules = {{{"hold", always, apply_hold},
                                         {"lift", check_lift, apply_lift},
                                         {"release", check_release, apply_release},
                                         {"withdraw", check_withdraw, apply_withdraw},
                                         {"close", always, apply_close}}};

}  // namespace

std::span<const Rule> stop_rules() { return kRules; }

}  // namespace walkdown::day
