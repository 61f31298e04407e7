// SPDX-License-Identifier: Apache-2.0
#include "reader/match/coverage_text.h"

#include <gmock/gmock.h>

namespace walkdown {
namespace {

using testing::HasSubstr;
using testing::Not;

TEST(CoverageText, SaysWhatWouldShowAndWhatNoTestCan) {
  match::Coverage coverage;
  coverage.kinds.push_back(
      {match::Kind::swapped, "two pins of a module swapped", 1128, 688, 135, 1128});
  coverage.kinds.push_back(
      {match::Kind::reversed, "a rail plugged the other way round", 0, 0, 0, 0});
  const auto lines = match::coverage_lines(coverage, {{{1, 1, 1}, {1, 1, 2}}});
  ASSERT_EQ(lines.size(), 2U);
  EXPECT_THAT(lines[0], HasSubstr("1,128"));  // 60.99 % and 11.97 %
  EXPECT_THAT(lines[0], HasSubstr("60 %"));
  EXPECT_THAT(lines[0], HasSubstr("12 % no test can show"));
  EXPECT_THAT(lines[1], HasSubstr("1 group of pins, 2 pins"));
}

TEST(CoverageText, NeverRoundsToAllOrNothing) {
  match::Coverage coverage;
  coverage.kinds.push_back({match::Kind::swapped, "x", 1000, 999, 1, 1000});
  const std::string line = match::coverage_lines(coverage, {})[0];
  EXPECT_THAT(line, HasSubstr("over 99 %"));
  EXPECT_THAT(line, HasSubstr("under 1 %"));
  EXPECT_THAT(match::fits_only(coverage), HasSubstr("over 99 %"));
}

// 1,999 of 2,000 is 99.95 %: rounded it would be all of them. So would a sample of which all show.
TEST(CoverageText, OneThatDoesNotShowIsNoHundredPercent) {
  match::Coverage coverage;
  coverage.kinds.push_back({match::Kind::swapped, "x", 2000, 1999, 0, 2000});
  EXPECT_THAT(match::coverage_lines(coverage, {})[0], Not(HasSubstr("100 %")));
  EXPECT_THAT(match::fits_only(coverage), Not(HasSubstr("100 %")));
  coverage.kinds[0] = {match::Kind::swapped, "x", 2000, 2000, 0, 500};
  EXPECT_THAT(match::coverage_lines(coverage, {})[0], HasSubstr("over 99 %"));
  coverage.kinds[0] = {match::Kind::swapped, "x", 2000, 2000, 0, 2000};
  EXPECT_THAT(match::coverage_lines(coverage, {})[0], HasSubstr("100 %"));
  coverage.kinds[0] = {match::Kind::swapped, "x", 1000, 879, 0, 1000};
  EXPECT_THAT(match::coverage_lines(coverage, {})[0], HasSubstr("87 %"));
}

TEST(CoverageText, PinsByRuns) {
  EXPECT_EQ(match::runs({{1, 1, 1}, {1, 1, 2}, {1, 1, 3}, {1, 2, 3}}),
            "M01/R1/P01 to P03, M01/R2/P03");
}

}  // namespace
}  // namespace walkdown
