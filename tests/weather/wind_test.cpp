// SPDX-License-Identifier: Apache-2.0
#include "checklist/weather/wind.h"

#include <gtest/gtest.h>

#include <vector>

namespace walkdown::weather {
namespace {

std::vector<Sample> each_second(const std::vector<std::int64_t>& m_per_s, std::int64_t from = 0) {
  std::vector<Sample> samples;
  for (const std::int64_t value : m_per_s) {
    samples.push_back({from, value * 1000, std::nullopt});
    from += 1000;
  }
  return samples;
}

std::vector<Sample> steady(std::size_t seconds, std::int64_t m_per_s) {
  return each_second(std::vector<std::int64_t>(seconds, m_per_s));
}

// Worked by hand: 3 s means 5.333 6.667 9.000 10.667 9.667 7.333 5.000 4.667, mean 6.8.
TEST(Wind, GustIsTheHighestThreeSecondMeanNotTheHighestSample) {
  const auto samples = each_second({5, 5, 6, 9, 12, 11, 6, 5, 4, 5});
  EXPECT_EQ(gust_mm_per_s(samples), 10'667);
  const auto result = wind(samples, kTenMinutes_ms);
  ASSERT_TRUE(result);
  EXPECT_EQ(result->mean_mm_per_s, 6'800);
  EXPECT_EQ(result->gust_mm_per_s, 10'667);
  EXPECT_EQ(result->beaufort, 4);
}

TEST(Wind, GustFromQuarterSecondSamples) {
  std::vector<Sample> samples;
  for (int i = 0; i < 40; ++i) samples.push_back({i * 250, i >= 12 && i < 24 ? 15'000 : 3'000, {}});
  EXPECT_EQ(gust_mm_per_s(samples), 15'000);
  samples[20].mm_per_s = 3'000;  // one sample of twelve
  EXPECT_EQ(gust_mm_per_s(samples), 14'000);
}

TEST(Wind, BeforeAWindowIsFullTheHighestSampleStandsIn) {
  EXPECT_EQ(gust_mm_per_s(each_second({4, 9})), 9'000);
}

TEST(Wind, SparseSamplesAreNotSmoothedAway) {
  const std::vector<Sample> samples = {{0, 3'000, {}}, {10'000, 14'000, {}}, {20'000, 3'000, {}}};
  EXPECT_EQ(gust_mm_per_s(samples), 14'000);
}

TEST(Wind, OnlyThePeriodCounts) {
  auto samples = steady(600, 20);
  const auto calm = each_second(std::vector<std::int64_t>(120, 2), 600'000);
  samples.insert(samples.end(), calm.begin(), calm.end());
  const auto two = wind(samples, kTwoMinutes_ms);
  ASSERT_TRUE(two);
  EXPECT_EQ(two->mean_mm_per_s, 2'000);
  EXPECT_EQ(two->gust_mm_per_s, 2'000);
  EXPECT_EQ(two->period_ms, kTwoMinutes_ms);
  const auto ten = wind(samples, kTenMinutes_ms);
  ASSERT_TRUE(ten);
  EXPECT_EQ(ten->mean_mm_per_s, 16'400);  // 480 s of 20, 120 s of 2
}

TEST(Wind, AShortSeriesDoesNotPassForTenMinutes) {
  EXPECT_FALSE(wind(steady(599, 3), kTenMinutes_ms)->complete());
  EXPECT_TRUE(wind(steady(600, 3), kTenMinutes_ms)->complete());
}

TEST(Wind, AHoleIsNotCovered) {
  auto samples = steady(700, 3);
  samples.erase(samples.begin() + 400, samples.begin() + 420);
  const auto result = wind(samples, kTenMinutes_ms);
  ASSERT_TRUE(result);
  EXPECT_FALSE(result->complete());
  EXPECT_EQ(result->covered_ms, 280'000);
}

TEST(Wind, Trend) {
  std::vector<std::int64_t> rising(600, 3);
  std::fill(rising.begin() + 300, rising.end(), 6);
  EXPECT_EQ(wind(each_second(rising), kTenMinutes_ms)->trend, Trend::rising);
  const std::vector<std::int64_t> falling(rising.rbegin(), rising.rend());
  EXPECT_EQ(wind(each_second(falling), kTenMinutes_ms)->trend, Trend::falling);
  EXPECT_EQ(wind(steady(600, 5), kTenMinutes_ms)->trend, Trend::steady);
}

TEST(Wind, DirectionIsAMeanOfVectors) {
  const std::vector<Sample> north = {{0, 5'000, 3500}, {1000, 5'000, 100}};
  EXPECT_EQ(wind(north, kTwoMinutes_ms)->from_ddeg, 0);
  const std::vector<Sample> opposed = {{0, 5'000, 0}, {1000, 5'000, 1800}};
  EXPECT_FALSE(wind(opposed, kTwoMinutes_ms)->from_ddeg);
  const std::vector<Sample> partly = {{0, 5'000, 900}, {1000, 5'000, {}}};
  EXPECT_FALSE(wind(partly, kTwoMinutes_ms)->from_ddeg);
}

TEST(Wind, RefusesWhatIsNoSeries) {
  EXPECT_FALSE(wind({}, kTenMinutes_ms));
  EXPECT_FALSE(wind(steady(10, 3), 2'999));
  EXPECT_FALSE(wind(each_second({121}), kTenMinutes_ms));
  EXPECT_FALSE(wind(each_second({-1}), kTenMinutes_ms));
  const std::vector<Sample> back = {{1000, 1, {}}, {0, 1, {}}};
  EXPECT_FALSE(wind(back, kTenMinutes_ms));
}

}  // namespace
}  // namespace walkdown::weather
