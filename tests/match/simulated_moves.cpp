// SPDX-License-Identifier: Apache-2.0
// Mistakes that move loads. No pin takes part in two of them.
#include <algorithm>
#include <set>

#include "tests/match/simulator.h"

namespace walkdown::simulated {
namespace {

using match::Kind;
using plan::PinId;

class Mover {
 public:
  Mover(const Setting& setting, Dice& dice, Field& field)
      : setting_(setting), scale_(setting.move_scale), dice_(dice), field_(field) {
    for (const plan::PlannedPin& pin : field.plan.pins) planned_.insert(pin.id);
  }

  void run() {
    modules();
    rails();
    for (const auto& [module, sizes] : field_.plan.layout.rails) {
      for (std::uint16_t r = 1; r <= sizes.size(); ++r) {
        if (dice_.chance(0.004 * scale_)) reverse({module, r, 0}, sizes[r - 1U]);
        if (dice_.chance(0.010 * scale_)) shift({module, r, 0}, sizes[r - 1U]);
      }
    }
    for (const plan::PlannedPin& pin : field_.plan.pins) {
      if (dice_.chance(0.002 * scale_)) swap(pin.id);
    }
  }

 private:
  bool is_planned(PinId pin) const { return planned_.contains(pin); }

  PinId load_of(PinId pin) const { return is_planned(pin) ? pin : PinId{}; }

  // Takes the event if none of its pins takes part in another, and it moves a load at all.
  void add(Kind kind, int by, const std::map<PinId, PinId>& effect, std::vector<PinId> pins,
           bool wrapped = false) {
    Moved moved{kind, by, std::move(pins), effect, false, wrapped};
    bool moves = false;
    for (const auto& [pin, source] : effect) {
      if (touched_.contains(pin)) return;
      moves = moves || source != load_of(pin);
    }
    if (!moves) return;
    for (const auto& [pin, source] : effect) {
      touched_.insert(pin);
      const auto* own = field_.plan.find(pin);
      const auto* now = field_.plan.find(source);
      const bool differs = !same_load(own ? &own->load : nullptr, now ? &now->load : nullptr);
      moved.visible = moved.visible || differs;
      if (differs) field_.wrong[pin] = true;
    }
    std::sort(moved.pins.begin(), moved.pins.end());
    field_.moves.push_back(std::move(moved));
  }

  void exchange(Kind kind, const std::vector<std::pair<PinId, PinId>>& pairs) {
    std::map<PinId, PinId> effect;
    std::vector<PinId> pins;
    for (const auto& [a, b] : pairs) {
      effect[a] = load_of(b);
      effect[b] = load_of(a);
      if (is_planned(a)) pins.push_back(a);
      if (is_planned(b)) pins.push_back(b);
    }
    add(kind, 0, effect, pins);
  }

  void modules() {
    const auto& layout = field_.plan.layout.rails;
    for (const auto& [a, sizes] : layout) {
      if (!dice_.chance(0.010 * scale_)) continue;
      std::vector<std::uint16_t> partners;
      for (const auto& [b, other] : layout) {
        if (b != a && other == sizes) partners.push_back(b);
      }
      if (partners.empty()) continue;
      const std::uint16_t b = partners[dice_.below(partners.size())];
      std::vector<std::pair<PinId, PinId>> pairs;
      for (std::uint16_t r = 1; r <= sizes.size(); ++r) {
        for (std::uint16_t p = 1; p <= sizes[r - 1U]; ++p) pairs.push_back({{a, r, p}, {b, r, p}});
      }
      exchange(Kind::modules_exchanged, pairs);
    }
  }

  void rails() {
    const auto& layout = field_.plan.layout.rails;
    for (const auto& [a, sizes] : layout) {
      for (std::uint16_t r = 1; r <= sizes.size(); ++r) {
        if (!dice_.chance(0.004 * scale_)) continue;
        const bool inside = dice_.chance(0.7);
        std::vector<PinId> partners;
        for (const auto& [b, other] : layout) {
          for (std::uint16_t q = 1; q <= other.size(); ++q) {
            const bool itself = a == b && q == r;
            if (!itself && (a == b) == inside && other[q - 1U] == sizes[r - 1U]) {
              partners.push_back({b, q, 0});
            }
          }
        }
        if (partners.empty()) continue;
        const PinId to = partners[dice_.below(partners.size())];
        std::vector<std::pair<PinId, PinId>> pairs;
        for (std::uint16_t p = 1; p <= sizes[r - 1U]; ++p) {
          pairs.push_back({{a, r, p}, {to.module, to.rail, p}});
        }
        exchange(Kind::rails_exchanged, pairs);
      }
    }
  }

