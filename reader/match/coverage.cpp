// SPDX-License-Identifier: Apache-2.0
#include "reader/match/coverage.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <utility>

#include "reader/match/search.h"
#include "reader/match/separation.h"

namespace walkdown::match {
namespace {

constexpr double kLevel = 0.95;
constexpr std::size_t kMostLoads = 200;
constexpr std::size_t kMostHard = 200;
constexpr std::size_t kMostPairs = 3000;  // of rails or modules, looked at one by one

// What one mistake does, gathered pin by pin.
struct Effects {
  double mean = 0;
  double variance = 0;
  double unflagged = 1;
  bool changes = false;

  void add(const Apart& apart) {
    changes = true;
    mean += apart.mean;
    variance += apart.variance;
    unflagged *= 1 - apart.flagged;
  }
  [[nodiscard]] bool shown(double price) const {
    const double named = normal_below((mean - price) / std::sqrt(variance + 1e-6));
    return std::max(named, 1 - unflagged) >= kLevel;
  }
};

class Counter {
 public:
  Counter(const plan::Plan& plan, const tester::Model& tester, const CoverageOptions& options)
      : plan_(plan),
        options_(options),
        apart_(plan, tester, options.priors, options.readings),
        field_(apart_.field()),
        prices_(field_, options.priors.move) {}

  Coverage count() {
    neighbours();
    in_modules();
    shifts();
    reversals();
    rails();
    modules();
    loads();
    advise();
    return std::move(out_);
  }

 private:
  void tally(KindCoverage& kind, const Effects& effects, double price) const {
    ++kind.weighed;
    if (!effects.changes)
      kind.invisible += 1;
    else if (effects.shown(price))
      kind.shown += 1;
  }

  // A sample stands for all.
  void close(KindCoverage kind) {
    if (kind.weighed > 0 && kind.weighed < kind.possible) {
      const double scale = static_cast<double>(kind.possible) / static_cast<double>(kind.weighed);
      kind.shown *= scale;
      kind.invisible *= scale;
    }
    out_.kinds.push_back(std::move(kind));
  }

  [[nodiscard]] std::uint32_t spec(std::uint32_t slot) const { return field_.slots[slot].spec; }

  void put(Effects& effects, std::uint32_t slot, std::uint32_t there) {
    if (spec(slot) != there) effects.add(apart_.apart(spec(slot), there));
  }

  Effects swap(std::uint32_t a, std::uint32_t b) {
    Effects effects;
    put(effects, a, spec(b));
    put(effects, b, spec(a));
    return effects;
  }

  void neighbours() {
    KindCoverage kind{Kind::swapped, "neighbours swapped", 0, 0, 0, 0};
    for (const Rail& rail : field_.rails) {
      for (std::uint32_t i = rail.first; i + 1 < rail.first + rail.length; ++i) {
        if (spec(i) == kNothing && spec(i + 1) == kNothing) continue;
        ++kind.possible;
        const Effects effects = swap(i, i + 1);
        const double price = prices_.swap(i, i + 1);
        tally(kind, effects, price);
        if (!effects.changes) ++same_neighbours_;
        const bool hard = effects.changes && !effects.shown(price);
        if (hard && out_.hard.size() < kMostHard) {
          out_.hard.push_back({field_.slots[i].pin, field_.slots[i + 1].pin});
        }
      }
    }
    close(std::move(kind));
  }

  void in_modules() {
    KindCoverage kind{Kind::swapped, "two pins of a module swapped", 0, 0, 0, 0};
    std::uint64_t all = 0;
    for (const Module& module : field_.modules) {
      all += std::uint64_t{module.slots} * (module.slots - 1) / 2;
    }
    const std::uint64_t step = all / std::max<std::size_t>(1, options_.most_weighed) + 1;
    std::uint64_t next = 0;
    std::uint64_t at = 0;
    for (const Module& module : field_.modules) {
      for (std::uint32_t i = 0; i < module.slots; ++i) {
        const std::uint32_t a = module.first_slot + i;
        const std::uint32_t last = module.first_slot + module.slots;
        const std::uint64_t row = last - a - 1;
        for (; next < at + row; next += step) {
          const auto b = a + 1 + static_cast<std::uint32_t>(next - at);
          if (spec(a) == kNothing && spec(b) == kNothing) continue;
          tally(kind, swap(a, b), prices_.swap(a, b));
        }
        at += row;
      }
    }
    kind.possible = pairs_with_a_load();
    close(std::move(kind));
  }

