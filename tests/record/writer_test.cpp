// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/writer.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>

#include <string>

#include "tests/record/scratch.h"

namespace walkdown::record {
namespace {

using test::ManualClock;
using test::Scratch;
using testing::HasSubstr;

struct WriterTest : testing::Test {
  Scratch scratch;
  ManualClock clock;
  std::string path = scratch.path("show.walkdown");

  Writer create(WriterOptions options = {}) {
    auto writer = Writer::create(path, {"origin/1", {{"plan", "p"}}}, test::station(), clock,
                                 std::move(options));
    EXPECT_TRUE(writer.ok()) << writer.error().sentence();
    return std::move(*writer);
  }
  Result<Writer> resume(WriterOptions options = {}) {
    return Writer::resume(path, test::station(), clock, std::move(options));
  }
  Report verified() {
    const auto report = verify_file(path);
    EXPECT_TRUE(report.ok());
    return *report;
  }
};

TEST_F(WriterTest, NewRecordHoldsAtOnce) {
  const Writer writer = create();
  const Report report = verified();
  EXPECT_TRUE(report.holds) << report.why;
  EXPECT_EQ(report.entries, 1U);
  EXPECT_EQ(report.mark, mark(writer.head().root));
  EXPECT_FALSE(report.closed);
}

TEST_F(WriterTest, AcknowledgedIsOnTheFile) {
  Writer writer = create();
  const auto ticket = writer.append({test::some_reading(1), test::some_reading(2)});
  ASSERT_TRUE(ticket.ok());
  EXPECT_EQ(ticket->first, 1U);
  EXPECT_EQ(ticket->end, 3U);
  ASSERT_TRUE(writer.wait(*ticket).ok());
  EXPECT_EQ(verified().entries, 3U);
  EXPECT_EQ(writer.head().size, 3U);
}

TEST_F(WriterTest, DraftsOfOneAppendShareACheckpoint) {
  Writer writer = create();
  ASSERT_TRUE(writer.append_and_wait({test::some_reading(1), test::some_reading(2)}).ok());
  const std::string text = test::read_file(path);
  EXPECT_EQ(std::count(text.begin(), text.end(), '\n'), 5);
}

TEST_F(WriterTest, DestructorCommitsWhatIsQueued) {
  {
    Writer writer = create();
    for (int i = 1; i < 20; ++i) ASSERT_TRUE(writer.append(test::some_reading(i)).ok());
  }
  EXPECT_EQ(verified().entries, 20U);
}

// All or none of an append, and nothing of those queued before it is lost.
TEST_F(WriterTest, RefusedDraftTakesOnlyItsOwnAppendWithIt) {
  Writer writer = create();
  const Draft too_long{"note", {{"text", std::string(kLongestLine, 'x')}}};
  ASSERT_TRUE(writer.append(test::some_reading(1)).ok());
  EXPECT_FALSE(writer.append({test::some_reading(2), too_long}).ok());
  const auto ticket = writer.append(test::some_reading(3));
  ASSERT_TRUE(ticket.ok());
  EXPECT_EQ(ticket->first, 2U);
  ASSERT_TRUE(writer.flush().ok());
  EXPECT_EQ(verified().entries, 3U);
  EXPECT_THAT(test::read_file(path), testing::Not(HasSubstr("M01/R1/P02")));
}

TEST_F(WriterTest, RoomTakenAheadIsGivenBack) {
  {
    Writer writer = create();
    ASSERT_TRUE(writer.append_and_wait(test::some_reading(1)).ok());
  }
  struct stat found {};
  ASSERT_EQ(::stat(path.c_str(), &found), 0);
  EXPECT_LT(found.st_blocks * 512, 65536);
  EXPECT_EQ(verified().entries, 2U);
}

TEST_F(WriterTest, CloseIsTheEnd) {
  Writer writer = create();
  ASSERT_TRUE(writer.close().ok());
  EXPECT_FALSE(writer.append(test::some_reading(1)).ok());
  EXPECT_TRUE(verified().closed);
}

TEST_F(WriterTest, ClosedRecordIsNotResumed) {
  ASSERT_TRUE(create().close().ok());
  const auto again = resume();
  ASSERT_FALSE(again.ok());
  EXPECT_EQ(again.error().code, Code::refused);
  EXPECT_THAT(again.error().sentence(), HasSubstr("closed"));
}

TEST_F(WriterTest, ResumeGoesOn) {
  { Writer writer = create(); }
  clock.pass(60'000);
  {
    auto writer = resume();
    ASSERT_TRUE(writer.ok()) << writer.error().sentence();
    ASSERT_TRUE(writer->append_and_wait(test::some_reading(1)).ok());
  }
  const Report report = verified();
  EXPECT_TRUE(report.holds) << report.why;
  EXPECT_EQ(report.entries, 3U);
  EXPECT_THAT(test::read_file(path), HasSubstr(R"("kind":"resumed","body":{"clock":"same")"));
}

TEST_F(WriterTest, SecondWriterIsToldSo) {
  const Writer writer = create();
  const auto second = resume();
  ASSERT_FALSE(second.ok());
  EXPECT_EQ(second.error().code, Code::busy);
  EXPECT_THAT(second.error().sentence(), HasSubstr("another program is writing"));
}

TEST_F(WriterTest, NothingIsOverwritten) {
  { Writer writer = create(); }
  const auto again = Writer::create(path, {}, test::station(), clock);
  ASSERT_FALSE(again.ok());
  EXPECT_EQ(again.error().code, Code::refused);
}

TEST_F(WriterTest, OtherStationIsRefusedUnlessEnrolled) {
  {
    Writer writer = create();
    const auto other = Writer::resume(path, test::lead(), clock);
    ASSERT_FALSE(other.ok());
  }
  EXPECT_EQ(Writer::resume(path, test::lead(), clock).error().code, Code::refused);
  {
    auto writer = resume();
    ASSERT_TRUE(writer.ok());
    const Person second{test::lead().verify_key(), "second desk", "station"};
    ASSERT_TRUE(writer->append_and_wait(test::enrol(second)).ok());
  }
  const auto enrolled = Writer::resume(path, test::lead(), clock);
  EXPECT_TRUE(enrolled.ok()) << enrolled.error().sentence();
  EXPECT_TRUE(verified().holds) << verified().why;
}

TEST_F(WriterTest, SteppedClockIsTold) {
  Writer writer = create();
  clock.at -= 3'600'000;
  ASSERT_TRUE(writer.append_and_wait(test::some_reading(1)).ok());
  clock.at += 7'200'000;
  ASSERT_TRUE(writer.append_and_wait(test::some_reading(2)).ok());
  const Report report = verified();
  EXPECT_TRUE(report.holds) << report.why;
  EXPECT_EQ(report.entries, 5U);
  EXPECT_THAT(test::read_file(path), HasSubstr(R"("clock-step","body":{"by_ms":-3600000})"));
}

TEST_F(WriterTest, RebootWithTheClockSetBackIsTold) {
  { Writer writer = create(); }
  clock.up = 5;
  clock.at -= 86'400'000;
  { ASSERT_TRUE(resume().ok()); }
  const Report report = verified();
  EXPECT_TRUE(report.holds) << report.why;
  EXPECT_THAT(test::read_file(path), HasSubstr(R"({"back_ms":86400000,"clock":"new")"));
}

TEST_F(WriterTest, FloatingPointIsRefusedAndNothingQueued) {
  Writer writer = create();
  const auto ticket = writer.append({"reading", {{"ohm", 2.31}}});
  ASSERT_FALSE(ticket.ok());
  EXPECT_THAT(ticket.error().sentence(), HasSubstr("floating-point"));
  ASSERT_TRUE(writer.append_and_wait(test::some_reading(1)).ok());
  EXPECT_EQ(verified().entries, 2U);
}

}  // namespace
}  // namespace walkdown::record
