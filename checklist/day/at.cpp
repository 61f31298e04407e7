// SPDX-License-Identifier: Apache-2.0
// From the day to what is shown of it.
#include "checklist/day/fold.h"
#include "checklist/day/gate.h"
#include "checklist/day/seconds.h"

namespace walkdown::day {
namespace {

class Picture {
 public:
  Picture(const View& view, Moment moment) : view_(view), moment_(moment) {}

  State make() {
    state_.entries = view_.day.entries;
    state_.show_at_ms = view_.day.show_at_ms;
    state_.utc_offset_min = view_.day.utc_offset_min;
    stages();
    for (std::size_t i = 0; i < view_.list.items.size(); ++i) item(i);
    ground();
    people();
    release();
    state_.word = word();
    for (std::size_t i = 0; i < view_.list.stages.size(); ++i) {
      state_.stages[i].over = state_.word == "after" && view_.list.stages[i].release;
    }
    return std::move(state_);
  }

 private:
  [[nodiscard]] std::optional<std::int64_t> at(std::optional<std::int64_t> aged_ms) const {
    if (!aged_ms) return std::nullopt;
    return view_.day.time.at_of_aged(*aged_ms);
  }
  void stages();
  void item(std::size_t index);
  void ground();
  void people();
  void release();
  void waiting();
  [[nodiscard]] std::string word() const;
  [[nodiscard]] bool after() const;

  const View& view_;
  Moment moment_;
  State state_;
};

void Picture::stages() {
  for (std::size_t i = 0; i < view_.list.stages.size(); ++i) {
    const auto& pause = view_.day.pauses[i];
    state_.stages.push_back({view_.list.stages[i].id, locked(view_, i), pause.has_value(),
                             pause ? pause->by : "", false});
  }
}

void Picture::item(std::size_t index) {
  const Judgement found = judge(view_, index, moment_);
  ItemState item;
  item.id = view_.list.items[index].id;
  item.standing = found.standing;
  item.why = found.why;
  if (found.good()) item.until_at_ms = at(found.until_aged_ms);
  if (found.ready_sure_ms) item.ready_at_ms = view_.day.time.at_of_sure(*found.ready_sure_ms);
  if (const auto& answer = view_.day.items[index].answer) {
    item.answer = answer->value;
    item.by = answer->claim.by;
    item.second = answer->claim.second;
    item.fast = answer->fast;
    item.answered_n = answer->claim.n;
  }
  state_.items.push_back(std::move(item));
}

void Picture::ground() {
  const Day& day = view_.day;
  for (std::size_t i = 0; i < day.keys.size(); ++i) {
    const KeyLog& key = day.keys[i];
    KeyState shown{view_.list.keys[i].name, key.holder, key.person, key.offered_to, {}};
    if (!key.offered_to.empty()) shown.offer_n = key.offer_n;
    state_.keys.push_back(std::move(shown));
  }
  for (const auto& [person, n] : day.in_field) state_.in_field.push_back(person);
  for (const auto& [person, n] : day.tags) state_.tags.push_back(person);
  state_.holds = day.holds;
  if (!day.holds.empty()) state_.hold = day.holds.front();
  for (const auto& [period_ms, wind] : day.winds) state_.winds.push_back(wind);
}

void Picture::people() {
  const Day& day = view_.day;
  state_.people = day.people;
  state_.readings = day.readings;
  state_.ignored = day.ignored;
  state_.ignored_count = day.ignored_count;
  waiting();
}

void Picture::waiting() {
  const Day& day = view_.day;
  const auto add = [&](const Claim& claim) {
    if (open_claim(view_, claim.n)) state_.waiting.push_back({claim.n, claim.what, claim.by});
  };
  for (const ItemLog& log : day.items) {
    if (log.answer && log.answer->good && !log.broken) add(log.answer->claim);
    if (log.waiver) add(log.waiver->claim);
  }
  for (const auto& [pin, waiver] : day.pin_waivers) add(waiver.claim);
  for (const Return& each : day.returns) add(each.claim);
  if (day.release.word == ReleaseWord::pending) add(day.release.claim);
}

// A release that stood falls the moment anything under it does, also between two entries.
void Picture::release() {
  const ReleaseLog& log = view_.day.release;
  const Gate now = gate(view_, moment_);
  state_.against = now.against;
  if (now.open()) state_.would_stand_until_at_ms = at(now.until_aged_ms);
  ReleaseState& shown = state_.release;
  shown.word = log.word;
  shown.why = log.why;
  if (log.word == ReleaseWord::none) return;
  shown.by = log.claim.by;
  shown.second = log.claim.second;
  shown.n = log.claim.n;
  const bool up = log.word == ReleaseWord::stands || log.word == ReleaseWord::pending;
  if (up && !now.open()) {
    shown.word = ReleaseWord::fallen;
    shown.why = now.against.front();
  } else if (log.word == ReleaseWord::stands) {
    shown.until_at_ms = at(now.until_aged_ms);
  }
}

std::string Picture::word() const {
  if (state_.hold) return "hold";
  if (state_.release.word == ReleaseWord::stands) return "released";
  if (after()) return "after";
  return state_.against.empty() ? "ready" : "checking";
}

// A release that fell before the show leaves the day where it was: after begins with the first
// answer behind the release.
bool Picture::after() const {
  const std::size_t last = view_.list.last_release_stage();
  if (!view_.day.released_once) return false;
  for (std::size_t i = 0; i < view_.list.items.size(); ++i) {
    if (view_.list.items[i].stage > last && view_.day.items[i].answer) return true;
  }
  return false;
}

}  // namespace

State Fold::at(Now now) const {
  const View seen = view();
  State state = Picture(seen, day_.time.moment(now)).make();
  state.at_ms = now.at_ms;
  return state;
}

}  // namespace walkdown::day
