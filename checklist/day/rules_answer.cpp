// SPDX-License-Identifier: Apache-2.0
// answer, second, pause
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <limits>

#include "checklist/day/answer_value.h"
#include "checklist/day/body.h"
#include "checklist/day/gate.h"
#include "checklist/day/rules.h"
#include "checklist/day/seconds.h"

namespace walkdown::day {
namespace {

constexpr std::int64_t kTooFast_ms = 1'000;  // NTSB/AAR-89/04: answers that came without a look

Done needs_hold(const Scene& scene, const Item& item) {
  for (const std::size_t need : item.needs) {
    const Judgement found = judge(scene.view, need, scene.moment);
    if (found.good()) continue;
    const std::string& id = scene.view.list.items[need].id;
    return refusal(fmt::format("{} rests on {}, which is {}: {}", item.id, id, word(found.standing),
                               found.why),
                   "see to that first");
  }
  return done();
}

Done check_answer(const Scene& scene) {
  const std::size_t index = scene.view.list.item(scene.text("item"));
  if (index == Checklist::npos) return no_such_item(scene);
  const Item& item = scene.view.list.items[index];
  if (!item.asked() || item.kind == Kind::wind) {
    return refusal(item.id + " is not answered by anyone: it follows from what is",
                   item.kind == Kind::wind ? "read the wind and enter that"
                                           : "see to what it is about, and it will hold by itself");
  }
  if (locked(scene.view, item.stage)) {
    return not_begun(scene, item.stage);
  }
  if (const auto value = answer_value(scene.view, item, scene.body()); !value) return value.error();
  if (const Done fine = needs_hold(scene, item); !fine) return fine;
  return signed_by(scene, item.by);
}

void look_for_break(const Scene& scene, std::size_t index, Day& day) {
  const std::int64_t silence_ms = scene.moment.sure_ms - day.last_answer_sure_ms;
  const bool other = day.last_answered && *day.last_answered != index;
  if (!other || silence_ms < scene.view.list.break_after_ms) return;
  if (scene.view.list.items[*day.last_answered].stage != scene.view.list.items[index].stage) return;
  ask_again(scene.view.list, day, scene.entry.n, "comes up again after a break");
}

void apply_answer(const Scene& scene, Day& day, PinBook& /*book*/) {
  const std::size_t index = scene.view.list.item(scene.text("item"));
  const Item& item = scene.view.list.items[index];
  const auto value = answer_value(scene.view, item, scene.body());
  look_for_break(scene, index, day);
  Answer answer{claim(scene, item.id + ": " + value->said), value->said, value->good, false,
                value->why};
  const auto asked_up_ms = whole_in(scene.body(), "asked_up_ms");
  answer.fast = !asked_up_ms || scene.entry.up_ms - *asked_up_ms < kTooFast_ms;
  day.items[index].answer = std::move(answer);
  day.items[index].broken.reset();
  day.last_answered = index;
  day.last_answer_sure_ms = scene.moment.sure_ms;
}

Done check_second(const Scene& scene) {
  const auto of = whole_in(scene.body(), "of");
  if (!of || *of < 0) return refusal("it does not say what it confirms", "name the entry");
  const auto open = open_claim(scene.view, static_cast<std::uint64_t>(*of));
  if (!open)
    return refusal(fmt::format("entry {} waits for no second signature", *of),
                   "look at the list of those that wait; what was broken since is done anew");
  if (open->claim.by == scene.by() || open->barred == scene.by()) {
    return refusal("one person cannot sign twice", "let somebody else look and sign");
  }
  if (open->claim.what != scene.text("what")) {
    return refusal("what is confirmed is not what was claimed: " + open->claim.what,
                   "look again and confirm what was claimed, or let it be claimed anew");
  }
  if (scene.moment.aged_ms - open->claim.moment.aged_ms > kSecondWithin_ms) {
    return refusal("the first signature is too old to be confirmed", "sign both anew");
  }
  if (open->needs_gate) {
    const Gate now = gate(scene.view, scene.moment);
    if (!now.open()) return gate_is_shut(now);
  }
  return signed_by(scene, open->roles);
}

void apply_second(const Scene& scene, Day& day, PinBook& book) {
  const auto of = static_cast<std::uint64_t>(whole_in(scene.body(), "of").value_or(0));
  confirm(scene.view, of, {scene.by(), scene.entry.n}, scene.moment, day);
  book.forget_waivers();
}

Error no_such_stage(const Scene& scene) {
  std::string stages;
  for (const Stage& each : scene.view.list.stages) stages += (stages.empty() ? "" : ", ") + each.id;
  return refusal("the checklist has no such stage: " + scene.text("stage"),
                 "choose one of these: " + stages);
}

Error already_closed(const Scene& scene, std::size_t stage) {
  const std::string& by = scene.day().pauses[stage]->by;
  return refusal(fmt::format("{} has closed this pause already", by), "go on with the next stage");
}

Done check_pause(const Scene& scene) {
  const std::size_t index = scene.view.list.stage(scene.text("stage"));
  if (index == Checklist::npos) return no_such_stage(scene);
  const Stage& stage = scene.view.list.stages[index];
  if (locked(scene.view, index)) return not_begun(scene, index);
  if (index == scene.view.list.last_release_stage()) {
    return refusal("the release itself closes this stage", "sign the release");
  }
  if (scene.day().pauses[index]) return already_closed(scene, index);
  for (std::size_t i = stage.first; i < stage.first + stage.count; ++i) {
    const Judgement found = judge(scene.view, i, scene.moment);
    if (found.good()) continue;
    return refusal(
        fmt::format("{} is {}: {}", scene.view.list.items[i].id, word(found.standing), found.why),
        "see to it first, or let the lead waive it with a reason");
  }
  return signed_by(scene, stage.pause_by);
}

void apply_pause(const Scene& scene, Day& day, PinBook& /*book*/) {
  const std::size_t index = scene.view.list.stage(scene.text("stage"));
  day.pauses[index] = claim(scene, scene.view.list.stages[index].title);
}

constexpr std::array<Rule, 3> kRules = {{{"answer", check_answer, apply_answer},
                                         {"second", check_second, apply_second},
                                         {"pause", check_pause, apply_pause}}};

}  // namespace

std::span<const Rule> answer_rules() { return kRules; }

}  // namespace walkdown::day
