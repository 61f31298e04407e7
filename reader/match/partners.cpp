// SPDX-License-Identifier: Apache-2.0
#include "reader/match/partners.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <tuple>

namespace walkdown::match {
namespace {

constexpr double kCell = 0.4;         // ohm
constexpr std::int32_t kBare = -100;  // the cell of "nothing": over range, or no load planned
constexpr std::size_t kMostEqual = 32;
constexpr double kShared = 0.3;       // of the bad slots of the side that has fewer
constexpr double kSharedMore = 0.15;  // of the side that has more
constexpr double kLeastShared = 2;    // one alone may be two pins that changed places
constexpr std::uint64_t kMix = 0x9E3779B97F4A7C15U;

struct Mark {
  std::uint64_t key = 0;
  float excess = 0;
  std::uint32_t slot = 0;
  bool seeks = true;

  // Within a cell the worst come first.
  friend bool operator<(const Mark& a, const Mark& b) {
    if (a.key != b.key) return a.key < b.key;
    return a.excess != b.excess ? a.excess > b.excess : a.slot < b.slot;
  }
};

std::int32_t cell(double ohm) {
  return static_cast<std::int32_t>(std::clamp(std::floor(ohm / kCell), -50.0, 30000.0));
}

std::uint64_t pack(std::uint64_t place, std::int32_t shown, std::int32_t planned) {
  return (place << 32U) | (static_cast<std::uint64_t>(shown + 128) << 16U) |
         static_cast<std::uint64_t>(planned + 128);
}

class Finder {
 public:
  Finder(const Field& field, const Mixture& mixture, const State& state, const Prices& prices,
         const std::vector<char>& dirty)
      : field_(field), mixture_(mixture), state_(state), prices_(prices), dirty_(dirty) {}

  Partners find() {
    Partners out;
    collect();
    if (bad_.empty()) return out;
    rails(out.rails);
    modules(out.modules);
    swaps(prices_.far_swap(), out.slots);
    by_pattern(out);
    for (SlotPairs* pairs : {&out.rails, &out.modules, &out.slots}) unique(*pairs);
    return out;
  }

 private:
  struct Count {
    std::uint32_t bad = 0;
    std::uint32_t loads = 0;
    double excess = 0;  // of the bad ones
  };

  // A few bad loads among many are faults, each on its own.
  struct Strong {
    std::uint32_t least = 0;  // bad slots
    double share = 0;         // of the loads
  };

  void collect() {
    rails_.assign(field_.rails.size(), {});
    modules_.assign(field_.modules.size(), {});
    for (std::uint32_t r = 0; r < field_.rails.size(); ++r) {
      if (dirty_[r] != 0) collect(r);
      Count& module = modules_[field_.module_of[r]];
      module.bad += rails_[r].bad;
      module.loads += rails_[r].loads;
      module.excess += rails_[r].excess;
    }
  }

  void collect(std::uint32_t r) {
    const Rail& rail = field_.rails[r];
    for (std::uint32_t i = rail.first; i < rail.first + rail.size; ++i) {
      rails_[r].loads += state_.on[i] != kNothing ? 1 : 0;
      if (state_.excess[i] <= kBad) continue;
      bad_.push_back(i);
      ++rails_[r].bad;
      rails_[r].excess += state_.excess[i];
    }
  }

  void rails(SlotPairs& out) {
    marks_.clear();
    for (const std::uint32_t i : bad_) {
      mark_odd(field_.slots[i].pin.pin, i, rails_[field_.rail_of[i]], {2, 0.3});
    }
    match(
        0, [&](const Mark& mark) { return std::uint64_t{field_.slots[mark.slot].pin.pin}; },
        [&](std::uint32_t a, std::uint32_t b) {
          const std::uint32_t ra = field_.rail_of[a];
          const std::uint32_t rb = field_.rail_of[b];
          if (field_.module_of[ra] == field_.module_of[rb]) return;
          if (about_as_bad(rails_[ra], rails_[rb])) out.emplace_back(ra, rb);
        });
    keep_frequent(out, rails_,
                  [&](std::uint32_t a, std::uint32_t b) { return prices_.rails(a, b); });
  }

