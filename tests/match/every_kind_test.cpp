// SPDX-License-Identifier: Apache-2.0
// Every kind of mistake that moves loads, made by hand on fields without any other: each must come
// out as what it is, alone and with an open circuit inside it.
#include <gtest/gtest.h>

#include <cmath>
#include <functional>

#include "reader/match/diagnose.h"
#include "reader/plan/expected.h"
#include "tests/match/simulator.h"

namespace walkdown {
namespace {

using match::Finding;
using match::Kind;
using plan::PinId;

// pin -> pin whose lead is on it; PinId{}: none.
using Moves = std::map<PinId, PinId>;

class Bench {
 public:
  explicit Bench(std::uint64_t seed) {
    simulated::Setting setting;
    setting.seed = seed;
    setting.pins = 360;
    setting.fault_scale = setting.move_scale = 0;
    field_ = simulated::simulate(setting);
  }

  [[nodiscard]] const std::map<std::uint16_t, std::vector<std::uint16_t>>& rails() const {
    return field_.plan.layout.rails;
  }
  [[nodiscard]] const plan::PlannedPin* planned(PinId pin) const { return field_.plan.find(pin); }

  // What a pin is planned to read; a pin without a load reads nothing.
  [[nodiscard]] double ohm(PinId pin) const {
    const plan::PlannedPin* at = planned(pin);
    return at == nullptr ? 1e3 : plan::expected(at->load, field_.plan.catalogue).mean_ohm;
  }

  // Pins that read something quite different after these moves.
  [[nodiscard]] int clear(const Moves& moves) const {
    int n = 0;
    for (const auto& [pin, source] : moves) {
      const double now = ohm(pin);
      n += std::abs(ohm(source) - now) > 0.6 + 0.15 * std::min(now, ohm(source)) ? 1 : 0;
    }
    return n;
  }

  // The loads lie where `moves` says, and `broken` is open.
  [[nodiscard]] std::vector<Finding> findings(const Moves& moves, PinId broken = {}) const {
    std::map<PinId, std::vector<match::Sample>> by_load;
    for (const match::Sample& sample : field_.samples) by_load[sample.pin].push_back(sample);
    std::vector<match::Sample> samples;
    for (const auto& [pin, own] : by_load) {
      const auto at = moves.find(pin);
      const PinId source = at == moves.end() ? pin : at->second;
      const bool has_load = planned(source) != nullptr && pin != broken;
      for (match::Sample sample : by_load.contains(source) ? by_load.at(source) : own) {
        sample.pin = pin;
        sample.over = !has_load;
        samples.push_back(sample);
      }
    }
    return match::diagnose(field_.plan, field_.tester, samples).findings;
  }

 private:
  simulated::Field field_;
};

PinId at(std::uint16_t module, int rail, int pin) {
  return {module, static_cast<std::uint16_t>(rail), static_cast<std::uint16_t>(pin)};
}

void exchange(const Bench& bench, Moves& moves, PinId a, PinId b, int pins) {
  for (int p = 1; p <= pins; ++p) {
    const PinId x = at(a.module, a.rail, p);
    const PinId y = at(b.module, b.rail, p);
    moves[x] = bench.planned(y) ? y : PinId{};
    moves[y] = bench.planned(x) ? x : PinId{};
  }
}

struct Tally {
  int made = 0, told = 0, told_when_broken = 0;

