// SPDX-License-Identifier: Apache-2.0
#include "checklist/weather/thunder.h"

#include <gtest/gtest.h>

namespace walkdown::weather {
namespace {

// 331.3 sqrt(1 + T/273.15), computed independently.
TEST(Thunder, SpeedOfSound) {
  EXPECT_NEAR(static_cast<double>(speed_of_sound_mm_per_s(-10'000)), 325'180, 5);
  EXPECT_EQ(speed_of_sound_mm_per_s(0), 331'300);
  EXPECT_NEAR(static_cast<double>(speed_of_sound_mm_per_s(15'000)), 340'280, 5);
  EXPECT_NEAR(static_cast<double>(speed_of_sound_mm_per_s(20'000)), 343'210, 5);
  EXPECT_NEAR(static_cast<double>(speed_of_sound_mm_per_s(30'000)), 349'020, 5);
  EXPECT_EQ(speed_of_sound_mm_per_s(-400'000), speed_of_sound_mm_per_s(-60'000));
}

// 30 s at 20 degC is 10.296 km; 2.914 s a kilometre (computed independently).
TEST(Thunder, FlashToBang) {
  EXPECT_EQ(flash_distance_m(30'000, 20'000), 10'296);
  EXPECT_EQ(flash_distance_m(2'914, 20'000), 1'000);
  EXPECT_EQ(flash_distance_m(-1, 20'000), 0);
}

constexpr std::int64_t clock(std::int64_t h, std::int64_t m, std::int64_t s) {
  return ((h * 60 + m) * 60 + s) * 1000;
}

TEST(Thunder, TheWaitRestartsWithEachThunder) {
  ThunderWait wait;
  EXPECT_FALSE(wait.clear_at_ms());
  wait.hear(clock(21, 4, 10), 12'000);
  EXPECT_EQ(wait.clear_at_ms(), clock(21, 34, 10));
  wait.hear(clock(21, 20, 0), 25'000);
  EXPECT_EQ(wait.clear_at_ms(), clock(21, 50, 0));
  EXPECT_TRUE(wait.waiting(clock(21, 49, 59)));
  EXPECT_FALSE(wait.waiting(clock(21, 50, 0)));
}

TEST(Thunder, FarThunderLengthensAWaitButStartsNone) {
  ThunderWait wait;
  wait.hear(clock(20, 0, 0), 30'001);
  EXPECT_FALSE(wait.clear_at_ms());
  wait.hear(clock(20, 5, 0), 30'000);
  wait.hear(clock(20, 20, 0), 45'000);
  EXPECT_EQ(wait.clear_at_ms(), clock(20, 50, 0));
}

TEST(Thunder, ATimeNotTakenCountsAsNear) {
  ThunderWait wait;
  wait.hear(clock(20, 0, 0), std::nullopt);
  EXPECT_TRUE(wait.waiting(clock(20, 1, 0)));
}

TEST(Thunder, AnEarlierThunderToldLateNeverShortensTheWait) {
  ThunderWait wait;
  wait.hear(clock(20, 10, 0), 5'000);
  wait.hear(clock(20, 0, 0), 5'000);
  EXPECT_EQ(wait.clear_at_ms(), clock(20, 40, 0));
}

}  // namespace
}  // namespace walkdown::weather
