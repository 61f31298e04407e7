// SPDX-License-Identifier: Apache-2.0
#include "reader/match/search.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace walkdown::match {
namespace {

constexpr double kFaultToo = 3;  // nats at least that a load costs which was moved and is faulty

using Pairs = std::vector<std::pair<std::uint32_t, std::uint32_t>>;

}  // namespace

double Search::gain(std::uint32_t slot, std::uint32_t spec) const {
  if (state_.on[slot] == spec || field_.slots[slot].seen.unread()) return 0;
  return state_.cost[slot] - mixture_.cost(field_.slots[slot], spec);
}

double Search::net(const Event& event) const {
  double sum = -event.price;
  for (const Effect& effect : event.effects) {
    sum += gain(effect.slot, effect.source == kNowhere ? kNothing : state_.on[effect.source]);
  }
  return sum;
}

double Search::excess(std::uint32_t first, std::uint32_t count) const {
  double sum = 0;
  for (std::uint32_t i = first; i < first + count; ++i) sum += state_.excess[i];
  return sum;
}

bool Search::near(std::uint32_t slot, std::uint32_t spec) const {
  const Seen& seen = field_.slots[slot].seen;
  if (spec == kNothing || seen.numbers == 0) return spec == kNothing && seen.numbers == 0;
  const Shape& sound = mixture_.table().specs[spec].sound;
  const double reach = (sound.box[0] + sound.box[1] + sound.box[2]) / 2 +
                       4 * std::sqrt(sound.rest + mixture_.shared().noise);
  return std::abs(seen.mean - sound.mean) < reach;
}

void finish(Event& event, const Field& field, const State& state) {
  auto& effects = event.effects;
  effects.erase(std::remove_if(effects.begin(), effects.end(),
                               [&](const Effect& e) {
                                 const std::uint32_t now = state.from[e.slot];
                                 const std::uint32_t next =
                                     e.source == kNowhere ? kNowhere : state.from[e.source];
                                 return now == next;
                               }),
                effects.end());
  std::sort(effects.begin(), effects.end(),
            [](const Effect& a, const Effect& b) { return a.slot < b.slot; });
  auto& members = event.members;
  std::sort(members.begin(), members.end());
  members.erase(std::unique(members.begin(), members.end()), members.end());
  (void)field;
}

void Search::swap(std::uint32_t a, std::uint32_t b, Events& out) const {
  const std::uint32_t on_a = state_.on[a];
  const std::uint32_t on_b = state_.on[b];
  if (a == b || on_a == on_b) return;
  const double price = prices_.swap(a, b);
  double room = state_.excess[a] + state_.excess[b] - price;
  if (room < keep_) return;
  if (!near(a, on_b)) room -= kFaultToo;
  if (!near(b, on_a)) room -= kFaultToo;
  if (room < keep_) return;
  const double gain_a = gain(a, on_b);
  if (gain_a + state_.excess[b] - price < keep_) return;
  Event event;
  event.price = price;
  event.net = gain_a + gain(b, on_a) - price;
  if (event.net < keep_) return;
  event.effects = {{a, b}, {b, a}};
  event.members = {a, b};
  finish(event, field_, state_);
  out.push_back(std::move(event));
}

void Search::swaps(std::uint32_t slot, Events& out) const {
  const Module& module = field_.modules[field_.module_of[field_.rail_of[slot]]];
  // Whole modules are walked while they are of the size that modules have; beyond, the rail.
  const Rail& rail = field_.rails[field_.rail_of[slot]];
  const bool small = module.slots <= 512;
  const std::uint32_t first = small ? module.first_slot : rail.first;
  const std::uint32_t count = small ? module.slots : rail.size;
  const double have = state_.excess[slot];
  for (std::uint32_t j = first; j < first + count; ++j) {
    // Between two bad slots the lower one asks.
    if (state_.excess[j] > kBad && j < slot) continue;
    if (have + state_.excess[j] < 4 + keep_) continue;
    swap(slot, j, out);
  }
}

