// SPDX-License-Identifier: Apache-2.0
#include "checklist/weather/beaufort.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

namespace walkdown::weather {
namespace {

struct Row {
  std::int64_t low_mm_per_s;
  std::int64_t high_mm_per_s;
};

// WMO-No. 306, section E, columns in m/s.
constexpr std::array<Row, 12> kTable = {{{0, 200},
                                         {300, 1500},
                                         {1600, 3300},
                                         {3400, 5400},
                                         {5500, 7900},
                                         {8000, 10700},
                                         {10800, 13800},
                                         {13900, 17100},
                                         {17200, 20700},
                                         {20800, 24400},
                                         {24500, 28400},
                                         {28500, 32600}}};

TEST(Beaufort, EveryBoundOfTheTable) {
  for (int force = 0; force < 12; ++force) {
    const Row& row = kTable.at(static_cast<std::size_t>(force));
    EXPECT_EQ(beaufort(row.low_mm_per_s), force);
    EXPECT_EQ(beaufort(row.high_mm_per_s), force);
    EXPECT_EQ(lowest_mm_per_s(force), row.low_mm_per_s);
  }
  EXPECT_EQ(beaufort(32'700), 12);
  EXPECT_EQ(beaufort(90'000), 12);
}

TEST(Beaufort, BetweenTwoRowsTheWindIsRoundedToATenth) {
  EXPECT_EQ(beaufort(249), 0);
  EXPECT_EQ(beaufort(250), 1);
  EXPECT_EQ(beaufort(7'949), 4);
  EXPECT_EQ(beaufort(7'950), 5);
}

TEST(Beaufort, NegativeIsCalm) { EXPECT_EQ(beaufort(-5), 0); }

// v = 0.836 B^1.5 m/s at B - 0.5 gives each lower bound to within 0.1 m/s (computed independently).
TEST(Beaufort, LowerBoundsFollowTheEmpiricalFormula) {
  for (int force = 1; force <= 12; ++force) {
    const double formula = 836 * std::pow(force - 0.5, 1.5);
    EXPECT_NEAR(static_cast<double>(lowest_mm_per_s(force)), formula, 110) << force;
  }
}

}  // namespace
}  // namespace walkdown::weather
