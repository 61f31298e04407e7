// SPDX-License-Identifier: Apache-2.0
#include "tests/match/every_mistake.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace walkdown::simulated {

using match::Effect;
using match::Event;
using match::Kind;
using match::kNothing;
using match::kNowhere;
using match::Rail;

namespace {

constexpr int kMostBy = 12;  // pins of a shift

bool same_shape(const match::Field& field, const match::Module& a, const match::Module& b) {
  if (a.rails != b.rails) return false;
  for (std::uint32_t r = 0; r < a.rails; ++r) {
    if (field.rails[a.first + r].size != field.rails[b.first + r].size) return false;
  }
  return true;
}

}  // namespace

EveryMistake::EveryMistake(const Bench& bench) : bench_(bench), field_(bench.field()) {
  const auto specs = static_cast<std::uint32_t>(bench.mixture().table().specs.size());
  for (std::uint32_t i = 0; i < field_.slots.size(); ++i) {
    double least = bench.cost(i, kNothing);
    for (std::uint32_t s = 1; s < specs; ++s) least = std::min(least, bench.cost(i, s));
    least_.push_back(least);
  }
}

double EveryMistake::most(const On& on, std::uint32_t first, std::uint32_t count) const {
  double sum = 0;
  for (std::uint32_t i = first; i < first + count; ++i) sum += bench_.cost(i, on[i]) - least_[i];
  return sum;
}

double EveryMistake::gain(const On& on, std::uint32_t slot, std::uint32_t source) const {
  const std::uint32_t next = source == kNowhere ? kNothing : on[source];
  return bench_.cost(slot, on[slot]) - bench_.cost(slot, next);
}

void EveryMistake::offer(const On& on, Kind kind, int by, double price, const Map& map,
                         double least, const Found& found) const {
  double net = -price;
  for (const Effect& e : map) net += gain(on, e.slot, e.source);
  if (net < least) return;
  Event event;
  event.kind = kind;
  event.by = by;
  event.price = price;
  event.net = net;
  event.effects = map;
  std::sort(event.effects.begin(), event.effects.end(),
            [](const Effect& a, const Effect& b) { return a.slot < b.slot; });
  for (const Effect& e : map) {
    if (kind == Kind::swapped || field_.slots[e.slot].spec != kNothing) {
      event.members.push_back(e.slot);
    }
  }
  std::sort(event.members.begin(), event.members.end());
  found(event);
}

void EveryMistake::slides(const On& on, const Rail& rail, int by, double least,
                          const Found& found) const {
  const int n = static_cast<int>(rail.length);
  const int size = std::abs(by);
  const int dir = by > 0 ? 1 : -1;
  const double price = bench_.prices().slide(rail.length, by) + (size > 1 ? std::log(3.0) : 0);
  const auto slot = [&](int u) {
    return rail.first + static_cast<std::uint32_t>(dir > 0 ? u : n - 1 - u);
  };
  const auto loaded = [&](int u) { return on[slot(u)] != kNothing; };
  for (int lo = 0; lo < n; ++lo) {
    if (!loaded(lo)) continue;
    // As one block until so many free pins side by side, or in all, have taken it in.
    for (const bool in_a_row : {true, false}) {
      int free = 0;
      int end = n;
      for (int u = lo + 1; u < n && end == n; ++u) {
        free = loaded(u) ? (in_a_row ? 0 : free) : free + 1;
        if (free == size) end = u + 1;
      }
      Map map;
      for (int u = lo; u < end; ++u) {
        map.push_back({slot(u), u - size < lo ? kNowhere : slot(u - size)});
      }
      offer(on, Kind::shifted, by, price, map, least, found);
    }
    // Load by load: each free pin that is passed makes the rest one pin less late.
    std::vector<std::uint32_t> source(static_cast<std::size_t>(n), kNowhere);
    int late = size;
    int u = lo;
    int top = lo;
    for (; u < n && late > 0; ++u) {
      if (!loaded(u)) {
        --late;
      } else if (u + late < n) {
        source[static_cast<std::size_t>(u + late)] = slot(u);
        top = u + late;
      }
    }
    Map map;
    for (int v = lo; v < std::max(u, top + 1); ++v) {
      map.push_back({slot(v), source[static_cast<std::size_t>(v)]});
    }
    offer(on, Kind::shifted, by, price, map, least, found);
  }
}

