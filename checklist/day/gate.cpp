// SPDX-License-Identifier: Apache-2.0
#include "checklist/day/gate.h"

#include <fmt/format.h>

namespace walkdown::day {
namespace {

void look_at_item(const View& view, std::size_t index, Moment moment, Gate& gate) {
  const Item& item = view.list.items[index];
  const Judgement found = judge(view, index, moment);
  if (!found.good()) {
    gate.against.push_back(fmt::format("{} is {}: {}", item.id, word(found.standing), found.why));
  } else if (found.until_aged_ms &&
             (!gate.until_aged_ms || *found.until_aged_ms < *gate.until_aged_ms)) {
    gate.until_aged_ms = found.until_aged_ms;
    gate.first_to_go = item.id;
  }
}

// The ground itself, whether or not the checklist asks for it.
void look_at_ground(const View& view, Gate& gate) {
  const Day& day = view.day;
  for (const HoldLog& hold : day.holds) gate.against.push_back(said(hold));
  for (const auto& [person, n] : day.in_field) gate.against.push_back(person + " is in the field");
  for (const auto& [person, n] : day.tags) {
    gate.against.push_back("the tag of " + person + " is not back");
  }
}

}  // namespace

std::string said(const HoldLog& hold) {
  return fmt::format("{} called a hold{}", hold.by.empty() ? "somebody" : hold.by,
                     hold.reason.empty() ? "" : ": " + hold.reason);
}

bool stands(const View& view, Moment moment) {
  return view.day.release.word == ReleaseWord::stands && gate(view, moment).open();
}

Gate gate(const View& view, Moment moment) {
  Gate gate;
  look_at_ground(view, gate);
  const std::size_t last = view.list.last_release_stage();
  if (last == Checklist::npos) gate.against.emplace_back("no stage is part of the release");
  for (std::size_t stage = 0; stage < view.list.stages.size(); ++stage) {
    const Stage& each = view.list.stages[stage];
    if (!each.release) continue;
    if (stage != last && !view.day.pauses[stage]) {
      gate.against.push_back(fmt::format("the pause after \"{}\" is not closed", each.title));
    }
    for (std::size_t i = 0; i < each.count; ++i) look_at_item(view, each.first + i, moment, gate);
  }
  return gate;
}

}  // namespace walkdown::day