  void reverse(PinId rail, std::uint16_t size) {
    std::map<PinId, PinId> effect;
    std::vector<PinId> pins;
    for (std::uint16_t p = 1; p <= size; ++p) {
      const PinId pin{rail.module, rail.rail, p};
      effect[pin] = load_of({rail.module, rail.rail, static_cast<std::uint16_t>(size + 1 - p)});
      if (is_planned(pin)) pins.push_back(pin);
    }
    add(Kind::reversed, 0, effect, pins);
  }

  void shift(PinId rail, std::uint16_t size) {
    int by = dice_.chance(0.8) ? 1 : 2;
    while (by > 1 && by < setting_.most_by && dice_.chance(0.5)) ++by;
    if (!dice_.chance(0.5)) by = -by;
    const int from = 1 + static_cast<int>(dice_.below(size));
    dice_.chance(0.7) ? slide(rail, size, by, from) : wrap(rail, size, by, from);
  }

  // From a pin on, every load one socket further, until as many free sockets have been filled, or
  // the rail ends and the last ones hang loose.
  void slide(PinId rail, int size, int by, int from) {
    const int dir = by > 0 ? 1 : -1;
    const auto pin_at = [&](int p) {
      return PinId{rail.module, rail.rail, static_cast<std::uint16_t>(p)};
    };
    if (!is_planned(pin_at(from))) return;
    std::map<PinId, PinId> effect;
    std::vector<PinId> pins;
    int behind = std::abs(by);  // how far the next load ends from its own socket
    for (int p = from; p >= 1 && p <= size && behind > 0; p += dir) {
      if (!effect.contains(pin_at(p))) effect[pin_at(p)] = PinId{};
      if (!is_planned(pin_at(p))) {
        --behind;
        continue;
      }
      pins.push_back(pin_at(p));
      const int to = p + dir * behind;
      if (to >= 1 && to <= size) effect[pin_at(to)] = pin_at(p);
    }
    add(Kind::shifted, by, effect, pins);
  }

  void wrap(PinId rail, int size, int by, int from) {
    const int length = 3 + static_cast<int>(dice_.below(static_cast<std::size_t>(size)));
    const int to = std::min(size, from + length - 1);
    const int n = to - from + 1;
    if (n <= std::abs(by) + 1) return;
    std::map<PinId, PinId> effect;
    std::vector<PinId> pins;
    for (int i = 0; i < n; ++i) {
      const PinId pin{rail.module, rail.rail, static_cast<std::uint16_t>(from + i)};
      const int source = from + ((i - by) % n + n) % n;
      effect[pin] = load_of({rail.module, rail.rail, static_cast<std::uint16_t>(source)});
      if (is_planned(pin)) pins.push_back(pin);
    }
    add(Kind::shifted, by, effect, pins, true);
  }

  PinId partner(PinId pin) {
    const auto& sizes = field_.plan.layout.rails.at(pin.module);
    const std::uint16_t size = sizes[pin.rail - 1U];
    const double where = dice_.uniform();
    PinId to = pin;
    const auto in = [&](std::uint16_t n) { return static_cast<std::uint16_t>(1 + dice_.below(n)); };
    if (where < 0.60) {
      to.pin = static_cast<std::uint16_t>(pin.pin + (dice_.chance(0.5) ? 1 : -1));
      if (to.pin < 1 || to.pin > size) to = pin;
    } else if (where < 0.85) {
      to.pin = in(size);
    } else if (where < 0.95) {
      to.rail = in(static_cast<std::uint16_t>(sizes.size()));
      to.pin = in(sizes[to.rail - 1U]);
    } else {
      auto at = field_.plan.layout.rails.begin();
      std::advance(at, static_cast<std::ptrdiff_t>(dice_.below(field_.plan.layout.rails.size())));
      to.module = at->first;
      to.rail = in(static_cast<std::uint16_t>(at->second.size()));
      to.pin = in(at->second[to.rail - 1U]);
    }
    return to;
  }

  void swap(PinId pin) {
    const PinId to = partner(pin);
    if (to == pin) return;
    add(Kind::swapped, 0, {{pin, load_of(to)}, {to, load_of(pin)}}, {pin, to});
  }

  const Setting& setting_;
  double scale_;
  Dice& dice_;
  Field& field_;
  std::set<PinId> planned_;
  std::set<PinId> touched_;
};

}  // namespace

void make_mistakes(const Setting& setting, Dice& dice, Field& field) {
  Mover(setting, dice, field).run();
}

Hung hung(const Field& field) {
  Hung loads;
  for (const plan::PlannedPin& pin : field.plan.pins) loads[pin.id] = pin.id;
  for (const Moved& moved : field.moves) {
    for (const auto& [pin, source] : moved.effect) {
      if (source == plan::PinId{})
        loads.erase(pin);
      else
        loads[pin] = source;
    }
  }
  return loads;
}

}  // namespace walkdown::simulated
