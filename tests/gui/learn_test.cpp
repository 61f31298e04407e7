// SPDX-License-Identifier: Apache-2.0
#include "gui/tester/learn.h"

#include <gtest/gtest.h>

#include "gui/tester/learn_dialog.h"

namespace walkdown::gui {
namespace {

Marking mark(std::string_view line, std::string_view part, Part what) {
  return {what, line.find(part), part.size()};
}

const std::string kLine = "#12 unit=07 row=2 ch=05 R= 2.31 ohm;";

std::vector<Marking> marked() {
  return {mark(kLine, "07", Part::module), Marking{Part::rail, kLine.find("row=") + 4, 1},
          mark(kLine, "05", Part::pin),    mark(kLine, "2.31", Part::value),
          mark(kLine, "ohm", Part::unit),  mark(kLine, "12", Part::seq)};
}

TEST(LearnFormat, APatternReadsOtherLinesOfTheSameForm) {
  const auto pattern = pattern_of(kLine, marked());
  ASSERT_TRUE(pattern) << pattern.error().sentence();
  const auto tried = try_pattern(tester::default_profile(), *pattern,
                                 {kLine, "#13 unit=11 row=1 ch=16 R=  0.4 ohm;",
                                  "#14 unit=11 row=1 ch=17 R= OL ohm;", "#15 unit=11 row=1"});
  ASSERT_TRUE(tried);
  EXPECT_EQ((*tried)[0].what, "M07/R2/P05 2.31 ohm");
  EXPECT_EQ((*tried)[1].what, "M11/R1/P16 0.4 ohm");
  EXPECT_EQ((*tried)[2].what, "M11/R1/P17 above range");
  EXPECT_FALSE((*tried)[3].taken);
}

TEST(LearnFormat, ALineIsTextAndNeverAPattern) {
  const std::string line = "(a.b*c[ 1.5";
  const auto pattern = pattern_of(line, {mark(line, "1.5", Part::value)});
  ASSERT_TRUE(pattern);
  const auto tried =
      try_pattern(profile_for(tester::default_profile(), line), *pattern, {line, "(aXbbc[ 1.5"});
  ASSERT_TRUE(tried);
  EXPECT_TRUE((*tried)[0].taken);
  EXPECT_FALSE((*tried)[1].taken);
}

TEST(LearnFormat, AChecksumIsVerifiedAndNotPartOfThePattern) {
  const std::string line = "M07,R2,P05,2.31,ohm,1042*20";  // from templates/testers
  const auto pattern = pattern_of(line, {mark(line, "2.31", Part::value)});
  ASSERT_TRUE(pattern);
  const auto tried = try_pattern(profile_for(tester::default_profile(), line), *pattern,
                                 {line, "M07,R2,P05,2.31,ohm,1042*21"});
  ASSERT_TRUE(tried);
  EXPECT_TRUE((*tried)[0].taken) << (*tried)[0].what;
  EXPECT_FALSE((*tried)[1].taken);
}

TEST(LearnFormat, RefusesWhatCannotBeAPattern) {
  EXPECT_FALSE(pattern_of(kLine, {mark(kLine, "07", Part::module)}));
  auto twice = marked();
  twice.push_back(mark(kLine, "row", Part::value));
  EXPECT_FALSE(pattern_of(kLine, twice));
  EXPECT_FALSE(pattern_of(kLine, {{Part::value, 3, 500}}));
  EXPECT_FALSE(pattern_of(kLine, {{Part::value, 3, 5}, {Part::pin, 6, 5}}));
}

TEST(LearnFormat, TheSavedProfileIsReadBackAsItWas) {
  const auto pattern = pattern_of(kLine, marked());
  ASSERT_TRUE(pattern);
  const tester::Profile base = tester::default_profile();
  const auto again = tester::read_profile(profile_text(base, *pattern), "learned.toml");
  ASSERT_TRUE(again) << again.error().sentence();
  EXPECT_EQ(again->line, *pattern);
  EXPECT_EQ(again->over, base.over);
  EXPECT_EQ(again->port.baud, base.port.baud);
  EXPECT_EQ(again->check, base.check);
}

TEST(LearnFormat, TheDialogTriesBeforeItSaves) {
  LearnDialog dialog(tester::default_profile(), {"CH 3: 2.31", "CH 4: OL"}, nullptr);
  EXPECT_FALSE(dialog.all_taken());
  dialog.sample().choose(3, 1);
  dialog.sample().mark(Part::pin);
  dialog.sample().choose(6, 4);
  dialog.sample().mark(Part::value);
  EXPECT_TRUE(dialog.all_taken()) << dialog.pattern();
  dialog.set_samples("CH 3: 2.31\nsomething else");
  EXPECT_FALSE(dialog.all_taken());
}

}  // namespace
}  // namespace walkdown::gui
