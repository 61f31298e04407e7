// SPDX-License-Identifier: Apache-2.0
#include <gmock/gmock.h>

#include <regex>

#include "checklist/report/build.h"
#include "checklist/report/html.h"
#include "tests/check/big_record.h"
#include "tests/check/whole_day.h"
#include "tests/record/scratch.h"

namespace walkdown::report {
namespace {

using testing::HasSubstr;
using testing::Not;

Model model_of(const std::string& bytes) {
  const record::test::Scratch scratch;
  record::test::write_file(scratch.path("day.record"), bytes);
  auto model = build(scratch.path("day.record"));
  EXPECT_TRUE(model.ok()) << (model.ok() ? "" : model.error().sentence());
  return *model;
}

const Model& day() {
  static const Model model = model_of(check::test::the_day());
  return model;
}

TEST(Report, TellsTheReleaseAndItsGrounds) {
  ASSERT_EQ(day().releases.size(), 1U);
  const Release& release = day().releases.front();
  EXPECT_EQ(release.by, "Mara");
  EXPECT_EQ(release.second, "Jon");
  ASSERT_TRUE(release.second_n.has_value());
  EXPECT_EQ(release.grounds.size(), 5U);
  for (const ItemAt& item : release.grounds) {
    EXPECT_EQ(item.state.standing, day::Standing::holds) << item.id;
  }
  // The readings after the show brought it down.
  EXPECT_TRUE(release.fell_at_ms.has_value());
  EXPECT_THAT(release.fell_why, HasSubstr("a pin was read"));
}

TEST(Report, TellsTheFaultFromFoundToMended) {
  ASSERT_EQ(day().faults.size(), 1U);
  const Fault& fault = day().faults.front();
  EXPECT_EQ(fault.kind, "open");
  ASSERT_EQ(fault.rehooked.size(), 1U);
  EXPECT_EQ(fault.rehooked.front().by, "Edda");
  ASSERT_TRUE(fault.mended_n.has_value());
  ASSERT_EQ(fault.readings.size(), 1U);
  EXPECT_EQ(fault.readings[0].before, "over range");
  EXPECT_EQ(fault.readings[0].after, "10.17 ohm");
  EXPECT_EQ(fault.readings[0].verdict, "fits");
}

TEST(Report, FollowsTheKeyFromHandToHand) {
  ASSERT_EQ(day().keys.size(), 1U);
  std::vector<std::string> holders;
  for (const Held& held : day().keys.front().held) holders.push_back(held.holder);
  EXPECT_THAT(holders, testing::ElementsAre("box", "Mara", "Jon", "Mara"));
  // No gap: each begins where the one before ended.
  for (std::size_t i = 1; i < day().keys.front().held.size(); ++i) {
    EXPECT_EQ(day().keys.front().held[i].from_ms, day().keys.front().held[i - 1].to_ms);
  }
}

TEST(Report, ItemsHaveNoGapsInTime) {
  for (const ItemRow& row : day().items) {
    ASSERT_FALSE(row.spans.empty());
    for (std::size_t i = 1; i < row.spans.size(); ++i) {
      EXPECT_EQ(row.spans[i].from_ms, row.spans[i - 1].to_ms) << row.last.id;
    }
    EXPECT_EQ(row.spans.back().to_ms, day().last_at_ms);
  }
}

TEST(Report, IsOneFileWithoutScriptOrAnythingFromElsewhere) {
  const std::string page = html(day());
  EXPECT_THAT(page, HasSubstr("This record holds"));
  EXPECT_THAT(page, HasSubstr(day().check.mark));
  for (const char* not_there : {"<script", "http://", "https://", "url(http", "<link", "<img"}) {
    EXPECT_THAT(page, Not(HasSubstr(not_there)));
  }
  // It tells what was read and signed, and gives no clearance of its own.
  EXPECT_THAT(page, Not(testing::ContainsRegex("[^a-z]safe[^a-z]")));
}

TEST(Report, SaysFirstThatARecordDoesNotHold) {
  std::string bytes = check::test::the_day();
  const std::size_t at = bytes.find("the show began");
  bytes[at] = 'T';
  const std::string page = html(model_of(bytes));
  EXPECT_THAT(page, HasSubstr("This record does not hold"));
  EXPECT_THAT(page, HasSubstr("was changed after it was sealed"));
  EXPECT_THAT(page, Not(HasSubstr("This record holds")));
}

TEST(Report, TakesNoMarkupFromTheRecord) {
  Model model = day();
  model.notes.push_back({1, 0, "note", "<b onclick=\"x\">&"});
  EXPECT_THAT(html(model), HasSubstr("&lt;b onclick=&quot;x&quot;&gt;&amp;"));
}

TEST(Report, SaysWhichInstrumentAndWhetherItsCalibrationStood) {
  EXPECT_THAT(html(day()), HasSubstr("does not say which instrument"));
  Model model = day();
  const auto with_due = [&](const std::string& due) {
    model.prepared.show.put(
        {show::Role::tester, "t.toml",
         "[instrument]\ntype = 'meter <7>'\nserial = 'S1'\ncalibration_due = " + due + "\n"});
    return html(model);
  };
  EXPECT_THAT(with_due("2026-07-04"), HasSubstr("meter &lt;7&gt;, serial number S1"));
  EXPECT_THAT(with_due("2026-07-04"), Not(HasSubstr("had run out")));  // the day of the record
  EXPECT_THAT(with_due("2026-07-03"), HasSubstr("had run out"));
}

TEST(Report, TellsTheTimeStampAndHowToCheckIt) {
  ASSERT_EQ(day().check.stamps.size(), 1U);
  const std::string page = html(day());
  EXPECT_THAT(page, HasSubstr("CN=Time-stamps,O=A test signed that the first"));
  EXPECT_THAT(page, HasSubstr("openssl ts -verify -data head.note"));
  Model without = day();
  without.check.stamps.clear();
  EXPECT_THAT(html(without), Not(HasSubstr("openssl ts -verify")));
}

TEST(Report, NothingThatStandsIsToldByColourAlone) {
  const std::string page = html(day());
  EXPECT_THAT(page, HasSubstr("&#9632;</span>&nbsp;holds"));
  // Every colour on the page is a grey.
  static const std::regex kColour(
      "(?:fill|stroke|color|background|solid|double)[:= ]\"?#([0-9a-fA-F]{6}|[0-9a-fA-F]{3})\\b");
  std::size_t colours = 0;
  for (auto each = std::sregex_iterator(page.begin(), page.end(), kColour);
       each != std::sregex_iterator(); ++each, ++colours) {
    const std::string digits = (*each)[1];
    const std::size_t part = digits.size() / 3;
    EXPECT_EQ(digits.substr(0, part), digits.substr(part, part)) << digits;
    EXPECT_EQ(digits.substr(0, part), digits.substr(2 * part)) << digits;
  }
  EXPECT_GT(colours, 20U);
}

TEST(Report, OfLargeFieldStaysSmall) {
  const record::test::Scratch scratch;
  check::test::write_big_record(scratch.path("big"), 24'000, 24'000);
  const auto model = build(scratch.path("big"));
  ASSERT_TRUE(model.ok());
  EXPECT_TRUE(model->check.holds);
  EXPECT_LT(html(*model).size(), 5'000'000U);
}

}  // namespace
}  // namespace walkdown::report
