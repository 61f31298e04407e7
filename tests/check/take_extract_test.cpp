// SPDX-License-Identifier: Apache-2.0
#include "checklist/check/take_extract.h"

#include <gmock/gmock.h>

#include "checklist/record/extract_check.h"
#include "tests/check/whole_day.h"
#include "tests/record/readable.h"
#include "tests/record/sample.h"

namespace walkdown::check {
namespace {

using record::test::readable;
using ::testing::HasSubstr;
using ::testing::Not;

class TakeExtract : public ::testing::Test {
 protected:
  TakeExtract() { record::test::write_file(path, test::the_day()); }

  Result<Extract> take(const char* where, std::vector<std::string> withhold = {},
                       bool everybody = false) {
    auto choice = Choice::parse(where);
    EXPECT_TRUE(choice);
    return take_extract(path, {{*choice}, std::move(withhold), everybody}, {});
  }

  record::test::Scratch scratch;
  std::string path = scratch.path("day.record");
};

TEST_F(TakeExtract, EveryEntryOfTheRecordIsProved) {
  const auto all = take("n=0..");
  ASSERT_TRUE(all) << all.error().sentence();
  const auto report = record::verify_extract_bytes(all->text);
  EXPECT_TRUE(report.holds) << report.why;
  EXPECT_EQ(report.entries, report.record_entries);
  EXPECT_EQ(report.unchecked_sign_offs, 0U);
  EXPECT_EQ(report.mark, all->mark);
}

TEST_F(TakeExtract, AWithheldNameIsNowhereAndTheRestIsProved) {
  const auto all = take("n=1..");
  ASSERT_THAT(readable(all->text), HasSubstr("Jon"));
  const auto without = take("n=1..", {"Jon"});
  ASSERT_TRUE(without) << without.error().sentence();
  EXPECT_THAT(readable(without->text), Not(HasSubstr("Jon")));
  EXPECT_THAT(readable(without->text), HasSubstr("Edda")) << "others stay";
  EXPECT_GT(without->withheld, 0U);
  EXPECT_EQ(without->entries + without->withheld, all->entries);
  const auto report = record::verify_extract_bytes(without->text);
  EXPECT_TRUE(report.holds) << report.why;
  EXPECT_EQ(report.withheld, without->withheld);
}

TEST_F(TakeExtract, NoNameOfAnybodyIsLeft) {
  const auto none = take("n=1..", {}, true);
  ASSERT_TRUE(none) << none.error().sentence();
  for (const char* name : {"Mara", "Jon", "Edda"}) {
    EXPECT_THAT(readable(test::the_day()), HasSubstr(name)) << "or the test shows nothing";
    EXPECT_THAT(readable(none->text), Not(HasSubstr(name)));
  }
  EXPECT_THAT(none->text, HasSubstr("\"kind\":\"reading\"")) << "what names nobody stays";
  EXPECT_TRUE(record::verify_extract_bytes(none->text).holds);
}

TEST_F(TakeExtract, WhatCannotBeTakenIsSaid) {
  EXPECT_THAT(take("n=1..", {"Nobody"}).error().sentence(), HasSubstr("nobody of this name"));
  EXPECT_THAT(take("n=99999..").error().sentence(), HasSubstr("no entry"));
  std::string damaged = test::the_day();
  damaged[damaged.size() / 2] ^= 1;
  record::test::write_file(path, damaged);
  const auto refused = take("n=1..");
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().code, Code::forged);
}

}  // namespace
}  // namespace walkdown::check
