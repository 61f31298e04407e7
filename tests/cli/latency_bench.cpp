// SPDX-License-Identifier: Apache-2.0
// latency_bench: from the last byte of a line written on the pseudo-terminal to its entry signed
// and acknowledged on the medium, one line after the other. Reference: a bare write() and
// fdatasync() of a line to the same medium, which nothing can beat.
//
// p99_ms is the figure; the bar is 20 ms.
#include <benchmark/benchmark.h>
#include <fcntl.h>
#include <unistd.h>

#include <algorithm>
#include <atomic>
#include <chrono>
#include <cstdlib>
#include <filesystem>
#include <string>
#include <thread>
#include <variant>
#include <vector>

#include "checklist/cli/intake.h"
#include "checklist/record/signing_key.h"
#include "checklist/record/writer.h"
#include "reader/tester/link.h"
#include "reader/trainer/lines.h"
#include "reader/trainer/pty.h"

namespace walkdown::cli {
namespace {

using SteadyClock = std::chrono::steady_clock;
using Millis = std::chrono::duration<double, std::milli>;
constexpr int kLines = 1000;

std::string scratch() {
  std::string pattern = std::filesystem::temp_directory_path() / "walkdown-latency-XXXXXX";
  if (mkdtemp(pattern.data()) == nullptr) std::abort();
  return pattern;
}

double at(std::vector<double>& sorted, double share) {
  return sorted[static_cast<std::size_t>(share * static_cast<double>(sorted.size() - 1))];
}

std::vector<double> bare_ms(const std::string& path) {
  const int file = open(path.c_str(), O_WRONLY | O_CREAT | O_APPEND, 0600);
  const std::string line(300, 'x');
  std::vector<double> took;
  for (int i = 0; i < kLines; ++i) {
    const auto begin = SteadyClock::now();
    if (write(file, line.data(), line.size()) < 0 || fdatasync(file) != 0) std::abort();
    took.push_back(Millis(SteadyClock::now() - begin).count());
  }
  close(file);
  std::sort(took.begin(), took.end());
  return took;
}

// Listens as `walkdown read` does, until told to stop.
void listen(tester::Link& link, Intake& intake) {
  while (true) {
    const auto event = link.next();
    if (const auto* bytes = std::get_if<tester::event::Bytes>(&event)) {
      if (!intake.feed(bytes->bytes)) std::abort();
    }
    if (std::holds_alternative<tester::event::Stopped>(event)) return;
  }
}

std::vector<double> ours_ms(const std::string& path) {
  std::atomic<std::uint64_t> acknowledged{0};
  record::WriterOptions options;
  options.sealed = [&](const record::EntryView& entry) {
    if (entry.kind == "reading") acknowledged.fetch_add(1);
  };
  const record::SystemClock clock;
  auto writer =
      record::Writer::create(path, {"bench/1", nlohmann::json::object()},
                             record::SigningKey::make("bench"), clock, std::move(options));
  auto tester = trainer::TesterPty::open();
  auto link = tester::Link::open((*tester)->path(), {});
  Intake intake(*tester::LineParser::make(tester::default_profile()), std::nullopt, *writer);
  std::thread ear([&] { listen(*link, intake); });
  std::vector<double> took;
  tester::Reading reading;
  reading.pin = {1, 1, 1};
  for (int i = 0; i < kLines; ++i) {
    reading.micro_ohm = 2'000'000 + i * 10'000;
    const auto begin = SteadyClock::now();
    (*tester)->send({trainer::line(reading)});
    while (acknowledged.load() < static_cast<std::uint64_t>(i) + 1) std::this_thread::yield();
    took.push_back(Millis(SteadyClock::now() - begin).count());
  }
  link->stop();
  ear.join();
  std::sort(took.begin(), took.end());
  return took;
}

void latency(benchmark::State& state) {
  const std::string folder = scratch();
  for (auto _ : state) {
    auto ours = ours_ms(folder + "/record");
    auto bare = bare_ms(folder + "/bare");
    state.counters["p50_ms"] = at(ours, 0.5);
    state.counters["p99_ms"] = at(ours, 0.99);
    state.counters["bare_p99_ms"] = at(bare, 0.99);
    state.counters["p99_over_bare"] = at(ours, 0.99) / at(bare, 0.99);
  }
  std::filesystem::remove_all(folder);
}

BENCHMARK(latency)
    ->Name("byte on the pseudo-terminal to acknowledged entry, 1,000 lines")
    ->Iterations(1)
    ->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace walkdown::cli

BENCHMARK_MAIN();
