// SPDX-License-Identifier: Apache-2.0
// The head of a running day, stamped by the stock openssl command, and back in the record.
#include <gmock/gmock.h>

#include "checklist/desk/tell.h"
#include "checklist/desk/witness.h"
#include "checklist/record/timestamp.h"
#include "checklist/record/verify.h"
#include "tests/desk/evening.h"
#include "tests/record/authority.h"

namespace walkdown::desk {
namespace {

using record::Bytes;
using test::Evening;
using test::fine;
using test::refusal;
using testing::HasSubstr;

record::test::Authority& authority() {
  static record::test::Authority one;
  return one;
}

struct Asked {
  std::string note;
  Bytes request;
  Bytes answer;
};

Asked ask(const Evening& evening) {
  Asked asked{*head_note(evening.path), {}, {}};
  asked.request = *record::time_stamp_request(asked.note, 0x1234567812345678);
  asked.answer = authority().answer(asked.request);
  return asked;
}

TEST(TimeStamped, TheAnswerBecomesAnEntryThatVerifyChecks) {
  Evening evening;
  evening.enrol_all();
  const Asked asked = ask(evening);
  const std::uint64_t stood = evening.desk->head().size;
  fine(note(*evening.desk, "the answer takes its time"));
  const auto n = fine(add_time_stamp(*evening.desk, asked.note, asked.request, asked.answer));
  EXPECT_THAT(evening.desk->told(1).back().say, HasSubstr("CN=Time-stamps,O=A test signed that"));
  evening.desk.reset();

  record::VerifyOptions options;
  auto report = record::verify_file(evening.path, options);
  ASSERT_TRUE(report->holds) << report->why;
  ASSERT_EQ(report->stamps.size(), 1U);
  EXPECT_EQ(report->stamps[0].n, n);
  EXPECT_EQ(report->stamps[0].entries, stood);
  EXPECT_FALSE(report->stamps[0].vouched);
  EXPECT_THAT(report->remarks, testing::Contains(HasSubstr("it shows nothing yet")));
  // The record's clock obeys the test, the authority's does not.
  EXPECT_THAT(report->remarks, testing::Contains(HasSubstr("s apart at least")));

  options.authorities = authority().certificate();
  EXPECT_TRUE(record::verify_file(evening.path, options)->stamps[0].vouched);
  record::test::Authority other;
  options.authorities = other.certificate();
  report = record::verify_file(evening.path, options);
  EXPECT_TRUE(report->holds);
  EXPECT_FALSE(report->stamps[0].vouched);
  EXPECT_THAT(report->remarks, testing::Contains(HasSubstr("so it shows nothing")));
}

TEST(TimeStamped, WhatDoesNotFitIsRefusedBeforeItIsWritten) {
  Evening evening;
  Evening elsewhere;
  evening.enrol_all();
  const Asked ours = ask(evening), theirs = ask(elsewhere);
  Desk& desk = *evening.desk;
  const std::uint64_t before = desk.head().size;
  EXPECT_THAT(refusal(add_time_stamp(desk, theirs.note, theirs.request, theirs.answer)),
              HasSubstr("another record"));
  EXPECT_THAT(refusal(add_time_stamp(desk, ours.note, theirs.request, theirs.answer)),
              HasSubstr("another head"));
  EXPECT_THAT(refusal(add_time_stamp(desk, ours.note, ours.request, theirs.answer)),
              HasSubstr("something else"));
  EXPECT_THAT(
      refusal(add_time_stamp(desk, ours.note, ours.request, authority().decline(ours.request))),
      HasSubstr("gave no time-stamp"));
  EXPECT_THAT(refusal(add_time_stamp(desk, ours.note, ours.answer, ours.request)),
              HasSubstr("no answer"));
  EXPECT_EQ(desk.head().size, before);
  fine(add_time_stamp(desk, ours.note, ours.request, ours.answer));
  EXPECT_THAT(refusal(add_time_stamp(desk, ours.note, ours.request, ours.answer)),
              HasSubstr("already"));
}

TEST(TimeStamped, ItStandsThroughARestart) {
  Evening evening;
  evening.enrol_all();
  const Asked asked = ask(evening);
  evening.desk.reset();
  evening.reopen();
  fine(add_time_stamp(*evening.desk, asked.note, asked.request, asked.answer));
  evening.desk.reset();
  evening.reopen();
  evening.desk.reset();
  EXPECT_TRUE(record::verify_file(evening.path)->holds);
}

}  // namespace
}  // namespace walkdown::desk
