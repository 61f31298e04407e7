// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <algorithm>

#include "checklist/day/state.h"

namespace walkdown::day {
namespace {

void of_lists(const std::vector<std::string>& before, const std::vector<std::string>& after,
              const char* came, const char* went, std::vector<std::string>& said) {
  const auto misses = [](const std::vector<std::string>& list, const std::string& name) {
    return std::find(list.begin(), list.end(), name) == list.end();
  };
  for (const std::string& name : after) {
    if (misses(before, name)) said.push_back(fmt::format(fmt::runtime(came), name));
  }
  for (const std::string& name : before) {
    if (misses(after, name)) said.push_back(fmt::format(fmt::runtime(went), name));
  }
}

void of_release(const ReleaseState& before, const ReleaseState& after,
                std::vector<std::string>& said) {
  if (before.word == after.word && before.n == after.n) return;
  switch (after.word) {
    case ReleaseWord::pending:
      said.push_back("release signed by " + after.by + ": " + after.why);
      break;
    case ReleaseWord::stands:
      said.push_back(fmt::format("released by {} and {}: {}", after.by, after.second, after.why));
      break;
    case ReleaseWord::fallen:
      said.push_back("the release fell: " + after.why);
      break;
    case ReleaseWord::none:
      break;
  }
}

void of_items(const Checklist& list, const State& before, const State& after,
              std::vector<std::string>& said) {
  for (std::size_t i = 0; i < after.items.size() && i < before.items.size(); ++i) {
    const ItemState& was = before.items[i];
    const ItemState& is = after.items[i];
    if (was.standing == is.standing && was.answered_n == is.answered_n) continue;
    const StageState& stage = after.stages.at(list.items.at(i).stage);
    if (stage.locked || stage.over) continue;
    said.push_back(fmt::format(
        "{} {}: {}", is.id,
        is.standing == Standing::holds ? "holds" : fmt::format("is {}", word(is.standing)),
        is.why));
  }
}

void of_stages(const State& before, const State& after, std::vector<std::string>& said) {
  for (std::size_t i = 0; i < after.stages.size() && i < before.stages.size(); ++i) {
    if (before.stages[i].paused || !after.stages[i].paused) continue;
    said.push_back(
        fmt::format("{} closed the pause after {}", after.stages[i].paused_by, after.stages[i].id));
  }
}

void of_keys(const State& before, const State& after, std::vector<std::string>& said) {
  for (std::size_t i = 0; i < after.keys.size() && i < before.keys.size(); ++i) {
    const KeyState& was = before.keys[i];
    const KeyState& is = after.keys[i];
    if (was.holder != is.holder) {
      said.push_back(fmt::format("the {} went from {} to {}", is.name,
                                 was.person ? was.holder : "the " + was.holder,
                                 is.person ? is.holder : "the " + is.holder));
    } else if (was.offered_to != is.offered_to && !is.offered_to.empty()) {
      said.push_back(fmt::format("{} signed for the {}; {} holds it until signing too",
                                 is.offered_to, is.name, is.holder));
    }
  }
}

// A tag at a box without its key keeps nobody from anything, whatever its owner believes.
void of_empty_box(const Checklist& list, const State& after, std::vector<std::string>& said) {
  for (std::size_t i = 0; i < after.keys.size(); ++i) {
    const KeyState& key = after.keys[i];
    if (!key.person && key.holder != list.keys.at(i).firing) continue;
    said.push_back(fmt::format("but the {} is {}: nobody is to go in before it is back", key.name,
                               key.person ? "with " + key.holder : "in the " + key.holder));
  }
}

}  // namespace

std::vector<std::string> changes(const Checklist& list, const State& before, const State& after) {
  std::vector<std::string> said;
  of_items(list, before, after, said);
  of_stages(before, after, said);
  of_keys(before, after, said);
  of_lists(before.in_field, after.in_field, "{} is in the field", "{} is out of the field", said);
  of_lists(before.tags, after.tags, "{} hung a tag", "the tag of {} is back", said);
  if (after.tags.size() > before.tags.size()) of_empty_box(list, after, said);
  for (const HoldLog& hold : after.holds) {
    const auto is_it = [&](const HoldLog& each) { return each.n == hold.n; };
    if (std::any_of(before.holds.begin(), before.holds.end(), is_it)) continue;
    said.push_back(fmt::format("hold{}{}", hold.by.empty() ? "" : " by " + hold.by,
                               hold.reason.empty() ? "" : ": " + hold.reason));
  }
  if (before.hold && !after.hold) {
    said.emplace_back(before.holds.size() == 1 ? "the hold was lifted" : "all holds were lifted");
  }
  of_release(before.release, after.release, said);
  return said;
}

}  // namespace walkdown::day
