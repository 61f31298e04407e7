// SPDX-License-Identifier: Apache-2.0
// append_bench: what the record costs over the medium alone. Reference: a bare loop of write() and
// fdatasync() over the same bytes in the same pieces. 1.0: the record costs nothing.
#include <benchmark/benchmark.h>
#include <fcntl.h>
#include <unistd.h>

#include <cstdlib>
#include <filesystem>

#include "tests/record/sample.h"
#include "tests/record/versus.h"

namespace walkdown::record::test {
namespace {

constexpr int kCommits = 200;
constexpr int kReadings = 100;

std::vector<Draft> readings() {
  std::vector<Draft> drafts;
  for (int i = 0; i < kReadings; ++i) drafts.push_back(some_reading(i % 72 + 1));
  return drafts;
}

// The pieces that a record was written in: entry lines and their checkpoint.
std::vector<std::string> pieces(const std::string& record) {
  std::vector<std::string> all(1);
  for (const std::string& line : lines_of(record)) {
    all.back() += line + '\n';
    if (line.starts_with("{\"checkpoint\"")) all.emplace_back();
  }
  all.pop_back();
  return all;
}

// Opening is not counted on either side.
double bare(const std::string& path, const std::vector<std::string>& bytes) {
  const int file = ::open(path.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_APPEND, 0644);
  const double seconds = seconds_of([&] {
    for (const std::string& piece : bytes) {
      const bool ok =
          ::write(file, piece.data(), piece.size()) == static_cast<ssize_t>(piece.size()) &&
          ::fdatasync(file) == 0;
      if (!ok) std::abort();
    }
  });
  ::close(file);
  return seconds;
}

// `ahead`: so many commits may be on their way while the next readings come in. 0: each is waited
// for before the next, which a tester's line never does, and shows what cannot be hidden.
double record_it(const std::string& path, const std::vector<Draft>& drafts, std::size_t ahead) {
  std::filesystem::remove(path);
  const SystemClock clock;
  auto writer = Writer::create(path, {"bench/1", nlohmann::json::object()}, station(), clock);
  std::vector<Ticket> tickets;
  return seconds_of([&] {
    for (int i = 0; i < kCommits; ++i) {
      tickets.push_back(*writer->append(drafts));
      const bool wait = tickets.size() > ahead;
      if (wait && !writer->wait(tickets[tickets.size() - 1 - ahead])) std::abort();
    }
    if (!writer->flush()) std::abort();
  });
}

void append(benchmark::State& state) {
  const Scratch scratch;
  const auto drafts = readings();
  const auto ahead = static_cast<std::size_t>(state.range(0));
  record_it(scratch.path("first"), drafts, ahead);
  auto bytes = pieces(read_file(scratch.path("first")));
  bytes.erase(bytes.begin());  // the opening
  versus_timed(
      state, [&] { return record_it(scratch.path("ours"), drafts, ahead); },
      [&] { return bare(scratch.path("bare"), bytes); });
  state.counters["commits"] = static_cast<double>(bytes.size());
  state.counters["readings_a_commit"] =
      static_cast<double>(kCommits * kReadings) / static_cast<double>(bytes.size());
}

BENCHMARK(append)
    ->Name("append, 100 readings a commit, against write() and fdatasync(); commits under way")
    ->Arg(1)
    ->Arg(2)
    ->Arg(0)
    ->UseManualTime()
    ->Iterations(15)
    ->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace walkdown::record::test

BENCHMARK_MAIN();