  void expect(const char* what, int at_least, double share = 0.95) const {
    EXPECT_GE(made, at_least) << what << ": too few fields have it to say anything";
    EXPECT_GE(told, share * made) << what;
    EXPECT_GE(told_when_broken, 0.9 * made) << what << " with an open circuit in it";
  }
};

bool has(const std::vector<Finding>& findings, Kind kind, int by) {
  return std::any_of(findings.begin(), findings.end(),
                     [&](const Finding& f) { return f.kind == kind && f.by == by; });
}

// Alone, the mistake is the only finding; with a broken circuit there is one more.
void tally(const Bench& bench, const Moves& moves, Kind kind, int by, int clear, Tally& tally) {
  if (bench.clear(moves) < clear) return;
  ++tally.made;
  const auto findings = bench.findings(moves);
  tally.told += findings.size() == 1 && has(findings, kind, by) ? 1 : 0;
  PinId broken;
  for (const auto& [pin, source] : moves) {
    if (bench.planned(source) != nullptr && bench.planned(pin) != nullptr) broken = pin;
  }
  tally.told_when_broken += has(bench.findings(moves, broken), kind, by) ? 1 : 0;
}

void on_fields(int fields, const std::function<void(const Bench&)>& use) {
  for (int i = 0; i < fields; ++i) use(Bench(4000 + static_cast<std::uint64_t>(i)));
}

TEST(EveryKind, TwoPinsOfARailAModuleAndTheField) {
  Tally neighbours, in_rail, in_module, far;
  on_fields(12, [&](const Bench& bench) {
    const auto& rails = bench.rails();
    const auto pair = [&](PinId a, PinId b, Tally& sum) {
      if (!bench.planned(a) || !bench.planned(b)) return;
      tally(bench, {{a, b}, {b, a}}, Kind::swapped, 0, 2, sum);
    };
    for (const auto& [module, sizes] : rails) {
      pair(at(module, 1, 3), at(module, 1, 4), neighbours);
      pair(at(module, 1, 2), at(module, 1, sizes[0] - 1), in_rail);
      if (sizes.size() > 1) pair(at(module, 1, 5), at(module, 2, 3), in_module);
      pair(at(module, 1, 6), at(rails.rbegin()->first, 1, 2), far);
    }
  });
  // Inside a pair of pins an open circuit leaves one reading to tell of the other: not counted.
  for (Tally* sum : {&neighbours, &in_rail, &in_module, &far}) sum->told_when_broken = sum->made;
  neighbours.expect("neighbours", 15);
  in_rail.expect("two pins of a rail", 15);
  // Rare: two faults, each on its own, explain the smaller differences as well.
  in_module.expect("two pins of a module", 10, 0.85);
  far.expect("two pins of two modules", 10, 0.6);
}

// From a pin on, every lead sits k pins too far; the last ones hang loose at the end of the rail.
TEST(EveryKind, ABlockShiftedEitherWayOffTheEndOfItsRail) {
  for (const int by : {1, -1, 2, -2, 3, -3, 4, -4, 5, -5}) {
    Tally sum;
    on_fields(10, [&](const Bench& bench) {
      for (const auto& [module, sizes] : bench.rails()) {
        const int n = sizes[0];
        Moves moves;
        const int from = by > 0 ? 3 : n - 2;
        bool free = false;
        for (int p = from; p >= 1 && p <= n; p += by > 0 ? 1 : -1) {
          const int source = p - by;
          const bool inside = by > 0 ? source >= from : source <= from;
          const PinId to = at(module, 1, p);
          moves[to] = inside ? at(module, 1, source) : PinId{};
          free = free || bench.planned(to) == nullptr;
        }
        if (!free && n > 2 * std::abs(by) + 4) {
          tally(bench, moves, Kind::shifted, by, 4, sum);
        }
      }
    });
    sum.expect(("shifted by " + std::to_string(by)).c_str(), 3);
  }
}

TEST(EveryKind, ARailTheOtherWayRound) {
  Tally sum;
  on_fields(8, [&](const Bench& bench) {
    for (const auto& [module, sizes] : bench.rails()) {
      Moves moves;
      for (int p = 1; p <= sizes[0]; ++p) {
        const PinId source = at(module, 1, sizes[0] + 1 - p);
        moves[at(module, 1, p)] = bench.planned(source) ? source : PinId{};
      }
      tally(bench, moves, Kind::reversed, 0, 3, sum);
    }
  });
  sum.expect("reversed", 20);
}

TEST(EveryKind, TwoRailsOfOneModuleAndOfTwo) {
  Tally inside, across;
  on_fields(10, [&](const Bench& bench) {
    const auto& rails = bench.rails();
    for (const auto& [module, sizes] : rails) {
      for (const auto& [other, others] : rails) {
        const bool same = module == other;
        const std::size_t second = same ? 1 : others.size() - 1;
        if (other < module || second >= others.size() || sizes[0] != others[second]) continue;
        Moves moves;
        exchange(bench, moves, at(module, 1, 0), at(other, static_cast<int>(second) + 1, 0),
                 sizes[0]);
        // Modules of one rail each are exchanged modules, too.
        if (!same && sizes.size() == 1) continue;
        tally(bench, moves, Kind::rails_exchanged, 0, 4, same ? inside : across);
      }
    }
  });
  inside.expect("two rails of a module", 10);
  across.expect("two rails of two modules", 10);
}

// Modules of two sizes share the pins that both have.
TEST(EveryKind, TwoModulesOfOneSizeAndOfTwo) {
  Tally same, unlike;
  on_fields(10, [&](const Bench& bench) {
    const auto& rails = bench.rails();
    for (const auto& [a, sizes] : rails) {
      for (const auto& [b, others] : rails) {
        if (b <= a || sizes.size() < 2 || others.size() < 2) continue;
        Moves moves;
        for (std::size_t r = 1; r <= std::max(sizes.size(), others.size()); ++r) {
          const int x = r <= sizes.size() ? sizes[r - 1] : 0;
          const int y = r <= others.size() ? others[r - 1] : 0;
          const int rail = static_cast<int>(r);
          exchange(bench, moves, at(a, rail, 0), at(b, rail, 0), std::min(x, y));
          for (int p = std::min(x, y) + 1; p <= std::max(x, y); ++p) {
            moves[at(x > y ? a : b, rail, p)] = PinId{};
          }
        }
        tally(bench, moves, Kind::modules_exchanged, 0, 6, sizes == others ? same : unlike);
      }
    }
  });
  same.expect("modules of one size", 10);
  unlike.expect("modules of two sizes", 10);
}

}  // namespace
}  // namespace walkdown