void EveryMistake::wraps(const On& on, const Rail& rail, int by, double least,
                         const Found& found) const {
  const int n = static_cast<int>(rail.length);
  const double price = bench_.prices().wrap(rail.length, by);
  const auto slot = [&](int u) { return rail.first + static_cast<std::uint32_t>(u); };
  for (int lo = 0; lo < n; ++lo) {
    double room = -price;
    for (int end = lo + 1; end <= n; ++end) {
      const int length = end - lo;
      room += most(on, slot(end - 1), 1);
      if (length < std::abs(by) + 2 || room < least) continue;
      Map map;
      for (int i = 0; i < length; ++i) {
        map.push_back({slot(lo + i), slot(lo + ((i - by) % length + length) % length)});
      }
      offer(on, Kind::shifted, by, price, map, least, found);
    }
  }
}

void EveryMistake::rail(const On& on, const Rail& rail, double least, const Found& found) const {
  const std::uint32_t n = rail.length;
  const double most_here = most(on, rail.first, n);
  if (n >= 3 && most_here - bench_.prices().reversal() >= least) {
    Map map;
    for (std::uint32_t i = 0; i < n; ++i) map.push_back({rail.first + i, rail.first + n - 1 - i});
    offer(on, Kind::reversed, 0, bench_.prices().reversal(), map, least, found);
  }
  for (int size = 1; size <= std::min(kMostBy, static_cast<int>(n) - 1); ++size) {
    for (const int by : {size, -size}) {
      if (most_here - bench_.prices().slide(n, by) < least) continue;
      slides(on, rail, by, least, found);
      wraps(on, rail, by, least, found);
    }
  }
}

void EveryMistake::rail_pairs(const On& on, double least, const Found& found) const {
  for (std::uint32_t a = 0; a < field_.rails.size(); ++a) {
    for (std::uint32_t b = a + 1; b < field_.rails.size(); ++b) {
      const Rail& ra = field_.rails[a];
      const Rail& rb = field_.rails[b];
      const double price = bench_.prices().rails(a, b);
      const double room = most(on, ra.first, ra.length) + most(on, rb.first, rb.length);
      if (ra.length != rb.length || room - price < least) continue;
      Map map;
      for (std::uint32_t i = 0; i < ra.length; ++i) {
        map.push_back({ra.first + i, rb.first + i});
        map.push_back({rb.first + i, ra.first + i});
      }
      offer(on, Kind::rails_exchanged, 0, price, map, least, found);
    }
  }
}

void EveryMistake::module_pairs(const On& on, double least, const Found& found) const {
  for (std::size_t a = 0; a < field_.modules.size(); ++a) {
    for (std::size_t b = a + 1; b < field_.modules.size(); ++b) {
      const match::Module& ma = field_.modules[a];
      const match::Module& mb = field_.modules[b];
      const double room = most(on, ma.first_slot, ma.slots) + most(on, mb.first_slot, mb.slots);
      if (room - bench_.prices().modules() < least || !same_shape(field_, ma, mb)) continue;
      Map map;
      for (std::uint32_t i = 0; i < ma.slots; ++i) {
        map.push_back({ma.first_slot + i, mb.first_slot + i});
        map.push_back({mb.first_slot + i, ma.first_slot + i});
      }
      offer(on, Kind::modules_exchanged, 0, bench_.prices().modules(), map, least, found);
    }
  }
}

void EveryMistake::blocks(const On& on, double least, const Found& found) const {
  for (const Rail& held : field_.rails) rail(on, held, least, found);
  rail_pairs(on, least, found);
  module_pairs(on, least, found);
}

void EveryMistake::swaps(const On& on, double least, const Found& found) const {
  const auto n = static_cast<std::uint32_t>(field_.slots.size());
  for (std::uint32_t a = 0; a < n; ++a) {
    const double most_a = most(on, a, 1);
    for (std::uint32_t b = a + 1; b < n; ++b) {
      // The price of a swap is at least 3 nats in any field; most pairs end here.
      if (on[a] == on[b] || most_a + bench_.cost(b, on[b]) - least_[b] - 3 < least) continue;
      offer(on, Kind::swapped, 0, bench_.prices().swap(a, b), {{a, b}, {b, a}}, least, found);
    }
  }
}

}  // namespace walkdown::simulated
