// SPDX-License-Identifier: Apache-2.0
#include "reader/match/rivals.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <cstddef>

namespace walkdown::match {
namespace {

constexpr double kTie = 1e-9;         // equal costs are normal where loads are equal
constexpr std::size_t kFewSlots = 6;  // of an event that swaps could stand for

int order(Kind kind) {
  switch (kind) {
    case Kind::modules_exchanged:
      return 0;
    case Kind::rails_exchanged:
      return 1;
    case Kind::reversed:
      return 2;
    case Kind::swapped:
      return 3;
    default:
      return 4;
  }
}

void unique(std::vector<std::uint32_t>& values) {
  std::sort(values.begin(), values.end());
  values.erase(std::unique(values.begin(), values.end()), values.end());
}

}  // namespace

bool better(const Event& a, const Event& b) {
  if (std::abs(a.net - b.net) > kTie) return a.net > b.net;
  if (a.kind != b.kind) return order(a.kind) < order(b.kind);
  if (a.effects.size() != b.effects.size()) return a.effects.size() < b.effects.size();
  for (std::size_t i = 0; i < a.effects.size(); ++i) {
    const Effect& x = a.effects[i];
    const Effect& y = b.effects[i];
    if (x.slot != y.slot) return x.slot < y.slot;
    if (x.source != y.source) return x.source < y.source;
  }
  return a.by < b.by;
}

namespace {

std::uint32_t spec_after(const State& state, const Effect& e) {
  return e.source == kNowhere ? kNothing : state.on[e.source];
}

// Of what changes for the readings, and nothing else.
std::uint64_t seen_hash(const State& state, const Event& event) {
  std::uint64_t hash = 0;
  for (const Effect& e : event.effects) {
    const std::uint32_t next = spec_after(state, e);
    if (next == state.on[e.slot]) continue;
    std::uint64_t one = ((std::uint64_t{e.slot} << 32U) | next) * 0x9E3779B97F4A7C15U;
    one = (one ^ (one >> 29U)) * 0xBF58476D1CE4E5B9U;
    hash += one ^ (one >> 32U);
  }
  return hash;
}

// Where the first event of each hash is; open addressing, for a field has hundreds of thousands.
class FirstOf {
 public:
  explicit FirstOf(std::size_t most) : cells_(std::bit_ceil(2 * most + 2)) {}

  // The index held for this hash; `index` itself where it is the first.
  std::uint32_t at(std::uint64_t hash, std::uint32_t index) {
    std::size_t i = hash & (cells_.size() - 1);
    for (; cells_[i].used; i = (i + 1) & (cells_.size() - 1)) {
      if (cells_[i].hash == hash) return cells_[i].index;
    }
    cells_[i] = {hash, index, true};
    return index;
  }

 private:
  struct Cell {
    std::uint64_t hash = 0;
    std::uint32_t index = 0;
    bool used = false;
  };
  std::vector<Cell> cells_;
};

}  // namespace

void pool(Events& events, const State& state) {
  FirstOf first(events.size());
  std::vector<double> sum;   // of the weights of all that are one, against `base`
  std::vector<double> base;  // the largest net of them
  std::uint32_t kept = 0;
  for (Event& event : events) {
    const std::uint32_t at = first.at(seen_hash(state, event), kept);
    if (at < kept) {
      const double above = event.net - base[at];
      sum[at] = above > 0 ? sum[at] * std::exp(-above) + 1 : sum[at] + std::exp(above);
      base[at] += std::max(0.0, above);
      if (better(event, events[at])) std::swap(event, events[at]);
      continue;
    }
    sum.push_back(1);
    base.push_back(event.net);
    if (&events[kept] != &event) events[kept] = std::move(event);
    ++kept;
  }
  events.resize(kept);
  for (std::uint32_t i = 0; i < kept; ++i) {
    if (sum[i] == 1) continue;
    const double nats = std::log(sum[i]);
    events[i].net += nats;
    events[i].price -= nats;
    events[i].pooled += nats;
  }
  std::sort(events.begin(), events.end(), better);
}

Events Rivals::around(const Event& event, double floor) {
  Events found;
  search_.keep(floor);
  std::vector<std::uint32_t> rails;
  std::vector<std::uint32_t> modules;
  for (const Effect& e : event.effects) rails.push_back(field_.rail_of[e.slot]);
  unique(rails);
  modules.reserve(rails.size());
  for (const std::uint32_t r : rails) modules.push_back(field_.module_of[r]);
  unique(modules);
  for (const std::uint32_t r : rails) {
    search_.rail(r, found);
    const Module& module = field_.modules[field_.module_of[r]];
    for (std::uint32_t q = module.first; q < module.first + module.rails; ++q) {
      const bool later = q < r && std::binary_search(rails.begin(), rails.end(), q);
      if (q != r && !later) search_.rail_pair(std::min(r, q), std::max(r, q), found);
    }
  }
  across(rails, modules, found);
  if (event.effects.size() <= kFewSlots) {
    for (const Effect& e : event.effects) {
      if (state_.excess[e.slot] > kBad) search_.swaps(e.slot, found);
    }
  }
  std::erase_if(found, [&](const Event& other) { return !meets(event, other); });
  std::sort(found.begin(), found.end(), better);
  return found;
}

void Rivals::across(const std::vector<std::uint32_t>& rails,
                    const std::vector<std::uint32_t>& modules, Events& found) {
  if (modules.size() != 2) return;
  search_.module_pair(modules[0], modules[1], found);
  if (rails.size() == 2) search_.rail_pair(rails[0], rails[1], found);
}

bool Rivals::changes(const Effect& e) const {
  const std::uint32_t next = e.source == kNowhere ? kNothing : state_.on[e.source];
  return next != state_.on[e.slot];
}

bool Rivals::meets(const Event& a, const Event& b) const {
  auto x = a.effects.begin();
  auto y = b.effects.begin();
  while (x != a.effects.end() && y != b.effects.end()) {
    if (x->slot < y->slot)
      ++x;
    else if (y->slot < x->slot)
      ++y;
    else if (changes(*x) && changes(*y))
      return true;
    else
      ++x, ++y;
  }
  return false;
}

std::vector<std::pair<std::uint32_t, std::uint32_t>> Rivals::seen_of(const Event& a) const {
  std::vector<std::pair<std::uint32_t, std::uint32_t>> out;
  for (const Effect& e : a.effects) {
    if (changes(e)) out.emplace_back(e.slot, e.source == kNowhere ? kNothing : state_.on[e.source]);
  }
  return out;
}

}  // namespace walkdown::match
