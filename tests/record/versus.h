// SPDX-License-Identifier: Apache-2.0
// A benchmark of two things by turns in one run: ours, and the reference it is held against.
#pragma once

#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <functional>
#include <string>
#include <vector>

namespace walkdown::record::test {

inline double seconds_of(const std::function<void()>& work) {
  const auto begin = std::chrono::steady_clock::now();
  work();
  return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
}

// Reports the time of `ours`, `ratio` (time of the reference through time of ours: above 1 ours is
// quicker; the median over the rounds, since other work on the machine hits one side or the other),
// both medians in milliseconds, and `ratio_of_least`, the least time of each: what other work on
// the machine, or on its disk, disturbed the least. Each of the two returns its own seconds, so
// that what it needs to begin is not counted.
inline void versus_timed(benchmark::State& state, const std::function<double()>& ours,
                         const std::function<double()>& reference) {
  std::vector<double> ratios, mine, theirs;
  for (auto _ : state) {
    theirs.push_back(reference());
    mine.push_back(ours());
    ratios.push_back(theirs.back() / mine.back());
    state.SetIterationTime(mine.back());
  }
  const auto median = [](std::vector<double>& values) {
    std::sort(values.begin(), values.end());
    return values[values.size() / 2];
  };
  const auto least = [](const std::vector<double>& values) {
    return *std::min_element(values.begin(), values.end());
  };
  state.counters["ratio_of_least"] = least(theirs) / least(mine);
  state.counters["ratio"] = median(ratios);
  state.counters["ours_ms"] = median(mine) * 1e3;
  state.counters["reference_ms"] = median(theirs) * 1e3;
}

inline void versus(benchmark::State& state, const std::function<void()>& ours,
                   const std::function<void()>& reference) {
  versus_timed(
      state, [&] { return seconds_of(ours); }, [&] { return seconds_of(reference); });
}

}  // namespace walkdown::record::test
