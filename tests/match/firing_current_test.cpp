// SPDX-License-Identifier: Apache-2.0
#include "reader/match/firing_current.h"

#include <gtest/gtest.h>

#include "reader/plan/expected.h"
#include "reader/plan/igniter_file.h"

namespace walkdown {
namespace {

using match::FiringWord;

// One igniter of 1.5 to 2.0 ohm that needs 0.5 A, a supply of 12 V at least behind 2 ohm.
plan::Plan plan_of(std::uint16_t count, plan::Join join) {
  plan::Plan plan;
  plan.catalogue.igniters.push_back({"T", {1.5, 2.0}, "test", 0.5, 0.2, 0.02, {0, 0}});
  plan.catalogue.supply = plan::Supply{{12, 14}, 2, 1.5, "test"};
  plan.layout.rails = {{1, {4}}};
  plan::PlannedPin pin;
  pin.id = {1, 1, 1};
  pin.cue = "1";
  pin.load.count = count;
  pin.load.join = join;
  plan.pins.push_back(pin);
  return plan;
}

// Worked by hand from Ohm's law: 12 V / (2 + 4) ohm = 2 A; 2 / (1.5 * 0.5) = 2.667.
TEST(FiringCurrent, OneLoop) {
  const auto out = match::firing_currents(plan_of(1, plan::Join::series), {{{{1, 1, 1}, 4.0}}});
  ASSERT_EQ(out.size(), 1U);
  EXPECT_EQ(out[0].word, FiringWord::ok);
  EXPECT_TRUE(out[0].measured);
  EXPECT_NEAR(out[0].least_a, 2.0, 1e-9);
  EXPECT_NEAR(out[0].margin, 2.0 / 0.75, 1e-9);
  EXPECT_NEAR(out[0].most_loop_ohm, 12 / 0.75 - 2, 1e-9);
}

// Three legs: the one of 2.0 ohm beside two of 1.5 ohm gets (1/2) / (1/2 + 2/1.5) = 3/11.
TEST(FiringCurrent, TheWorstLegOfAParallelGroup) {
  const auto out = match::firing_currents(plan_of(3, plan::Join::parallel), {{{{1, 1, 1}, 4.0}}});
  EXPECT_NEAR(out[0].least_a, 2.0 * 3 / 11, 1e-9);
  EXPECT_EQ(out[0].word, FiringWord::thin);
}

// Two loops of 4 ohm on one source: 12 / (2 + 2) = 3 A in all, 1.5 A each. Another cue: no effect.
TEST(FiringCurrent, ACueDrawsTogether) {
  auto plan = plan_of(1, plan::Join::series);
  plan.pins.push_back(plan.pins[0]);
  plan.pins[1].id = {1, 1, 2};
  const std::vector<match::MeasuredLoop> loops = {{{1, 1, 1}, 4}, {{1, 1, 2}, 4}};
  EXPECT_NEAR(match::firing_currents(plan, loops)[1].least_a, 1.5, 1e-9);
  plan.pins[1].cue = "2";
  EXPECT_NEAR(match::firing_currents(plan, loops)[1].least_a, 2.0, 1e-9);
}

TEST(FiringCurrent, TheLoopThatJustHoldsHolds) {
  for (const auto join : {plan::Join::series, plan::Join::parallel}) {
    const auto plan = plan_of(2, join);
    const double most = match::firing_currents(plan, {})[0].most_loop_ohm;
    const auto at = match::firing_currents(plan, {{{{1, 1, 1}, most * (1 - 1e-9)}}})[0];
    const auto above = match::firing_currents(plan, {{{{1, 1, 1}, most * (1 + 1e-9)}}})[0];
    EXPECT_EQ(at.word, FiringWord::ok);
    EXPECT_EQ(above.word, FiringWord::thin);
  }
}

TEST(FiringCurrent, AMissingFigureIsNeverOk) {
  auto plan = plan_of(1, plan::Join::series);
  plan.catalogue.igniters[0].all_fire_a.reset();
  EXPECT_EQ(match::firing_currents(plan, {})[0].word, FiringWord::cannot_be_told);
  plan = plan_of(1, plan::Join::series);
  plan.catalogue.supply.reset();
  EXPECT_EQ(match::firing_currents(plan, {})[0].word, FiringWord::cannot_be_told);
  EXPECT_TRUE(match::lint_supply(plan).empty());
}

// Only a plan that no importer made has such a load; it is still no reason to read past the end.
TEST(FiringCurrent, AnIgniterOrWireThatTheCatalogueLacksCannotBeTold) {
  for (const bool wire : {false, true}) {
    auto plan = plan_of(1, plan::Join::series);
    (wire ? plan.pins[0].load.wire : plan.pins[0].load.igniter) = 7;
    plan.pins.push_back(plan_of(1, plan::Join::series).pins[0]);
    plan.pins[1].id = {1, 1, 2};
    const auto out = match::firing_currents(plan, {{{{1, 1, 1}, 4.0}}});
    ASSERT_EQ(out.size(), 2U);
    EXPECT_EQ(out[0].word, FiringWord::cannot_be_told);
    EXPECT_NE(out[0].say.find("M01/R1/P01"), std::string::npos);
    EXPECT_EQ(out[1].word, FiringWord::ok);
    EXPECT_DOUBLE_EQ(plan::expected(plan.pins[0].load, plan.catalogue).ohm.hi, 0);
  }
}

TEST(FiringCurrent, AStarvingLeadIsLintAndTheLengthThatDoesDoes) {
  auto plan = plan_of(1, plan::Join::series);
  plan.catalogue.wires.push_back({"thin", {300, 300}, 0.00393, "test"});
  plan.pins[0].load.wire = 0;
  plan.pins[0].load.lead_m = 60;
  ASSERT_EQ(match::lint_supply(plan).size(), 1U);
  EXPECT_EQ(match::lint_supply(plan)[0].column, "lead_m");
  const double most = *match::firing_currents(plan, {})[0].most_lead_m;
  plan.pins[0].load.lead_m = most * 0.999;
  EXPECT_TRUE(match::lint_supply(plan).empty());
}

TEST(FiringCurrent, SupplyIsReadFromTheIgniterFile) {
  const auto read = plan::read_igniters("[supply]\nvolt = [22, 26]\nsource_ohm = 0.8\n", "f.toml");
  ASSERT_TRUE(read.ok());
  ASSERT_TRUE(read.value().supply.has_value());
  EXPECT_DOUBLE_EQ(read.value().supply->volt.lo, 22);
  EXPECT_DOUBLE_EQ(read.value().supply->margin, 1.5);
  EXPECT_FALSE(plan::read_igniters("[supply]\nvolt = [22, 26]\n", "f.toml").ok());
  EXPECT_FALSE(plan::read_igniters("[supply]\nvolts = [22, 26]\nsource_ohm = 1\n", "f").ok());
}

}  // namespace
}  // namespace walkdown
