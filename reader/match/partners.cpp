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
constexpr std::size_t kMostEqual = 24;
constexpr double kShared = 0.3;  // of the bad slots of the side that has fewer
constexpr std::uint64_t kMix = 0x9E3779B97F4A7C15U;

struct Mark {
  std::uint64_t key = 0;
  std::uint32_t slot = 0;

  friend bool operator<(const Mark& a, const Mark& b) {
    return a.key != b.key ? a.key < b.key : a.slot < b.slot;
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
  Finder(const Field& field, const Mixture& mixture, const State& state,
         const std::vector<char>& dirty)
      : field_(field), mixture_(mixture), state_(state), dirty_(dirty) {}

  Partners find() {
    for (std::uint32_t r = 0; r < field_.rails.size(); ++r) {
      if (dirty_[r] == 0) continue;
      const Rail& rail = field_.rails[r];
      for (std::uint32_t i = rail.first; i < rail.first + rail.size; ++i) {
        if (state_.excess[i] > kBad) bad_.push_back(i);
      }
    }
    Partners out;
    if (bad_.empty()) return out;
    // By pin number alone: rails. By rail and pin: modules. Without a place: far swaps.
    match([&](std::uint32_t i) -> std::uint64_t { return field_.slots[i].pin.pin; },
          [&](std::uint32_t a, std::uint32_t b) {
            const std::uint32_t ra = field_.rail_of[a];
            const std::uint32_t rb = field_.rail_of[b];
            if (field_.module_of[ra] != field_.module_of[rb]) out.rails.emplace_back(ra, rb);
            if (field_.slots[a].pin.rail != field_.slots[b].pin.rail) return;
            if (field_.module_of[ra] != field_.module_of[rb]) {
              out.modules.emplace_back(field_.module_of[ra], field_.module_of[rb]);
            }
          });
    match([](std::uint32_t) { return 0; },
          [&](std::uint32_t a, std::uint32_t b) {
            if (field_.module_of[field_.rail_of[a]] != field_.module_of[field_.rail_of[b]]) {
              out.slots.emplace_back(a, b);
            }
          });
    bad_rails_.assign(field_.rails.size(), 0);
    bad_modules_.assign(field_.modules.size(), 0);
    for (const std::uint32_t i : bad_) {
      ++bad_rails_[field_.rail_of[i]];
      ++bad_modules_[field_.module_of[field_.rail_of[i]]];
    }
    keep_frequent(out.rails, bad_rails_);
    keep_frequent(out.modules, bad_modules_);
    by_pattern(out);
    for (SlotPairs* pairs : {&out.rails, &out.modules, &out.slots}) unique(*pairs);
    return out;
  }

 private:
  static void unique(SlotPairs& pairs) {
    for (auto& [a, b] : pairs) {
      if (a > b) std::swap(a, b);
    }
    std::sort(pairs.begin(), pairs.end());
    pairs.erase(std::unique(pairs.begin(), pairs.end()), pairs.end());
  }

  // An exchange leaves its mark on most bad slots of both sides; a pair that shares fewer of them
  // met by chance.
  static void keep_frequent(SlotPairs& pairs, const std::vector<std::uint32_t>& bad) {
    for (auto& [a, b] : pairs) {
      if (a > b) std::swap(a, b);
    }
    std::sort(pairs.begin(), pairs.end());
    std::size_t kept = 0;
    for (std::size_t i = 0; i < pairs.size();) {
      std::size_t end = i;
      while (end < pairs.size() && pairs[end] == pairs[i]) ++end;
      const std::uint32_t both = std::min(bad[pairs[i].first], bad[pairs[i].second]);
      if (static_cast<double>(end - i) >= kShared * both) pairs[kept++] = pairs[i];
      i = end;
    }
    pairs.resize(kept);
  }

  // Where all loads are alike only free pins differ: two exchanged rails each read as the other is
  // planned, a number where that has a load and nothing where it has none.
  void by_pattern(Partners& out) const {
    std::vector<Pattern> rails(field_.rails.size());
    std::vector<Pattern> modules(field_.modules.size());
    for (std::uint32_t r = 0; r < rails.size(); ++r) {
      rails[r] = pattern(r);
      Pattern& whole = modules[field_.module_of[r]];
      whole.shown = whole.shown * kMix + rails[r].shown;
      whole.planned = whole.planned * kMix + rails[r].planned;
    }
    mirror(rails, bad_rails_, out.rails);
    mirror(modules, bad_modules_, out.modules);
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

  static void mirror(std::vector<Pattern>& all, const std::vector<std::uint32_t>& bad,
                     SlotPairs& out) {
    for (std::uint32_t i = 0; i < all.size(); ++i) all[i].index = i;
    std::erase_if(all, [&](const Pattern& p) { return bad[p.index] < 2 || p.shown == p.planned; });
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

  template <typename Place, typename Found>
  void match(Place place, Found found) {
    marks_.clear();
    for (const std::uint32_t i : bad_) marks_.push_back({pack(place(i), shown(i), planned(i)), i});
    std::sort(marks_.begin(), marks_.end());
    for (const std::uint32_t i : bad_) {
      const std::int32_t reads = shown(i);
      const std::int32_t plan = planned(i);
      // The mirror image: it shows what is planned here, and has planned what shows here.
      const std::int32_t around_shown = plan == kBare ? 0 : 1;
      const std::int32_t around_plan = reads == kBare ? 0 : 1;
      for (std::int32_t s = plan - around_shown; s <= plan + around_shown; ++s) {
        for (std::int32_t p = reads - around_plan; p <= reads + around_plan; ++p) {
          look(i, pack(place(i), s, p), found);
        }
      }
    }
  }

  template <typename Found>
  void look(std::uint32_t i, std::uint64_t key, Found& found) {
    auto at = std::lower_bound(marks_.begin(), marks_.end(), Mark{key, i + 1});
    for (std::size_t n = 0; at != marks_.end() && at->key == key && n < kMostEqual; ++at, ++n) {
      found(i, at->slot);
    }
  }

  const Field& field_;
  const Mixture& mixture_;
  const State& state_;
  const std::vector<char>& dirty_;
  std::vector<std::uint32_t> bad_;
  std::vector<Mark> marks_;
  std::vector<std::uint32_t> bad_rails_, bad_modules_;  // bad slots of each
};

}  // namespace

Partners find_partners(const Field& field, const Mixture& mixture, const State& state,
                       const std::vector<char>& dirty) {
  return Finder(field, mixture, state, dirty).find();
}

}  // namespace walkdown::match
