// SPDX-License-Identifier: Apache-2.0
// hold, lift, release, withdraw, close
#include <array>

#include "checklist/day/gate.h"
#include "checklist/day/rules.h"

namespace walkdown::day {
namespace {

Done always(const Scene& /*scene*/) { return done(); }

// Anyone, at once: no name, no signature, no reason is asked for.
void apply_hold(const Scene& scene, Day& day, PinBook& book) {
  if (!day.hold) day.hold = HoldLog{scene.entry.n, scene.by(), scene.text("reason")};
  break_items(scene.view.list, day, book, Event::hold, scene.entry.n, "a hold was called");
}

Done check_lift(const Scene& scene) {
  if (!scene.day().hold) return refusal("no hold is on");
  if (scene.text("reason").empty()) return refusal("a hold is lifted with a reason", "write why");
  return signed_by(scene, scene.view.list.lead);
}

void apply_lift(const Scene& scene, Day& day, PinBook& /*book*/) {
  day.hold.reset();
  ask_again(scene.view.list, day, scene.entry.n, "comes up again after the hold");
}

Done check_release(const Scene& scene) {
  if (scene.day().release.word == ReleaseWord::stands) return refusal("a release stands already");
  const Gate now = gate(scene.view, scene.moment);
  if (!now.open()) return refusal("the gate is shut: " + now.against.front());
  return signed_by(scene, scene.view.list.release_by);
}

void apply_release(const Scene& scene, Day& day, PinBook& /*book*/) {
  const Gate now = gate(scene.view, scene.moment);
  day.release = {ReleaseWord::pending, claim(scene, "the release"), now.until_aged_ms,
                 "waits for its second signature"};
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
                                         {"withdraw", always, apply_withdraw},
                                         {"close", always, apply_close}}};

}  // namespace

std::span<const Rule> stop_rules() { return kRules; }

}  // namespace walkdown::day
