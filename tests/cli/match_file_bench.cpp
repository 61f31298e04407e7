// SPDX-License-Identifier: Apache-2.0
// match_file_bench: 24,000 pins from the plan's and the tester's bytes to the JSON of `match`.
// Reference: the same bytes read by bare RE2, one full match a tester line. The quarter of a second
// that a person does not notice is the bar for the whole.
#include <benchmark/benchmark.h>
#include <re2/re2.h>

#include <chrono>
#include <cstdlib>
#include <string>
#include <string_view>

#include "checklist/audit/planned.h"
#include "checklist/cli/match_json.h"
#include "checklist/cli/sweep_file.h"
#include "reader/match/alike.h"
#include "reader/match/diagnose.h"
#include "reader/trainer/faults.h"
#include "reader/trainer/sweep.h"

namespace walkdown::cli {
namespace {

using SteadyClock = std::chrono::steady_clock;

std::string plan_text() {
  std::string text = "cue,position,module,rail,pin,igniter,count,join,wire,lead_m\n";
  constexpr const char* kLoads[] = {"1,series,AWG24,5", "1,series,AWG22,12.5", "2,parallel,AWG24,8",
                                    "3,series,AWG24,20", "1,series,AWG24,15"};
  unsigned load = 0;
  for (int module = 1; module <= 375; ++module) {
    for (int pin = 0; pin < 64; ++pin) {
      load = load * 1'103'515'245U + 12'345U;
      text += std::to_string(module) + ",North," + std::to_string(module) + "," +
              std::to_string(pin / 32 + 1) + "," + std::to_string(pin % 32 + 1) + ",standard," +
              kLoads[(load >> 16U) % 5] + "\n";
    }
  }
  return text;
}

show::Show big_show() {
  show::Show show;
  show.put({show::Role::plan, "big.csv", plan_text()});
  return audit::complete(std::move(show));
}

// A usual evening's faults, read twice.
std::string sweep_text(const audit::Planned& planned) {
  trainer::Field field(planned.plan, planned.tester.model, 11);
  if (!trainer::apply_faults(trainer::random_faults(planned.plan, 11), field)) std::abort();
  trainer::SweepForm form;
  form.times = 2;
  std::string text;
  for (const auto& line : trainer::sweep(field, field.pins(), form)) text += line + "\n";
  return text;
}

std::size_t to_json(const show::Show& show, std::string_view sweep_bytes) {
  const auto planned = audit::import(show).planned;
  const auto parser = tester::LineParser::make(planned->tester);
  const Sweep sweep = read_sweep(sweep_bytes, *parser);
  const auto outcome = match::diagnose(planned->plan, planned->tester.model, sweep.samples);
  return match_json(outcome, match::alike(planned->plan), sweep.rejected).size();
}

std::size_t bare(const re2::RE2& pattern, std::string_view bytes) {
  std::size_t matched = 0;
  while (!bytes.empty()) {
    const auto end = bytes.find('\n');
    matched += re2::RE2::FullMatch(re2::StringPiece(bytes.data(), end), pattern) ? 1U : 0U;
    bytes.remove_prefix(end + 1);
  }
  return matched;
}

void match_file(benchmark::State& state) {
  const auto show = big_show();
  const std::string sweep = sweep_text(*audit::import(show).planned);
  const re2::RE2 pattern(R"(M(\d+),R(\d+),P(\d+),([0-9.]+|OL),ohm,(\d+)\*[0-9A-F]{2})");
  double ours = 0;
  double reference = 0;
  for (auto _ : state) {
    const auto begin = SteadyClock::now();
    benchmark::DoNotOptimize(to_json(show, sweep));
    const auto middle = SteadyClock::now();
    if (bare(pattern, sweep) != 48'000) std::abort();
    const auto end = SteadyClock::now();
    ours += std::chrono::duration<double>(middle - begin).count();
    reference += std::chrono::duration<double>(end - middle).count();
  }
  state.counters["s"] = ours / static_cast<double>(state.iterations());
  state.counters["times_bare_re2"] = ours / reference;
}

BENCHMARK(match_file)
    ->Name("24,000 pins, two readings each, from bytes to JSON, against bare RE2 over the lines")
    ->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace walkdown::cli

BENCHMARK_MAIN();
