// SPDX-License-Identifier: Apache-2.0
#include "checklist/day/rules.h"

#include <algorithm>
#include <utility>

namespace walkdown::day {
namespace {

// Nothing older than the event counts for a continuity item that the event breaks.
void undo_pins(Day& day, std::uint64_t n) {
  for (PinLog& pin : day.pins) pin.undone_n = n;
}

}  // namespace

const Rule* rule(std::string_view kind) {
  for (const auto rules :
       {answer_rules(), people_rules(), key_rules(), stop_rules(), waiver_rules(), event_rules()}) {
    const auto found = std::find_if(rules.begin(), rules.end(),
                                    [&](const Rule& each) { return each.kind == kind; });
    if (found != rules.end()) return &*found;
  }
  return nullptr;
}

void break_items(const Checklist& list, Day& day, PinBook& book, Event event, std::uint64_t n,
                 const std::string& why) {
  for (std::size_t i = 0; i < list.items.size(); ++i) {
    const Item& item = list.items[i];
    if (!item.breaks(event)) continue;
    if (item.kind == Kind::continuity) {
      undo_pins(day, n);
      book.forget();
    }
    if (day.items[i].answer || item.kind == Kind::wind) day.items[i].broken = Broken{n, why};
  }
}

void ask_again(const Checklist& list, Day& day, std::uint64_t n, const std::string& why) {
  if (!day.last_answered) return;
  const std::size_t index = *day.last_answered;
  const std::size_t stage = list.items[index].stage;
  // A wait that counts from an answer is a silence by design, and would begin anew.
  const bool waited_for = std::any_of(list.items.begin(), list.items.end(), [&](const Item& item) {
    return item.after && *item.after == index;
  });
  const bool closed = day.pauses[stage].has_value() || waited_for;
  if (closed || !day.items[index].answer || day.items[index].broken) return;
  day.items[index].broken = Broken{n, why};
}

void undo(const Outside& outside, Day& day, PinBook& book, std::uint64_t n,
          const Touched& touched) {
  const auto named = [](const std::vector<std::string>& list, const std::string& name) {
    return std::find(list.begin(), list.end(), name) != list.end();
  };
  bool any = false;
  for (std::size_t i = 0; i < day.pins.size(); ++i) {
    const PlannedPin& pin = outside.pins[i];
    const bool of_module = !touched.module.empty() && pin.pin.starts_with(touched.module);
    const bool there = !pin.position.empty() && named(touched.positions, pin.position);
    if (!of_module && !there && !named(touched.pins, pin.pin)) continue;
    day.pins[i].undone_n = n;
    any = true;
  }
  if (!any) undo_pins(day, n);
  book.forget();
}

void fall(Day& day, std::string why) {
  if (day.release.word != ReleaseWord::stands && day.release.word != ReleaseWord::pending) return;
  day.release.word = ReleaseWord::fallen;
  day.release.why = std::move(why);
}

Claim claim(const Scene& scene, std::string what) {
  return {scene.entry.n, scene.moment, scene.by(), std::move(what), {}, 0};
}

}  // namespace walkdown::day
