// SPDX-License-Identifier: Apache-2.0
#include "reader/match/test_current.h"

#include <gmock/gmock.h>

namespace walkdown::match {
namespace {

using testing::HasSubstr;

plan::Plan plan_with(std::optional<double> no_fire_a, std::optional<double> test_max_a = {}) {
  plan::Plan plan;
  plan::Igniter igniter;
  igniter.name = "sample";
  igniter.bridge_ohm = {1, 2};
  igniter.no_fire_a = no_fire_a;
  igniter.test_max_a = test_max_a;
  plan.catalogue.igniters.push_back(igniter);
  plan::PlannedPin pin;
  pin.id = {1, 1, 1};
  plan.pins.push_back(pin);
  return plan;
}

tester::Model tester_of(std::optional<double> test_current_a) {
  tester::Model model;
  model.test_current_a = test_current_a;
  return model;
}

// 50 mA or 20 % of no-fire, whichever is less: WAC 212-17-317(6). 1/10: 14 CFR 417 App. D, with the
// 50 mA on top. Milliamperes computed by hand.
TEST(TestCurrent, LimitsOfThePublishedRules) {
  struct Row {
    double no_fire_a, at_20_pct_ma, at_10_pct_ma;
  };
  for (const Row& row : {Row{0.10, 20, 10}, Row{0.20, 40, 20}, Row{0.25, 50, 25}, Row{0.30, 50, 30},
                         Row{1.00, 50, 50}}) {
    const auto plan = plan_with(row.no_fire_a);
    EXPECT_NEAR(judge_test_current(plan, tester_of(0.001), 0.20).limit_a * 1000, row.at_20_pct_ma,
                1e-9);
    EXPECT_NEAR(judge_test_current(plan, tester_of(0.001), 0.10).limit_a * 1000, row.at_10_pct_ma,
                1e-9);
  }
}

TEST(TestCurrent, AboveIsRefusedAndNamesTheRule) {
  const auto plan = plan_with(0.2);
  const auto may = may_read(plan, tester_of(0.021));
  ASSERT_FALSE(may.ok());
  EXPECT_EQ(may.error().code, Code::refused);
  EXPECT_THAT(may.error().sentence(), HasSubstr("10 % of the no-fire current of sample"));
  EXPECT_TRUE(may_read(plan, tester_of(0.020)).ok());
  EXPECT_EQ(judge_test_current(plan, tester_of(0.020)).word, CurrentWord::within);
}

TEST(TestCurrent, TheMakersFigureCountsWhereItIsLower) {
  const auto judged = judge_test_current(plan_with(0.5, 0.010), tester_of(0.011));
  EXPECT_EQ(judged.word, CurrentWord::above);
  EXPECT_THAT(judged.rule, HasSubstr("test_max_a"));
}

TEST(TestCurrent, AMissingFigureIsNeverWithin) {
  EXPECT_EQ(judge_test_current(plan_with(0.2), tester_of({})).word, CurrentWord::cannot_be_told);
  EXPECT_EQ(judge_test_current(plan_with({}), tester_of(0.001)).word, CurrentWord::cannot_be_told);
  EXPECT_EQ(judge_test_current(plan_with({}, 0.02), tester_of(0.001)).word,
            CurrentWord::cannot_be_told);
}

TEST(TestCurrent, FiftyMilliampereRefuseEvenWithoutADataSheet) {
  EXPECT_FALSE(may_read(plan_with({}), tester_of(0.051)).ok());
}

TEST(TestCurrent, AnIgniterThatThePlanDoesNotUseDoesNotCount) {
  auto plan = plan_with(0.5);
  plan::Igniter other;
  other.name = "delicate";
  other.no_fire_a = 0.01;
  plan.catalogue.igniters.push_back(other);
  EXPECT_TRUE(may_read(plan, tester_of(0.040)).ok());
  plan.pins.push_back(plan.pins.front());
  plan.pins.back().load.igniter = 1;
  EXPECT_FALSE(may_read(plan, tester_of(0.040)).ok());
}

}  // namespace
}  // namespace walkdown::match
