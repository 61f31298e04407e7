// SPDX-License-Identifier: Apache-2.0
// match-speed: how long a diagnosis takes on 24,000 and on 1,000,000 pins, and their ratio; and one
// fully permuted rail of 72 pins, to be set beside a general assignment (assignment_reference.py).
#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <cstdio>

#include "reader/match/diagnose.h"
#include "reader/plan/expected.h"
#include "tests/match/simulator.h"

namespace {

using namespace walkdown;  // NOLINT: a program of one page

simulated::Field field_of(std::size_t pins, double moves) {
  simulated::Setting setting;
  setting.pins = pins;
  setting.fault_scale = moves > 3 ? 1.5 : 1;
  setting.move_scale = moves;
  return simulated::simulate(setting);
}

void run(benchmark::State& state, const simulated::Field& field) {
  for (auto _ : state) {
    benchmark::DoNotOptimize(match::diagnose(field.plan, field.tester, field.samples));
  }
  state.SetItemsProcessed(static_cast<std::int64_t>(field.plan.pins.size()) *
                          static_cast<std::int64_t>(state.iterations()));
}

void usual(benchmark::State& state) {
  static const auto field = field_of(24000, 1);
  run(state, field);
}
void troubled(benchmark::State& state) {
  static const auto field = field_of(24000, 6);
  run(state, field);
}
void clean(benchmark::State& state) {
  static const auto field = [] {
    simulated::Setting setting;
    setting.pins = 24000;
    setting.fault_scale = 0;
    setting.move_scale = 0;
    return simulated::simulate(setting);
  }();
  run(state, field);
}

// The reference: a diagnosis of 24,000 pins in the same run. Reported as the ratio.
void million(benchmark::State& state) {
  static const auto small = field_of(24000, 1);
  static const auto large = field_of(1000000, 1);
  using Clock = std::chrono::steady_clock;
  double least = 1e9;
  for (int i = 0; i < 5; ++i) {
    const auto start = Clock::now();
    benchmark::DoNotOptimize(match::diagnose(small.plan, small.tester, small.samples));
    least = std::min(least, std::chrono::duration<double>(Clock::now() - start).count());
  }
  double whole = 1e9;
  for (auto _ : state) {
    const auto start = Clock::now();
    benchmark::DoNotOptimize(match::diagnose(large.plan, large.tester, large.samples));
    whole = std::min(whole, std::chrono::duration<double>(Clock::now() - start).count());
  }
  state.counters["ratio_to_24000"] = whole / least;
}

// A rail of 72 pins on which every load sits on another pin.
void permuted(benchmark::State& state) {
  simulated::Field field;
  simulated::Dice dice(7);
  simulated::Setting setting;
  setting.pins = 72;
  simulated::wire_up(setting, dice, field.plan);
  std::vector<plan::PlannedPin> pins = field.plan.pins;
  pins.resize(72);
  field.plan.layout.rails = {{1, {72}}};
  for (std::uint16_t p = 0; p < 72; ++p) pins[p].id = {1, 1, static_cast<std::uint16_t>(p + 1)};
  field.plan.pins = pins;
  for (std::uint16_t p = 0; p < 72; ++p) {
    const plan::Load& load = pins[(p * 29U + 17U) % 72U].load;
    const plan::Expected loop = plan::expected(load, field.plan.catalogue);
    for (int i = 0; i < 2; ++i) field.samples.push_back({pins[p].id, loop.mean_ohm, false});
  }
  run(state, field);
}

BENCHMARK(clean)->Unit(benchmark::kMillisecond);
BENCHMARK(usual)->Unit(benchmark::kMillisecond);
BENCHMARK(troubled)->Unit(benchmark::kMillisecond);
BENCHMARK(permuted)->Unit(benchmark::kMillisecond);
BENCHMARK(million)->Unit(benchmark::kMillisecond)->Iterations(2);

}  // namespace

BENCHMARK_MAIN();