  [[nodiscard]] std::size_t pairs_with_a_load() const {
    std::size_t pairs = 0;
    for (const Module& module : field_.modules) {
      std::size_t bare = 0;
      for (std::uint32_t i = 0; i < module.slots; ++i) {
        bare += spec(module.first_slot + i) == kNothing ? 1 : 0;
      }
      const std::size_t n = module.slots;
      pairs += n * (n - 1) / 2 - (bare > 0 ? bare * (bare - 1) / 2 : 0);
    }
    return pairs;
  }

  // From each load on, by one either way, until the first free pin or the end of the rail.
  void shifts() {
    KindCoverage kind{Kind::shifted, "a row shifted by one", 0, 0, 0, 0};
    for (const Rail& rail : field_.rails) {
      const double price = prices_.slide(rail.length, 1);
      const auto n = static_cast<std::int64_t>(rail.length);
      for (const std::int64_t dir : {1, -1}) {
        for (std::int64_t lo = 0; lo < n; ++lo) {
          if (spec(rail.first + static_cast<std::uint32_t>(lo)) == kNothing) continue;
          ++kind.possible;
          tally(kind, shift(rail, lo, dir), price);
        }
      }
    }
    close(std::move(kind));
  }

  Effects shift(const Rail& rail, std::int64_t lo, std::int64_t dir) {
    Effects effects;
    std::uint32_t carried = kNothing;
    for (std::int64_t t = lo; t >= 0 && t < static_cast<std::int64_t>(rail.length); t += dir) {
      const std::uint32_t slot = rail.first + static_cast<std::uint32_t>(t);
      put(effects, slot, carried);
      carried = spec(slot);
      if (carried == kNothing || effects.unflagged < 1e-6) break;
    }
    return effects;
  }

  void reversals() {
    KindCoverage kind{Kind::reversed, "a rail plugged the other way round", 0, 0, 0, 0};
    for (const Rail& rail : field_.rails) {
      if (rail.length < 2) continue;
      ++kind.possible;
      Effects effects;
      for (std::uint32_t i = 0; i < rail.length; ++i) {
        put(effects, rail.first + i, spec(rail.first + rail.length - 1 - i));
      }
      if (!effects.changes || !effects.shown(prices_.reversal())) blind_rails_.push_back(&rail);
      tally(kind, effects, prices_.reversal());
    }
    close(std::move(kind));
  }

  void rails() {
    KindCoverage kind{Kind::rails_exchanged, "two rails of a module exchanged", 0, 0, 0, 0};
    for (const Module& module : field_.modules) {
      for (std::uint32_t a = module.first; a < module.first + module.rails; ++a) {
        for (std::uint32_t b = a + 1; b < module.first + module.rails; ++b) {
          if (field_.rails[a].length != field_.rails[b].length) continue;
          ++kind.possible;
          if (kind.weighed >= kMostPairs) continue;
          Effects effects;
          exchange(effects, field_.rails[a].first, field_.rails[b].first, field_.rails[a].length);
          tally(kind, effects, prices_.rails(a, b));
        }
      }
    }
    close(std::move(kind));
  }

  void exchange(Effects& effects, std::uint32_t a, std::uint32_t b, std::uint32_t count) {
    for (std::uint32_t i = 0; i < count; ++i) {
      put(effects, a + i, spec(b + i));
      put(effects, b + i, spec(a + i));
      if (effects.unflagged < 1e-6) return;
    }
  }

  [[nodiscard]] bool same_layout(const Module& a, const Module& b) const {
    if (a.rails != b.rails) return false;
    for (std::uint32_t r = 0; r < a.rails; ++r) {
      if (field_.rails[a.first + r].size != field_.rails[b.first + r].size) return false;
    }
    return true;
  }

