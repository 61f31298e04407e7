// SPDX-License-Identifier: Apache-2.0
#include "reader/match/search.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace walkdown::match {
namespace {

constexpr double kRounding = 1e-9;  // nats: the same sum in another order

}  // namespace

double Search::gain(std::uint32_t slot, std::uint32_t spec) const {
  if (state_.on[slot] == spec || field_.slots[slot].seen.unread()) return 0;
  // The same pairs come up again and again: in every round, and once more when rivals are weighed.
  const std::uint64_t pair = (std::uint64_t{slot} << 32U) | spec;
  Known& known = known_[pair * 0x9E3779B97F4A7C15U >> (64 - kKnownBits)];
  if (known.pair != pair) known = {pair, mixture_.cost(field_.slots[slot], spec)};
  return state_.cost[slot] - known.cost;
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
  if (most(a, on_b) + most(b, on_a) - price < keep_) return;
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
  // Below these the other end's excess does not pay for the swap, whatever its load.
  const double near = prices_.near_swap() + keep_ - state_.excess[slot];
  const double far = prices_.least_swap(field_.rail_of[slot]) + keep_ - state_.excess[slot];
  for (std::uint32_t j = first; j < first + count; ++j) {
    const double other = state_.excess[j];
    if (other < far && (other < near || (j + 1 != slot && slot + 1 != j))) continue;
    // Between two bad slots the lower one asks.
    if (other > kBad && j < slot) continue;
    swap(slot, j, out);
  }
}

// The same sum as in weigh(), of bounds: a wrong pair is gone after a few slots. One that is left
// has each bound replaced by what the slot really saves, until the rest cannot pay any more.
bool Search::hopeless(const Exchange& exchange) const {
  double room = -exchange.price;
  for (const Run& run : exchange.runs) room += excess(run.a, run.count) + excess(run.b, run.count);
  for (const std::uint32_t slot : exchange.alone) room += state_.excess[slot];
  if (room < keep_) return true;
  for (const Run& run : exchange.runs) {
    for (std::uint32_t i = 0; i < run.count; ++i) {
      const std::uint32_t a = run.a + i;
      const std::uint32_t b = run.b + i;
      room -= state_.excess[a] - most(a, state_.on[b]) + state_.excess[b] - most(b, state_.on[a]);
      if (room < keep_) return true;
    }
  }
  // What is wrong most comes first: there the bound promises most.
  for (const bool bad : {true, false}) {
    for (const Run& run : exchange.runs) {
      for (std::uint32_t i = 0; i < run.count; ++i) {
        for (const auto& [slot, other] :
             {std::pair{run.a + i, run.b + i}, {run.b + i, run.a + i}}) {
          if ((state_.excess[slot] > kBad) != bad) continue;
          room -= most(slot, state_.on[other]) - gain(slot, state_.on[other]);
          if (room < keep_ - kRounding) return true;
        }
      }
    }
  }
  return false;
}