// Pairs change places; the load on a pin that the other side does not have hangs loose, or stayed.
void Search::exchange(Kind kind, double price, const Pairs& pairs,
                      const std::vector<std::uint32_t>& alone, Events& out) const {
  double room = -price;
  for (const auto& [a, b] : pairs) room += state_.excess[a] + state_.excess[b];
  for (const std::uint32_t slot : alone) room += state_.excess[slot];
  if (room < keep_) return;
  Event event;
  event.kind = kind;
  event.price = price;
  for (const auto& [a, b] : pairs) {
    if (state_.on[a] == state_.on[b]) {
      room -= state_.excess[a] + state_.excess[b];
      continue;
    }
    room -= state_.excess[a] - gain(a, state_.on[b]) + state_.excess[b] - gain(b, state_.on[a]);
    if (room < keep_) return;
  }
  for (const std::uint32_t slot : alone) {
    const double loose = gain(slot, kNothing);
    room -= state_.excess[slot] - std::max(0.0, loose);
    if (loose > 0) event.effects.push_back({slot, kNowhere});
  }
  event.net = room;
  if (event.net < keep_) return;
  for (const auto& [a, b] : pairs) {
    const bool held_a = state_.from[a] != kNowhere;
    const bool held_b = state_.from[b] != kNowhere;
    event.effects.push_back({a, held_b ? b : kNowhere});
    event.effects.push_back({b, held_a ? a : kNowhere});
  }
  finish(event, field_, state_);
  out.push_back(std::move(event));
}

void Search::rail_pair(std::uint32_t a, std::uint32_t b, Events& out) const {
  const Rail& ra = field_.rails[a];
  const Rail& rb = field_.rails[b];
  const std::uint32_t common = std::min(ra.length, rb.length);
  if (common == 0 || a == b) return;
  const double price = prices_.rails(a, b);
  if (excess(ra.first, ra.size) + excess(rb.first, rb.size) - price < keep_) return;
  Pairs pairs;
  std::vector<std::uint32_t> alone;
  for (std::uint32_t i = 0; i < common; ++i) pairs.emplace_back(ra.first + i, rb.first + i);
  for (std::uint32_t i = common; i < ra.length; ++i) alone.push_back(ra.first + i);
  for (std::uint32_t i = common; i < rb.length; ++i) alone.push_back(rb.first + i);
  // Rails of different length do not fit each other's socket: rarer still.
  const std::size_t before = out.size();
  exchange(Kind::rails_exchanged, price + (alone.empty() ? 0 : 2), pairs, alone, out);
  if (out.size() == before) return;
  for (const Rail* rail : {&ra, &rb}) {
    for (std::uint32_t i = 0; i < rail->size; ++i) {
      if (field_.slots[rail->first + i].spec != kNothing) {
        out.back().members.push_back(rail->first + i);
      }
    }
  }
  std::sort(out.back().members.begin(), out.back().members.end());
}

void Search::module_pair(std::uint32_t a, std::uint32_t b, Events& out) const {
  const Module& ma = field_.modules[a];
  const Module& mb = field_.modules[b];
  const double price = prices_.modules();
  if (a == b) return;
  if (excess(ma.first_slot, ma.slots) + excess(mb.first_slot, mb.slots) - price < keep_) return;
  Pairs pairs;
  std::vector<std::uint32_t> alone;
  std::uint32_t i = ma.first_slot;
  std::uint32_t j = mb.first_slot;
  const auto place = [&](std::uint32_t slot) {
    return std::pair{field_.slots[slot].pin.rail, field_.slots[slot].pin.pin};
  };
  while (i < ma.first_slot + ma.slots || j < mb.first_slot + mb.slots) {
    const bool more_a = i < ma.first_slot + ma.slots;
    const bool more_b = j < mb.first_slot + mb.slots;
    if (more_a && more_b && place(i) == place(j))
      pairs.emplace_back(i++, j++);
    else if (more_a && (!more_b || place(i) < place(j)))
      alone.push_back(i++);
    else
      alone.push_back(j++);
  }
  const std::size_t before = out.size();
  exchange(Kind::modules_exchanged, price, pairs, alone, out);
  if (out.size() == before) return;
  for (const Module* module : {&ma, &mb}) {
    for (std::uint32_t s = module->first_slot; s < module->first_slot + module->slots; ++s) {
      if (field_.slots[s].spec != kNothing) out.back().members.push_back(s);
    }
  }
  std::sort(out.back().members.begin(), out.back().members.end());
}

}  // namespace walkdown::match
