// SPDX-License-Identifier: Apache-2.0
#include <array>

#include "checklist/day/state.h"

namespace walkdown::day {
namespace {

using nlohmann::json;

constexpr std::array<const char*, 4> kRelease = {"none", "pending", "stands", "fallen"};

template <typename T>
json maybe(const std::optional<T>& value) {
  return value ? json(*value) : json(nullptr);
}

json of(const ItemState& item) {
  return {{"id", item.id},
          {"standing", word(item.standing)},
          {"why", item.why},
          {"until_at_ms", maybe(item.until_at_ms)},
          {"ready_at_ms", maybe(item.ready_at_ms)},
          {"answer", item.answer},
          {"by", item.by},
          {"second", item.second},
          {"fast", item.fast},
          {"answered_n", maybe(item.answered_n)}};
}

json of(const StageState& stage) {
  return {{"id", stage.id},
          {"locked", stage.locked},
          {"paused", stage.paused},
          {"paused_by", stage.paused_by},
          {"over", stage.over}};
}

json of(const KeyState& key) {
  return {{"name", key.name},
          {"holder", key.holder},
          {"person", key.person},
          {"offered_to", key.offered_to},
          {"offer_n", maybe(key.offer_n)}};
}

json of(const ReleaseState& release) {
  return {{"word", kRelease.at(static_cast<std::size_t>(release.word))},
          {"why", release.why},
          {"by", release.by},
          {"second", release.second},
          {"n", maybe(release.n)},
          {"until_at_ms", maybe(release.until_at_ms)}};
}

json of(const WindLog& wind) {
  return {{"n", wind.n},
          {"mean_mm_per_s", wind.mean_mm_per_s},
          {"gust_mm_per_s", wind.gust_mm_per_s},
          {"by", wind.by}};
}

json of(const HoldLog& hold) { return {{"n", hold.n}, {"by", hold.by}, {"reason", hold.reason}}; }
json of(const WaitingState& each) { return {{"n", each.n}, {"what", each.what}, {"by", each.by}}; }
json of(const Ignored& each) { return {{"n", each.n}, {"why", each.why}}; }
json of(const Enrolled& each) {
  return {{"name", each.name}, {"role", each.role}, {"vkey", each.vkey}};
}

template <typename T>
json list(const std::vector<T>& items) {
  json array = json::array();
  for (const T& each : items) array.push_back(of(each));
  return array;
}

}  // namespace

json to_json(const State& state) {
  return {{"entries", state.entries},
          {"at_ms", state.at_ms},
          {"word", state.word},
          {"show_at_ms", maybe(state.show_at_ms)},
          {"utc_offset_min", state.utc_offset_min},
          {"stages", list(state.stages)},
          {"items", list(state.items)},
          {"keys", list(state.keys)},
          {"in_field", state.in_field},
          {"tags", state.tags},
          {"hold", state.hold ? of(*state.hold) : json(nullptr)},
          {"holds", list(state.holds)},
          {"winds", list(state.winds)},
          {"release", of(state.release)},
          {"against", state.against},
          {"would_stand_until_at_ms", maybe(state.would_stand_until_at_ms)},
          {"waiting", list(state.waiting)},
          {"people", list(state.people)},
          {"readings", state.readings},
          {"ignored", list(state.ignored)},
          {"ignored_count", state.ignored_count}};
}

}  // namespace walkdown::day
