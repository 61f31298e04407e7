// SPDX-License-Identifier: Apache-2.0
// line_bench: a tester's lines made into readings. Reference: bare RE2, a full match of the default
// profile's own pattern with all of its groups taken, over the same lines. 1.0: checksum, address,
// value and unit cost nothing on top.
#include <benchmark/benchmark.h>
#include <fmt/format.h>
#include <re2/re2.h>

#include <array>
#include <chrono>
#include <cstdlib>
#include <string>
#include <variant>
#include <vector>

#include "reader/tester/check.h"
#include "reader/tester/line.h"

namespace walkdown::tester {
namespace {

using SteadyClock = std::chrono::steady_clock;
constexpr int kLines = 10'000;

// `check`: with "*hh". Without it, so that the reference can match the same bytes.
std::vector<std::string> lines(bool check) {
  std::vector<std::string> all;
  for (int i = 0; i < kLines; ++i) {
    std::string line = fmt::format("M{:02},R{},P{:02},{}.{:02},ohm", i / 64 + 1, i / 32 % 2 + 1,
                                   i % 32 + 1, i % 7 + 1, i % 100);
    if (check) line += fmt::format("*{:02X}", xor8(line));
    all.push_back(std::move(line));
  }
  return all;
}

void ours(const LineParser& parser, const std::vector<std::string>& all) {
  for (const auto& line : all) {
    const auto parsed = parser.parse(line);
    if (!std::holds_alternative<Reading>(parsed)) std::abort();
    benchmark::DoNotOptimize(parsed);
  }
}

void bare(const re2::RE2& pattern, const std::vector<std::string>& all) {
  std::array<re2::StringPiece, 7> groups;
  for (const auto& line : all) {
    const re2::StringPiece text(line);
    if (!pattern.Match(text, 0, text.size(), re2::RE2::ANCHOR_BOTH, groups.data(), 7)) std::abort();
    benchmark::DoNotOptimize(groups);
  }
}

void parse(benchmark::State& state) {
  const Profile profile = default_profile();
  const auto parser = LineParser::make(profile);
  const re2::RE2 pattern(profile.line);
  const auto with = lines(state.range(0) != 0);
  const auto without = lines(false);
  std::chrono::duration<double> ours_s{};
  std::chrono::duration<double> bare_s{};
  for (auto _ : state) {
    const auto begin = SteadyClock::now();
    ours(*parser, with);
    const auto middle = SteadyClock::now();
    bare(pattern, without);
    ours_s += middle - begin;
    bare_s += SteadyClock::now() - middle;
  }
  state.counters["times_bare_re2"] = ours_s / bare_s;
  state.counters["lines_per_s"] = kLines * static_cast<double>(state.iterations()) / ours_s.count();
}

BENCHMARK(parse)
    ->Name("parse, against bare RE2; checksum")
    ->Arg(0)
    ->Arg(1)
    ->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace walkdown::tester

BENCHMARK_MAIN();