  void modules(SlotPairs& out) {
    const auto place = [&](std::uint32_t slot) {
      const plan::PinId pin = field_.slots[slot].pin;
      return (std::uint64_t{pin.rail} << 16U) | pin.pin;
    };
    marks_.clear();
    for (const std::uint32_t i : bad_) {
      mark_odd(place(i), i, modules_[field_.module_of[field_.rail_of[i]]], {3, 0.25});
    }
    match(
        0, [&](const Mark& mark) { return place(mark.slot); },
        [&](std::uint32_t a, std::uint32_t b) {
          const std::uint32_t ma = field_.module_of[field_.rail_of[a]];
          const std::uint32_t mb = field_.module_of[field_.rail_of[b]];
          if (ma != mb && about_as_bad(modules_[ma], modules_[mb])) out.emplace_back(ma, mb);
        });
    keep_frequent(out, modules_, [&](std::uint32_t, std::uint32_t) { return prices_.modules(); });
  }

  void swaps(double price, SlotPairs& out) {
    marks_.clear();
    for (const std::uint32_t i : bad_) mark(0, i, true);
    match(
        price, [](const Mark&) { return std::uint64_t{0}; },
        [&](std::uint32_t a, std::uint32_t b) {
          const std::uint32_t ma = field_.module_of[field_.rail_of[a]];
          if (ma != field_.module_of[field_.rail_of[b]]) out.emplace_back(a, b);
        });
  }

  static void unique(SlotPairs& pairs) {
    for (auto& [a, b] : pairs) {
      if (a > b) std::swap(a, b);
    }
    std::sort(pairs.begin(), pairs.end());
    pairs.erase(std::unique(pairs.begin(), pairs.end()), pairs.end());
  }

  // What one side has can be enough for keep_frequent() to keep the pair.
  static bool about_as_bad(const Count& a, const Count& b) {
    return std::min(a.bad, b.bad) >= kSharedMore * std::max(a.bad, b.bad);
  }

  // An exchange leaves its mark on most bad slots of both sides; a pair that shares fewer of them
  // met by chance. Where only one is shared, two pins may have changed places instead: it is kept
  // where what is wrong on both sides pays for the exchange.
  template <typename Price>
  static void keep_frequent(SlotPairs& pairs, const std::vector<Count>& of, Price price) {
    std::vector<std::uint64_t> found;  // as one number they sort in half the time
    found.reserve(pairs.size());
    for (const auto& [a, b] : pairs) {
      found.push_back((std::uint64_t{std::min(a, b)} << 32U) | std::max(a, b));
    }
    std::sort(found.begin(), found.end());
    pairs.clear();
    for (auto at = found.begin(); at != found.end();) {
      const auto end =
          std::find_if(at, found.end(), [&](std::uint64_t each) { return each != *at; });
      const auto a = static_cast<std::uint32_t>(*at >> 32U);
      const auto b = static_cast<std::uint32_t>(*at);
      const auto shared = static_cast<double>(end - at);
      const auto [fewer, more] = std::minmax(of[a].bad, of[b].bad);
      const bool often = shared >= kShared * fewer && shared >= kSharedMore * more;
      const bool pays = shared >= kLeastShared || of[a].excess + of[b].excess > price(a, b);
      if (often && pays) pairs.emplace_back(a, b);
      at = end;
    }
  }

  // Where all loads are alike only free pins differ: two exchanged rails each read as the other is
  // planned, a number where that has a load and nothing where it has none.
  void by_pattern(Partners& out) const {
    std::vector<Pattern> rails(field_.rails.size());
    std::vector<Pattern> modules(field_.modules.size());
    for (std::uint32_t r = 0; r < rails.size(); ++r) {
      if (modules_[field_.module_of[r]].bad == 0) continue;
      rails[r] = pattern(r);
      Pattern& whole = modules[field_.module_of[r]];
      whole.shown = whole.shown * kMix + rails[r].shown;
      whole.planned = whole.planned * kMix + rails[r].planned;
    }
    mirror(rails, rails_, out.rails);
    mirror(modules, modules_, out.modules);
  }

  // What is read and what is planned, one bit a slot, hashed.
  struct Pattern {
    std::uint64_t shown = 0;
    std::uint64_t planned = 0;
    std::uint32_t index = 0;

    friend bool operator<(const Pattern& a, const Pattern& b) {
      return std::tie(a.planned, a.shown, a.index) < std::tie(b.planned, b.shown, b.index);
    }
  };

  [[nodiscard]] Pattern pattern(std::uint32_t rail) const {
    Pattern out{kMix, kMix, rail};
    const Rail& held = field_.rails[rail];
    for (std::uint32_t i = held.first; i < held.first + held.size; ++i) {
      out.shown = (out.shown + (field_.slots[i].seen.numbers > 0 ? 3 : 1)) * kMix;
      out.planned = (out.planned + (state_.on[i] != kNothing ? 3 : 1)) * kMix;
    }
    return out;
  }

