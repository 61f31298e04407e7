// SPDX-License-Identifier: Apache-2.0
// report_bench: the report of 24,000 pins, read once each. Reference: the check of the same record,
// which the report does along the way.
#include <benchmark/benchmark.h>

#include <cstdlib>

#include "checklist/check/derive.h"
#include "checklist/report/build.h"
#include "checklist/report/html.h"
#include "tests/check/big_record.h"
#include "tests/record/scratch.h"
#include "tests/record/versus.h"

namespace walkdown::report {
namespace {

const std::string& big() {
  static const record::test::Scratch scratch;
  static const std::string path = [] {
    std::string made = scratch.path("big");
    check::test::write_big_record(made, 24'000, 24'000);
    return made;
  }();
  return path;
}

void report(benchmark::State& state) {
  std::size_t bytes = 0;
  record::test::versus(
      state,
      [&] {
        const auto model = build(big());
        if (!model || !model->check.holds) std::abort();
        bytes = html(*model).size();
      },
      [] {
        const auto checked = check::check_file(big(), {});
        if (!checked || !checked->holds) std::abort();
      });
  state.counters["html_bytes"] = static_cast<double>(bytes);
}

BENCHMARK(report)
    ->Name("report of 24,000 pins, against the check of the same record")
    ->UseManualTime()
    ->Iterations(5)
    ->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace walkdown::report

BENCHMARK_MAIN();
