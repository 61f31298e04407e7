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
  // Ready: without this many would be killed while they still check the record, and none would
  // append.
  const std::uint64_t size = writer->head().size;
  if (write(report_to, &size, sizeof size) != sizeof size) _exit(5);
  for (int i = 0;; ++i) {
    const auto ticket = writer->append({test::some_reading(i % 90), test::some_reading(i % 80)});
    if (!ticket || !writer->wait(*ticket)) _exit(4);
    if (write(report_to, &ticket->end, sizeof ticket->end) != sizeof ticket->end) _exit(5);
  }
}

std::uint64_t first_report(int from) {
  std::uint64_t size = 0;
  return read(from, &size, sizeof size) == sizeof size ? size : 0;
}

std::uint64_t last_report(int from, std::uint64_t first) {
  std::uint64_t last = first, each = 0;
  while (read(from, &each, sizeof each) == sizeof each) last = each;
  return last;
}

TEST(KillTest, EveryAcknowledgedEntrySurvives) {
  const test::Scratch scratch;
  const std::string path = scratch.path("r");
  const SystemClock clock;
  ASSERT_TRUE(Writer::create(path, {"origin/1", {}}, test::station(), clock).ok());
  std::mt19937 random(20260704);
  std::uniform_int_distribution<int> moment_us(0, 25'000);
  std::uint64_t entries = 1;
  int kills_behind_an_acknowledgement = 0;
  for (int kill_number = 0; kill_number < kKills; ++kill_number) {
    int ends[2];
    ASSERT_EQ(pipe(ends), 0);
    const pid_t child = fork();
    ASSERT_GE(child, 0);
    if (child == 0) append_until_killed(path, ends[1]);
    close(ends[1]);
    const std::uint64_t ready = first_report(ends[0]);
    ASSERT_GT(ready, 0U) << "the child could not go on with the record";
    usleep(static_cast<useconds_t>(moment_us(random)));
    ASSERT_EQ(kill(child, SIGKILL), 0);
    int status = 0;
    ASSERT_EQ(waitpid(child, &status, 0), child);
    ASSERT_TRUE(WIFSIGNALED(status)) << "the child ended by itself: " << WEXITSTATUS(status);
    const std::uint64_t acknowledged = last_report(ends[0], ready);
    close(ends[0]);
    const Report report = *verify_file(path);
    ASSERT_GE(report.entries, acknowledged) << report.why;
    if (acknowledged > ready) ++kills_behind_an_acknowledgement;
    ASSERT_GE(report.entries, entries);
    entries = report.entries;
  }
  const auto writer = Writer::resume(path, test::station(), clock);
  ASSERT_TRUE(writer.ok()) << writer.error().sentence();
  const Report report = *verify_file(path);
  EXPECT_TRUE(report.holds) << report.why;
  // A kill before the first acknowledgement of its child shows little; how many are depends on how
  // quick the medium is.
  EXPECT_GT(kills_behind_an_acknowledgement, 0);
}

}  // namespace
}  // namespace walkdown::record