  static void mirror(std::vector<Pattern>& all, const std::vector<Count>& of, SlotPairs& out) {
    for (std::uint32_t i = 0; i < all.size(); ++i) all[i].index = i;
    std::erase_if(all,
                  [&](const Pattern& p) { return of[p.index].bad < 1 || p.shown == p.planned; });
    std::sort(all.begin(), all.end());
    for (const Pattern& p : all) {
      auto at = std::lower_bound(all.begin(), all.end(), Pattern{p.planned, p.shown, p.index});
      std::size_t n = 0;
      for (; at != all.end() && at->planned == p.shown && at->shown == p.planned; ++at) {
        if (++n > kMostEqual) break;
        out.emplace_back(p.index, at->index);
      }
    }
  }

  [[nodiscard]] std::int32_t shown(std::uint32_t i) const {
    const Seen& seen = field_.slots[i].seen;
    return seen.numbers == 0 ? kBare : cell(seen.mean);
  }

  [[nodiscard]] std::int32_t planned(std::uint32_t i) const {
    const std::uint32_t spec = state_.on[i];
    return spec == kNothing ? kBare : cell(mixture_.table().specs[spec].sound.mean);
  }

  void mark(std::uint64_t place, std::uint32_t i, bool seeks) {
    const auto excess = static_cast<float>(state_.excess[i]);
    marks_.push_back({pack(place, shown(i), planned(i)), excess, i, seeks});
  }

  // Seekers are slots of strong rails, and numbers on free pins, which are rare. What they seek may
  // be an open load, or lie on a rail that the exchange did not harm as much: loads much like those
  // planned may still fit there.
  void mark_odd(std::uint64_t place, std::uint32_t i, const Count& of, Strong strong) {
    const bool is_strong = of.bad >= strong.least && of.bad >= strong.share * of.loads;
    const bool stray = state_.on[i] == kNothing;
    const bool half_strong = of.bad >= strong.least && of.bad >= strong.share / 2 * of.loads;
    const bool sought = half_strong || field_.slots[i].seen.open();
    if (is_strong || stray || sought) mark(place, i, is_strong || stray);
  }

  // Every mark with its mirror images: what shows is planned there, and what is planned shows. The
  // excess of both pays `price`.
  template <typename Place, typename Found>
  void match(double price, Place place, Found found) {
    std::sort(marks_.begin(), marks_.end());
    for (const Mark& held : marks_) {
      if (!held.seeks || 2 * held.excess < price) continue;
      const std::int32_t reads = shown(held.slot);
      const std::int32_t plan = planned(held.slot);
      const std::int32_t around_shown = plan == kBare ? 0 : 1;
      const std::int32_t around_plan = reads == kBare ? 0 : 1;
      for (std::int32_t s = plan - around_shown; s <= plan + around_shown; ++s) {
        // Cells next to each other in what is planned lie next to each other in order.
        const std::uint64_t from = pack(place(held), s, reads - around_plan);
        look(held, from, from + 2 * static_cast<std::uint64_t>(around_plan), price, found);
      }
    }
  }

  template <typename Found>
  void look(const Mark& held, std::uint64_t from, std::uint64_t to, double price, Found& found) {
    const auto rest = static_cast<float>(price) - held.excess;
    auto at = std::lower_bound(marks_.begin(), marks_.end(), Mark{from, 1e30F, 0, true});
    std::size_t n = 0;
    for (std::uint64_t key = from; at != marks_.end() && at->key <= to; ++at) {
      if (at->key != key) n = 0;
      key = at->key;
      if (at->excess < rest || n >= kMostEqual) continue;
      // Of two seekers the first finds the pair.
      if (at->slot == held.slot || (at->seeks && at->slot < held.slot && 2 * at->excess >= price)) {
        continue;
      }
      ++n;
      found(held.slot, at->slot);
    }
  }

  const Field& field_;
  const Mixture& mixture_;
  const State& state_;
  const Prices& prices_;
  const std::vector<char>& dirty_;
  std::vector<std::uint32_t> bad_;
  std::vector<Mark> marks_;
  std::vector<Count> rails_, modules_;
};

}  // namespace

Partners find_partners(const Field& field, const Mixture& mixture, const State& state,
                       const Prices& prices, const std::vector<char>& dirty) {
  return Finder(field, mixture, state, prices, dirty).find();
}

}  // namespace walkdown::match
