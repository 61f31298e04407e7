// SPDX-License-Identifier: Apache-2.0
// waive, waive-pin: the lead takes one failure on himself, with a reason, and another stands by
// him. It covers that failure: a new one finds no waiver.
#include <fmt/format.h>

#include <array>

#include "checklist/day/body.h"
#include "checklist/day/rules.h"

namespace walkdown::day {
namespace {

Done check_reason(const Scene& scene) {
  if (!says_nothing(scene.text("reason"))) return done();
  return refusal("a waiver needs a reason", "write why");
}

Done check_waive(const Scene& scene) {
  const std::size_t index = scene.view.list.item(scene.text("item"));
  if (index == Checklist::npos) return no_such_item(scene);
  const Item& item = scene.view.list.items[index];
  if (!can_be_waived(item)) {
    return refusal(item.id + " cannot be waived by anyone", "see to it that it holds");
  }
  if (locked(scene.view, item.stage)) return not_begun(scene, item.stage);
  if (judge(scene.view, index, scene.moment).good()) {
    return refusal(item.id + " needs no waiver: it holds", "go on");
  }
  if (const Done reason = check_reason(scene); !reason) return reason;
  return signed_by(scene, scene.view.list.lead);
}

void apply_waive(const Scene& scene, Day& day, PinBook& /*book*/) {
  const std::size_t index = scene.view.list.item(scene.text("item"));
  const Failure failure = judge(scene.view, index, scene.moment).failure;
  const std::string reason = scene.text("reason");
  day.items[index].waiver =
      Waiver{claim(scene, scene.view.list.items[index].id + " waived: " + reason), reason, failure};
}

Done check_waive_pin(const Scene& scene) {
  const std::size_t index = scene.view.book.find(scene.text("pin"));
  if (index == PinBook::npos) {
    return refusal("the plan has no such pin: " + scene.text("pin"), "write it as M01/R1/P05");
  }
  const std::string verdict = scene.view.book.verdict(scene.view.outside, scene.day(), index);
  if (verdict == "fits") return refusal("the pin fits and needs no waiver", "go on");
  if (scene.text("verdict") != verdict) {
    return refusal(fmt::format("{} reads {} by now", scene.text("pin"), verdict),
                   "look at it again, and waive that if it must be");
  }
  if (const Done reason = check_reason(scene); !reason) return reason;
  return signed_by(scene, scene.view.list.lead);
}

void apply_waive_pin(const Scene& scene, Day& day, PinBook& book) {
  const std::string pin = scene.text("pin");
  const std::string reason = scene.text("reason");
  const std::uint64_t undone_n = day.pins[book.find(pin)].undone_n;
  day.pin_waivers[pin] = {claim(scene, pin + " waived: " + reason), reason, scene.text("verdict"),
                          undone_n};
  book.forget_waivers();
}

constexpr std::array<Rule, 2> kRules = {
    {{"waive", check_waive, apply_waive}, {"waive-pin", check_waive_pin, apply_waive_pin}}};

}  // namespace

std::span<const Rule> waiver_rules() { return kRules; }

}  // namespace walkdown::day
