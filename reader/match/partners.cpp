// SPDX-License-Identifier: Apache-2.0
#include "reader/match/partners.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

namespace walkdown::match {
namespace {

constexpr double kCell = 0.4;         // ohm
constexpr std::int32_t kBare = -100;  // the cell of "nothing": over range, or no load planned
constexpr std::size_t kMostEqual = 24;

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
  Finder(const Field& field, const Mixture& mixture, const State& state)
      : field_(field), mixture_(mixture), state_(state) {}

  Partners find() {
    for (std::uint32_t i = 0; i < field_.slots.size(); ++i) {
      if (state_.excess[i] > kBad) bad_.push_back(i);
    }
    Partners out;
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
  std::vector<std::uint32_t> bad_;
  std::vector<Mark> marks_;
};

}  // namespace

Partners find_partners(const Field& field, const Mixture& mixture, const State& state) {
  return Finder(field, mixture, state).find();
}

}  // namespace walkdown::match