  void modules() {
    KindCoverage kind{Kind::modules_exchanged, "two modules of one layout exchanged", 0, 0, 0, 0};
    const std::size_t n = field_.modules.size();
    const std::size_t step = n * n / 2 / (20 * kMostPairs) + 1;
    std::size_t seen = 0;
    for (std::size_t a = 0; a < n; ++a) {
      for (std::size_t b = a + 1 + (seen % step); b < n; b += step) {
        ++seen;
        if (!same_layout(field_.modules[a], field_.modules[b])) continue;
        ++kind.possible;
        if (kind.weighed >= kMostPairs) continue;
        Effects effects;
        exchange(effects, field_.modules[a].first_slot, field_.modules[b].first_slot,
                 field_.modules[a].slots);
        tally(kind, effects, prices_.modules());
      }
    }
    kind.possible *= step;
    close(std::move(kind));
  }

  void loads() {
    std::vector<std::pair<std::size_t, std::uint32_t>> by_pins(apart_.table().specs.size());
    for (std::uint32_t s = 0; s < by_pins.size(); ++s) by_pins[s] = {0, s};
    std::vector<plan::PinId> example(by_pins.size());
    for (std::size_t i = plan_.pins.size(); i-- > 0;) {
      const std::uint32_t s = apart_.table().of_pin[i];
      ++by_pins[s].first;
      example[s] = plan_.pins[i].id;
    }
    if (!by_pins.empty()) by_pins.erase(by_pins.begin());
    std::stable_sort(by_pins.begin(), by_pins.end(),
                     [](const auto& a, const auto& b) { return a.first > b.first; });
    if (by_pins.size() > kMostLoads) by_pins.resize(kMostLoads);
    for (const auto& [pins, s] : by_pins) out_.loads.push_back(load(s, example[s], pins));
  }

  LoadCoverage load(std::uint32_t s, plan::PinId example, std::size_t pins) {
    const LoadKind& kind = apart_.table().kinds[apart_.table().specs[s].kind];
    LoadCoverage out{example, pins, 0, 0, 1};
    out.least_joint_ohm = edge(0.02, 50, true, [&](double x) {
      return apart_.flagged(s, [x](double ohm) { return ohm + x; });
    });
    out.largest_leak_ohm = edge(0.5, 5000, false, [&](double x) {
      return apart_.flagged(s, [x](double ohm) { return ohm * x / (ohm + x); });
    });
    if (kind.can_miss) out.missing_shown = apart_.flagged_load(s, kind.missing);
    return out;
  }

  // The size between lo and hi, in steps of 2 %, at which a fault begins (rising) or ceases to
  // show.
  template <typename Flagged>
  static double edge(double lo, double hi, bool rising, Flagged flagged) {
    if (!rising && flagged(lo) < kLevel) return 0;
    for (int i = 0; i < 9; ++i) {
      const double mid = std::sqrt(lo * hi);
      const bool shows = flagged(mid) >= kLevel;
      (shows == rising ? hi : lo) = mid;
    }
    return rising ? hi : lo;
  }

  void advise() {
    const auto say = [&](std::string text) { out_.advice.push_back(std::move(text)); };
    if (same_neighbours_ > 0) {
      say(
          fmt::format("{} pairs of neighbours are electrically alike: plan unlike loads or lead "
                      "lengths side by "
                      "side, or check their tags by eye.",
                      same_neighbours_));
    }
    if (!out_.hard.empty()) {
      say(fmt::format(
          "{} pairs of neighbours differ too little for this tester, the first at "
          "M{:02}/R{}/P{:02}: make their leads differ by a metre or two more, or check "
          "their tags by eye.",
          out_.hard.size(), out_.hard[0][0].module, out_.hard[0][0].rail, out_.hard[0][0].pin));
    }
    if (!blind_rails_.empty()) {
      say(fmt::format(
          "{} rails read the same when turned round, the first is rail {} of module {}: "
          "leave one pin free near one end of each, at a different place on each rail.",
          blind_rails_.size(), blind_rails_[0]->number, blind_rails_[0]->module));
    }
  }

  const plan::Plan& plan_;
  CoverageOptions options_;
  Separation apart_;
  const Field& field_;
  Prices prices_;
  Coverage out_;
  std::size_t same_neighbours_ = 0;
  std::vector<const Rail*> blind_rails_;
};

}  // namespace

Coverage coverage(const plan::Plan& plan, const tester::Model& tester,
                  const CoverageOptions& options) {
  return Counter(plan, tester, options).count();
}

}  // namespace walkdown::match
