// SPDX-License-Identifier: Apache-2.0
#include "reader/tester/walk_mode.h"

#include <gtest/gtest.h>

#include <optional>
#include <random>

namespace walkdown::tester {
namespace {

BareValue ohm(double value) {
  return {false, static_cast<std::int64_t>(value * 1e6 + (value < 0 ? -0.5 : 0.5)), {}};
}
const BareValue kOver{true, 0, {}};

class WalkTest : public ::testing::Test {
 protected:
  // Feeds the same value until it is taken, at most n times.
  std::optional<Reading> hold(double value, int n = 20) {
    for (int i = 0; i < n; ++i) {
      if (auto reading = walk.see(ohm(value))) return reading;
    }
    return std::nullopt;
  }
  Walk walk{{{1, 1, 1}, {1, 1, 2}, {1, 1, 3}}, Model{}};
};

TEST_F(WalkTest, TakesASteadyValueForTheCurrentPin) {
  EXPECT_EQ(walk.current(), (plan::PinId{1, 1, 1}));
  const auto reading = hold(2.31);
  ASSERT_TRUE(reading.has_value());
  EXPECT_EQ(reading->pin, (plan::PinId{1, 1, 1}));
  EXPECT_EQ(reading->micro_ohm, 2'310'000);
  EXPECT_EQ(walk.current(), (plan::PinId{1, 1, 2}));
}

TEST_F(WalkTest, NeedsFiveValues) {
  for (int i = 0; i < 4; ++i) EXPECT_FALSE(walk.see(ohm(2.31)).has_value());
  EXPECT_TRUE(walk.see(ohm(2.31)).has_value());
}

TEST_F(WalkTest, NeverTakesOnePinsValueForTheNext) {
  ASSERT_TRUE(hold(2.31));
  EXPECT_TRUE(walk.waits_for_lift());
  EXPECT_FALSE(hold(2.31, 1000).has_value());
  walk.see(kOver);
  EXPECT_FALSE(walk.waits_for_lift());
  EXPECT_TRUE(hold(2.31).has_value());
}

TEST_F(WalkTest, SkippingWithTheProbeOnAPinWaitsForTheLiftToo) {
  walk.see(ohm(2.31));
  walk.skip();
  EXPECT_FALSE(hold(2.31).has_value());
  walk.see(kOver);
  EXPECT_EQ(hold(2.31)->pin, (plan::PinId{1, 1, 2}));
}

TEST_F(WalkTest, WaitsWhileTheValueMoves) {
  for (int i = 0; i < 50; ++i) EXPECT_FALSE(walk.see(ohm(2.0 + 0.05 * i)).has_value());
  EXPECT_TRUE(hold(4.6).has_value());
}

TEST_F(WalkTest, TakesTheMedianOfNoisyValues) {
  std::optional<Reading> reading;
  for (const double value : {2.31, 2.30, 2.32, 2.33, 2.31}) reading = walk.see(ohm(value));
  ASSERT_TRUE(reading.has_value());
  EXPECT_EQ(reading->micro_ohm, 2'310'000);
}

TEST_F(WalkTest, SettlesWithinTheStatedNoise) {
  // Of 1000 sets of five values with the stated noise no more than a handful may be refused: the
  // spread of five normal values exceeds 5.5 deviations once in a thousand (range tables, from
  // memory), and the rule allows one digit more than six.
  std::mt19937 random(1);  // NOLINT(cert-msc51-cpp): the same every time
  std::normal_distribution<double> noise(0, Model{}.noise());
  int refused = 0;
  for (int round = 0; round < 1000; ++round) {
    Walk one({{1, 1, 1}}, Model{});
    bool taken = false;
    for (int i = 0; i < 5; ++i) taken = one.see(ohm(2.31 + noise(random))).has_value();
    refused += taken ? 0 : 1;
  }
  EXPECT_LE(refused, 5);
}

TEST_F(WalkTest, AnOpenPinIsTakenOnlyWhenThePersonSaysSo) {
  EXPECT_FALSE(walk.take_open().has_value());  // the meter has said nothing
  for (int i = 0; i < 100; ++i) EXPECT_FALSE(walk.see(kOver).has_value());
  const auto reading = walk.take_open();
  ASSERT_TRUE(reading.has_value());
  EXPECT_TRUE(reading->over);
  EXPECT_EQ(reading->pin, (plan::PinId{1, 1, 1}));
  EXPECT_FALSE(walk.take_open().has_value());  // once a press
  walk.see(kOver);
  EXPECT_EQ(walk.take_open()->pin, (plan::PinId{1, 1, 2}));
}

TEST_F(WalkTest, GoesBackAndEnds) {
  walk.back();
  EXPECT_EQ(walk.done(), 0U);
  hold(1.0);
  walk.see(kOver);
  walk.back();
  EXPECT_EQ(hold(2.0)->pin, (plan::PinId{1, 1, 1}));
  walk.skip();
  walk.skip();
  walk.skip();
  EXPECT_FALSE(walk.current().has_value());
  EXPECT_EQ(walk.done(), walk.of());
  walk.see(kOver);
  EXPECT_FALSE(hold(2.0).has_value());
  EXPECT_FALSE(walk.take_open().has_value());
}

TEST(WalkOfNothing, IsDone) {
  Walk walk({}, Model{});
  EXPECT_FALSE(walk.current().has_value());
  walk.back();
  walk.skip();
  EXPECT_FALSE(walk.see({false, 1, {}}).has_value());
}

}  // namespace
}  // namespace walkdown::tester