// Pairs change places; the load on a pin that the other side does not have hangs loose, or stayed.
void Search::weigh(const Exchange& exchange, Events& out) const {
  if (hopeless(exchange)) return;
  double room = -exchange.price;
  for (const Run& run : exchange.runs) room += excess(run.a, run.count) + excess(run.b, run.count);
  for (const std::uint32_t slot : exchange.alone) room += state_.excess[slot];
  for (const Run& run : exchange.runs) {
    for (std::uint32_t i = 0; i < run.count; ++i) {
      const std::uint32_t a = run.a + i;
      const std::uint32_t b = run.b + i;
      room -= state_.excess[a] - gain(a, state_.on[b]) + state_.excess[b] - gain(b, state_.on[a]);
      if (room < keep_) return;
    }
  }
  Event event;
  event.kind = exchange.kind;
  event.price = exchange.price;
  for (const std::uint32_t slot : exchange.alone) {
    const double loose = gain(slot, kNothing);
    room -= state_.excess[slot] - std::max(0.0, loose);
    if (loose > 0) event.effects.push_back({slot, kNowhere});
  }
  event.net = room;
  if (event.net < keep_) return;
  for (const Run& run : exchange.runs) {
    for (std::uint32_t i = 0; i < run.count; ++i) {
      const std::uint32_t a = run.a + i;
      const std::uint32_t b = run.b + i;
      event.effects.push_back({a, b});
      event.effects.push_back({b, a});
    }
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
  Exchange exchange{Kind::rails_exchanged, price, {{ra.first, rb.first, common}}, {}};
  for (std::uint32_t i = common; i < ra.length; ++i) exchange.alone.push_back(ra.first + i);
  for (std::uint32_t i = common; i < rb.length; ++i) exchange.alone.push_back(rb.first + i);
  // Rails of different length do not fit each other's socket: rarer still.
  if (!exchange.alone.empty()) exchange.price += 2;
  const std::size_t before = out.size();
  weigh(exchange, out);
  if (out.size() == before) return;
  const bool both =
      add_side(ra.first, ra.size, out.back()) && add_side(rb.first, rb.size, out.back());
  both ? std::sort(out.back().members.begin(), out.back().members.end()) : out.pop_back();
}

// Pins of the same rail and number change places. Modules of one layout are one run.
Search::Exchange Search::module_runs(const Module& a, const Module& b) const {
  Exchange out{Kind::modules_exchanged, prices_.modules(), {}, {}};
  std::uint32_t i = a.first_slot;
  std::uint32_t j = b.first_slot;
  const auto place = [&](std::uint32_t slot) {
    return std::pair{field_.slots[slot].pin.rail, field_.slots[slot].pin.pin};
  };
  while (i < a.first_slot + a.slots || j < b.first_slot + b.slots) {
    const bool more_a = i < a.first_slot + a.slots;
    const bool more_b = j < b.first_slot + b.slots;
    if (more_a && more_b && place(i) == place(j)) {
      const bool goes_on = !out.runs.empty() && out.runs.back().a + out.runs.back().count == i &&
                           out.runs.back().b + out.runs.back().count == j;
      if (!goes_on) out.runs.push_back({i, j, 0});
      ++out.runs.back().count;
      ++i, ++j;
    } else if (more_a && (!more_b || place(i) < place(j))) {
      out.alone.push_back(i++);
    } else {
      out.alone.push_back(j++);
    }
  }
  return out;
}

namespace {

bool left_loose(const Event& event) {
  return std::any_of(event.effects.begin(), event.effects.end(),
                     [](const Effect& e) { return e.source == kNowhere; });
}

constexpr double kSomeStayed = 3;  // nats

}  // namespace

void Search::module_pair(std::uint32_t a, std::uint32_t b, Events& out) const {
  const Module& ma = field_.modules[a];
  const Module& mb = field_.modules[b];
  if (a == b) return;
  const double room = excess(ma.first_slot, ma.slots) + excess(mb.first_slot, mb.slots);
  if (room - prices_.modules() < keep_) return;
  const std::size_t before = out.size();
  const Exchange exchange = module_runs(ma, mb);
  weigh(exchange, out);
  if (out.size() == before) return;
  const bool lonely = std::any_of(exchange.alone.begin(), exchange.alone.end(),
                                  [&](std::uint32_t slot) { return state_.on[slot] != kNothing; });
  if (lonely && !left_loose(out.back())) {
    // What the other module has no pin for would hang loose; where it did not, one rail of each
    // changed places, or some of them did.
    out.back().price += kSomeStayed;
    out.back().net -= kSomeStayed;
    if (std::min(ma.rails, mb.rails) == 1 || out.back().net < keep_) return out.pop_back();
  }
  const bool both = add_side(ma.first_slot, ma.slots, out.back()) &&
                    add_side(mb.first_slot, mb.slots, out.back());
  both ? std::sort(out.back().members.begin(), out.back().members.end()) : out.pop_back();
}

// The planned pins of one side; of a side without any, those that change: it has to be named. False
// where there are none either: then nothing was exchanged.
bool Search::add_side(std::uint32_t first, std::uint32_t count, Event& event) const {
  const std::size_t before = event.members.size();
  for (std::uint32_t i = first; i < first + count; ++i) {
    if (field_.slots[i].spec != kNothing) event.members.push_back(i);
  }
  if (event.members.size() > before) return true;
  for (const Effect& e : event.effects) {
    if (e.slot >= first && e.slot < first + count) event.members.push_back(e.slot);
  }
  return event.members.size() > before;
}

}  // namespace walkdown::match
