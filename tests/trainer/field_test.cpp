// SPDX-License-Identifier: Apache-2.0
#include "reader/trainer/field.h"

#include <gtest/gtest.h>

#include <cmath>
#include <set>

#include "tests/trainer/small_plan.h"

namespace walkdown::trainer {
namespace {

using plan::PinId;

class FieldTest : public ::testing::Test {
 protected:
  // The ohm read at a pin; -1 above range, -2 for no such pin.
  double ohm(PinId pin) {
    const auto reading = field.read(pin);
    if (!reading) return -2;
    return reading->over ? -1 : reading->ohm();
  }
  // Where the load is at home that hangs on the pin; {0,0,0} for none.
  PinId home(PinId pin) const {
    const Hung* hung = field.hangs_on(pin);
    return hung != nullptr ? hung->home.value_or(PinId{9, 9, 9}) : PinId{};
  }
  Field field{small_plan(), exact_tester(), 1};
};

TEST_F(FieldTest, ReadsEveryLoadWithinItsPlan) {
  // lead 2 x 5 m x 0.1 ohm/m = 1 ohm (+- 4 % for the wire's temperature), contact at most 0.01
  EXPECT_NEAR(ohm({1, 1, 1}), 2 + 1, 0.07);
  EXPECT_NEAR(ohm({1, 1, 4}), 8 + 1, 0.07);
  EXPECT_NEAR(ohm({1, 2, 1}), 3 * 10 + 1, 0.09);
  EXPECT_NEAR(ohm({1, 2, 2}), 12.0 / 2 + 1, 0.07);
}

TEST_F(FieldTest, AFreePinIsAboveRangeAndAMissingOneIsNothing) {
  EXPECT_EQ(ohm({1, 2, 3}), -1);
  EXPECT_EQ(ohm({1, 1, 5}), -2);
  EXPECT_EQ(ohm({1, 1, 0}), -2);
  EXPECT_EQ(ohm({3, 1, 1}), -2);
  EXPECT_EQ(field.pins().size(), 11U);
}

TEST_F(FieldTest, TheSameSeedGivesTheSameField) {
  Field same(small_plan(), tester::Model{}, 7);
  Field again(small_plan(), tester::Model{}, 7);
  Field other(small_plan(), tester::Model{}, 8);
  bool differs = false;
  for (const PinId pin : same.pins()) {
    const auto a = same.read(pin);
    const auto b = again.read(pin);
    EXPECT_EQ(a->micro_ohm, b->micro_ohm);
    differs = differs || a->micro_ohm != other.read(pin)->micro_ohm;
  }
  EXPECT_TRUE(differs);
}

TEST_F(FieldTest, ReadingsShowTheLastDigitAlone) {
  Field noisy(small_plan(), tester::Model{}, 3);
  std::set<std::int64_t> seen;
  for (int i = 0; i < 100; ++i) {
    const std::int64_t micro = noisy.read({1, 1, 1})->micro_ohm;
    EXPECT_EQ(micro % 10'000, 0);
    seen.insert(micro);
  }
  EXPECT_GT(seen.size(), 2U);
}

TEST_F(FieldTest, AboveItsRangeTheTesterSaysOver) {
  ASSERT_TRUE(field.set_fault({1, 1, 1}, FaultKind::poor_joint, 196));
  EXPECT_NEAR(ohm({1, 1, 1}), 199, 0.1);
  ASSERT_TRUE(field.set_fault({1, 1, 1}, FaultKind::poor_joint, 198));
  EXPECT_EQ(ohm({1, 1, 1}), -1);
}

TEST_F(FieldTest, EachLoadFaultReadsAsItShould) {
  const double whole = ohm({1, 2, 1});  // three in series, 30 + 1
  const auto with = [&](FaultKind kind, double amount = 0) {
    EXPECT_TRUE(field.set_fault({1, 2, 1}, kind, amount).ok());
    const double seen = ohm({1, 2, 1});
    EXPECT_TRUE(field.clear_fault({1, 2, 1}).ok());
    return seen;
  };
  EXPECT_EQ(with(FaultKind::open), -1);
  EXPECT_NEAR(with(FaultKind::short_circuit), 1, 0.06);
  EXPECT_NEAR(with(FaultKind::missing_igniter), whole - 10, 0.07);
  EXPECT_NEAR(with(FaultKind::extra_igniter), whole + 10, 0.07);
  EXPECT_NEAR(with(FaultKind::poor_joint, 4), whole + 4, 0.07);
  EXPECT_NEAR(with(FaultKind::leak, 100), whole * 100 / (whole + 100), 0.07);
  EXPECT_NEAR(with(FaultKind::wrong_lead, 2), whole + 1, 0.12);
  EXPECT_NEAR(with(FaultKind::wrong_igniter), 3 * 2 + 1, 0.12);
  EXPECT_NEAR(ohm({1, 2, 1}), whole, 0.07);
}

TEST_F(FieldTest, AnIntermittentOneChangesByItself) {
  ASSERT_TRUE(field.set_fault({1, 1, 1}, FaultKind::intermittent));
  std::set<double> seen;
  for (int i = 0; i < 50; ++i) seen.insert(ohm({1, 1, 1}));
  EXPECT_EQ(seen.count(-1), 1U);
  EXPECT_GT(seen.size(), 5U);
}

TEST_F(FieldTest, AStrayHangsOnAFreePinAndIsTakenAway) {
  ASSERT_TRUE(field.set_fault({1, 2, 3}, FaultKind::stray));
  EXPECT_NEAR(ohm({1, 2, 3}), 2, 0.02);
  EXPECT_FALSE(field.set_fault({1, 2, 3}, FaultKind::stray).ok());
  ASSERT_TRUE(field.clear_fault({1, 2, 3}));
  EXPECT_EQ(ohm({1, 2, 3}), -1);
}

TEST_F(FieldTest, RefusesFaultsThatCannotBe) {
  EXPECT_FALSE(field.set_fault({1, 1, 1}, FaultKind::missing_igniter).ok());  // it has but one
  EXPECT_FALSE(field.set_fault({1, 1, 1}, FaultKind::poor_joint, 0).ok());
  EXPECT_FALSE(field.set_fault({1, 1, 1}, FaultKind::poor_joint, std::nan("")).ok());
  EXPECT_FALSE(field.set_fault({1, 1, 1}, FaultKind::swapped).ok());
  EXPECT_FALSE(field.set_fault({1, 2, 3}, FaultKind::open).ok());
  EXPECT_FALSE(field.set_fault({9, 1, 1}, FaultKind::stray).ok());
  EXPECT_FALSE(field.set_fault({1, 2, 3}, FaultKind::stray, 0, 99).ok());
  EXPECT_FALSE(field.set_fault({1, 1, 1}, FaultKind::wrong_igniter, 0, 0).ok());
  EXPECT_FALSE(field.clear_fault({1, 2, 3}).ok());
}

TEST_F(FieldTest, SwapsAlsoWithAFreePinAndBack) {
  ASSERT_TRUE(field.swap_loads({1, 2, 1}, {1, 2, 3}));
  EXPECT_EQ(home({1, 2, 1}), PinId{});
  EXPECT_EQ(home({1, 2, 3}), (PinId{1, 2, 1}));
  ASSERT_TRUE(field.swap_loads({1, 2, 1}, {1, 2, 3}));
  EXPECT_EQ(home({1, 2, 1}), (PinId{1, 2, 1}));
  EXPECT_FALSE(field.swap_loads({1, 2, 1}, {1, 2, 4}).ok());
}

TEST_F(FieldTest, AFaultGoesWithItsLoad) {
  ASSERT_TRUE(field.set_fault({1, 1, 1}, FaultKind::open));
  ASSERT_TRUE(field.swap_loads({1, 1, 1}, {1, 1, 2}));
  EXPECT_EQ(ohm({1, 1, 2}), -1);
  EXPECT_NEAR(ohm({1, 1, 1}), 5, 0.07);
}

TEST_F(FieldTest, ShiftsIntoFreePins) {
  // module 2: loads on 1..3 of 4
  ASSERT_TRUE(field.shift({2, 1}, 1, 3, 1));
  EXPECT_EQ(home({2, 1, 1}), PinId{});
  for (std::uint16_t pin = 2; pin <= 4; ++pin) {
    EXPECT_EQ(home({2, 1, pin}), (PinId{2, 1, static_cast<std::uint16_t>(pin - 1)}));
  }
  ASSERT_TRUE(field.shift({2, 1}, 2, 4, -1));
  for (std::uint16_t pin = 1; pin <= 3; ++pin) EXPECT_EQ(home({2, 1, pin}), (PinId{2, 1, pin}));
}

TEST_F(FieldTest, WhatAShiftMeetsMovesIntoThePlaceLeft) {
  ASSERT_TRUE(field.shift({1, 1}, 1, 2, 1));
  EXPECT_EQ(home({1, 1, 1}), (PinId{1, 1, 3}));
  EXPECT_EQ(home({1, 1, 2}), (PinId{1, 1, 1}));
  EXPECT_EQ(home({1, 1, 3}), (PinId{1, 1, 2}));
  EXPECT_EQ(home({1, 1, 4}), (PinId{1, 1, 4}));
}

TEST_F(FieldTest, WhatRunsOffTheRailHangsLooseUntilItIsRehooked) {
  ASSERT_TRUE(field.shift({1, 1}, 1, 4, 1));
  EXPECT_EQ(home({1, 1, 1}), PinId{});
  EXPECT_EQ(home({1, 1, 4}), (PinId{1, 1, 3}));
  for (std::uint16_t pin = 4; pin >= 1; --pin) ASSERT_TRUE(field.rehook({1, 1, pin}));
  for (std::uint16_t pin = 1; pin <= 4; ++pin) EXPECT_EQ(home({1, 1, pin}), (PinId{1, 1, pin}));
  ASSERT_TRUE(field.shift({1, 1}, 1, 2, -1));
  EXPECT_EQ(home({1, 1, 1}), (PinId{1, 1, 2}));
  EXPECT_EQ(home({1, 1, 2}), PinId{});
}

TEST_F(FieldTest, RefusesShiftsThatCannotBe) {
  EXPECT_FALSE(field.shift({1, 1}, 0, 2, 1).ok());
  EXPECT_FALSE(field.shift({1, 1}, 3, 2, 1).ok());
  EXPECT_FALSE(field.shift({1, 1}, 1, 5, 1).ok());
  EXPECT_FALSE(field.shift({1, 1}, 1, 4, 30000).ok());
  EXPECT_FALSE(field.shift({7, 1}, 1, 1, 1).ok());
  EXPECT_TRUE(field.shift({1, 1}, 1, 4, 0).ok());
  EXPECT_EQ(home({1, 1, 1}), (PinId{1, 1, 1}));
}

TEST_F(FieldTest, ReversingTwiceIsNothing) {
  ASSERT_TRUE(field.reverse({1, 1}));
  EXPECT_EQ(home({1, 1, 1}), (PinId{1, 1, 4}));
  EXPECT_EQ(home({1, 1, 2}), (PinId{1, 1, 3}));
  ASSERT_TRUE(field.reverse({1, 1}));
  EXPECT_EQ(home({1, 1, 1}), (PinId{1, 1, 1}));
  ASSERT_TRUE(field.reverse({1, 2}));  // the middle pin of three stays
  EXPECT_EQ(home({1, 2, 2}), (PinId{1, 2, 2}));
  EXPECT_FALSE(field.reverse({1, 3}).ok());
}

TEST_F(FieldTest, ExchangesRailsOfDifferentSizeWherePinsExist) {
  ASSERT_TRUE(field.exchange_rails({1, 1}, {1, 2}));
  EXPECT_EQ(home({1, 2, 1}), (PinId{1, 1, 1}));
  EXPECT_EQ(home({1, 1, 1}), (PinId{1, 2, 1}));
  EXPECT_EQ(home({1, 1, 3}), PinId{});
  EXPECT_EQ(home({1, 1, 4}), (PinId{1, 1, 4}));
  EXPECT_FALSE(field.exchange_rails({1, 1}, {1, 9}).ok());
}

TEST_F(FieldTest, ExchangesModulesOfDifferentSizeWherePinsExist) {
  ASSERT_TRUE(field.exchange_modules(1, 2));
  EXPECT_EQ(home({1, 1, 1}), (PinId{2, 1, 1}));
  EXPECT_EQ(home({2, 1, 4}), (PinId{1, 1, 4}));
  EXPECT_EQ(home({1, 2, 1}), (PinId{1, 2, 1}));
  EXPECT_FALSE(field.exchange_modules(1, 3).ok());
}

TEST_F(FieldTest, RehookPutsAnyMixUpRight) {
  ASSERT_TRUE(field.exchange_modules(1, 2));
  ASSERT_TRUE(field.reverse({1, 1}));
  ASSERT_TRUE(field.shift({2, 1}, 1, 4, 2));
  for (const plan::PlannedPin& planned : field.plan().pins) ASSERT_TRUE(field.rehook(planned.id));
  for (const plan::PlannedPin& planned : field.plan().pins) EXPECT_EQ(home(planned.id), planned.id);
  EXPECT_FALSE(field.rehook({1, 2, 3}).ok());  // nothing is planned there
}

TEST_F(FieldTest, TesterOffsetAndOtherWireShowEverywhere) {
  const double before = ohm({1, 1, 1});
  field.set_tester_offset(0.25);
  EXPECT_NEAR(ohm({1, 1, 1}), before + 0.25, 0.011);
  field.set_tester_offset(0);
  field.set_lead_factor(1.5);
  EXPECT_NEAR(ohm({1, 1, 1}), before + 0.5, 0.03);
}

TEST(EmptyField, HasNothingToRead) {
  Field field(plan::Plan{}, tester::Model{}, 1);
  EXPECT_TRUE(field.pins().empty());
  EXPECT_FALSE(field.read({1, 1, 1}).has_value());
}

}  // namespace
}  // namespace walkdown::trainer
