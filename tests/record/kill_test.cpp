// SPDX-License-Identifier: Apache-2.0
// A process that appends is killed at 200 random moments. What it was told is kept must be there.
#include <gtest/gtest.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <random>

#include "checklist/record/writer.h"
#include "tests/record/sample.h"

namespace walkdown::record {
namespace {

constexpr int kKills = 200;

// The child: goes on with the record, appends without end, and reports the size of the record after
// each acknowledgement.
[[noreturn]] void append_until_killed(const std::string& path, int report_to) {
  const SystemClock clock;
  auto writer = Writer::resume(path, test::station(), clock);
  if (!writer) _exit(3);
  for (int i = 0;; ++i) {
    const auto ticket = writer->append({test::some_reading(i % 90), test::some_reading(i % 80)});
    if (!ticket || !writer->wait(*ticket)) _exit(4);
    if (write(report_to, &ticket->end, sizeof ticket->end) != sizeof ticket->end) _exit(5);
  }
}

std::uint64_t last_report(int from) {
  std::uint64_t last = 0, each = 0;
  while (read(from, &each, sizeof each) == sizeof each) last = each;
  return last;
}

TEST(KillTest, EveryAcknowledgedEntrySurvives) {
  const test::Scratch scratch;
  const std::string path = scratch.path("r");
  const SystemClock clock;
  ASSERT_TRUE(Writer::create(path, {"origin/1", {}}, test::station(), clock).ok());
  std::mt19937 random(20260704);
  std::uniform_int_distribution<int> moment_us(500, 25'000);
  std::uint64_t entries = 1;
  for (int kill_number = 0; kill_number < kKills; ++kill_number) {
    int ends[2];
    ASSERT_EQ(pipe(ends), 0);
    const pid_t child = fork();
    ASSERT_GE(child, 0);
    if (child == 0) append_until_killed(path, ends[1]);
    close(ends[1]);
    usleep(static_cast<useconds_t>(moment_us(random)));
    ASSERT_EQ(kill(child, SIGKILL), 0);
    int status = 0;
    ASSERT_EQ(waitpid(child, &status, 0), child);
    ASSERT_TRUE(WIFSIGNALED(status)) << "the child ended by itself: " << WEXITSTATUS(status);
    const std::uint64_t acknowledged = last_report(ends[0]);
    close(ends[0]);
    const Report report = *verify_file(path);
    ASSERT_GE(report.entries, acknowledged) << report.why;
    ASSERT_GE(report.entries, entries);
    entries = report.entries;
  }
  const auto writer = Writer::resume(path, test::station(), clock);
  ASSERT_TRUE(writer.ok()) << writer.error().sentence();
  const Report report = *verify_file(path);
  EXPECT_TRUE(report.holds) << report.why;
  EXPECT_GT(report.entries, std::uint64_t{kKills});
}

}  // namespace
}  // namespace walkdown::record
