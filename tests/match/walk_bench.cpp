// SPDX-License-Identifier: Apache-2.0
// walk_bench: 200 places. `over_best` is the walk's length against the best that 40 times as many
// kicks find from the same start: the reference of the same run.
#include <benchmark/benchmark.h>

#include "reader/match/walk.h"
#include "tests/match/simulator.h"

namespace {

using walkdown::match::Place;

std::vector<Place> places_of(bool rows) {
  walkdown::simulated::Dice dice(rows ? 3 : 5);
  std::vector<Place> out;
  for (int i = 0; i < 200; ++i) {
    const double y = rows ? 20.0 * static_cast<double>(dice.below(5)) : dice.uniform(0, 150);
    out.push_back({dice.uniform(0, 300), y});
  }
  return out;
}

void walk_200(benchmark::State& state) {
  const auto places = places_of(state.range(0) != 0);
  std::vector<std::size_t> order;
  for (auto _ : state) order = walkdown::match::walk({0, -20}, places);
  walkdown::match::WalkOptions longer;
  longer.kicks *= 40;
  const auto best = walkdown::match::walk({0, -20}, places, longer);
  state.counters["over_best"] = walkdown::match::walk_length({0, -20}, places, order) /
                                walkdown::match::walk_length({0, -20}, places, best);
}
BENCHMARK(walk_200)->Arg(0)->Arg(1)->ArgName("rows")->Unit(benchmark::kMillisecond);

}  // namespace

BENCHMARK_MAIN();
