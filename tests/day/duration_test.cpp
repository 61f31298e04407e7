// SPDX-License-Identifier: Apache-2.0
#include "checklist/day/duration.h"

#include <gtest/gtest.h>

namespace walkdown::day {
namespace {

TEST(Duration, ReadsHoursMinutesSeconds) {
  EXPECT_EQ(parse_duration("90s"), 90'000);
  EXPECT_EQ(parse_duration("15m"), 900'000);
  EXPECT_EQ(parse_duration("1h30m"), 5'400'000);
  EXPECT_EQ(parse_duration("-2h", true), -7'200'000);
  EXPECT_EQ(parse_duration("48h"), 172'800'000);
}

TEST(Duration, RefusesEverythingElse) {
  for (const char* bad : {"", "15", "m", "-2h", "15 m", "15min", "30m1h", "1h1h", "49h", "1.5h",
                          "99999999999h", "--1h", "4294967295h"}) {
    EXPECT_FALSE(parse_duration(bad)) << bad;
  }
}

TEST(Duration, Says) {
  EXPECT_EQ(say_duration(45'000), "45 s");
  EXPECT_EQ(say_duration(240'000), "4 min");
  EXPECT_EQ(say_duration(-240'000), "4 min");
  EXPECT_EQ(say_duration(7'200'000), "2 h");
  EXPECT_EQ(say_duration(5'400'000), "1 h 30 min");
}

TEST(Duration, ClockIsUtcUnlessShifted) {
  constexpr std::int64_t kMoment = 1'783'200'660'000;  // 2026-07-04T21:31:00Z
  EXPECT_EQ(say_clock(kMoment), "21:31");
  EXPECT_EQ(say_clock(kMoment, 180), "00:31");
  EXPECT_EQ(say_clock(0, -30), "23:30");
}

}  // namespace
}  // namespace walkdown::day
