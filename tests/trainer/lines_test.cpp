// SPDX-License-Identifier: Apache-2.0
#include "reader/trainer/lines.h"

#include <gtest/gtest.h>

#include "reader/tester/line.h"

namespace walkdown::trainer {
namespace {

using tester::Reading;

TEST(Lines, AreTheDefaultForm) {
  EXPECT_EQ(line({{7, 2, 5}, false, 2'310'000, {}}), "M07,R2,P05,2.31,ohm");
  EXPECT_EQ(line({{7, 2, 5}, true, 0, {}}), "M07,R2,P05,OL,ohm");
  EXPECT_EQ(line({{123, 10, 5}, false, 0, {}}), "M123,R10,P05,0.00,ohm");
  EXPECT_EQ(line({{1, 1, 1}, false, -20'000, {}}), "M01,R1,P01,-0.02,ohm");
  EXPECT_EQ(line({{1, 1, 1}, false, 1'234'567, {}}), "M01,R1,P01,1.234567,ohm");
  EXPECT_EQ(line({{1, 1, 1}, false, 1'230'500, {}}), "M01,R1,P01,1.2305,ohm");
}

TEST(Lines, CarryACheckAndANumberOnDemand) {
  // 0B computed independently: python3, exclusive-or over the bytes before the '*'
  const Reading reading{{7, 2, 5}, false, 2'310'000, {}};
  EXPECT_EQ(line(reading, {false, 1042}), "M07,R2,P05,2.31,ohm,1042");
  EXPECT_EQ(line(reading, {true, {}}), "M07,R2,P05,2.31,ohm*0B");
}

TEST(Lines, AreReadBackByTheDefaultProfile) {
  const auto parser = tester::LineParser::make(tester::default_profile());
  ASSERT_TRUE(parser.ok());
  for (const std::int64_t micro : {0LL, 1LL, 10'000LL, 2'310'000LL, -20'000LL, 199'990'000LL}) {
    for (const bool check : {false, true}) {
      const tester::Parsed parsed = parser->parse(line({{7, 2, 5}, false, micro, {}}, {check, 99}));
      ASSERT_TRUE(std::holds_alternative<Reading>(parsed));
      EXPECT_EQ(std::get<Reading>(parsed).micro_ohm, micro);
      EXPECT_EQ(std::get<Reading>(parsed).seq, 99U);
    }
  }
}

}  // namespace
}  // namespace walkdown::trainer
