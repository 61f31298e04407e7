// SPDX-License-Identifier: Apache-2.0
#include "gui/field/pin_current.h"

#include <gtest/gtest.h>

namespace walkdown::gui {
namespace {

// 24 V behind 1 ohm; two pins of one cue and one of another, an igniter of 2 ohm each, no lead.
plan::Plan two_cues() {
  plan::Plan plan;
  plan::Igniter igniter;
  igniter.name = "made up";
  igniter.bridge_ohm = {2, 2};
  igniter.all_fire_a = 0.5;
  plan.catalogue.igniters = {igniter};
  plan.catalogue.wiring.contact_ohm = {0, 0};
  plan::Supply supply;
  supply.volt = {24, 24};
  supply.source_ohm = 1;
  plan.catalogue.supply = supply;
  for (std::uint16_t pin = 1; pin <= 3; ++pin) {
    plan::PlannedPin planned;
    planned.id = {1, 1, pin};
    planned.cue = pin == 3 ? "two" : "one";
    plan.pins.push_back(planned);
  }
  plan.layout.rails[1] = {16};
  return plan;
}

match::Outcome read(const plan::Plan& plan, match::Verdict verdict, double ohm) {
  match::Outcome outcome;
  for (const auto& pin : plan.pins) {
    match::PinVerdict each;
    each.pin = pin.id;
    each.verdict = verdict;
    each.ohm = ohm;
    outcome.pins.push_back(each);
  }
  return outcome;
}

// By hand, from Ohm and Kirchhoff: two loops of 3 ohm in parallel behind 1 ohm are 2.5 ohm, so the
// source gives 9.6 A and each loop takes 4.8 A; one loop alone takes 24 V / 4 ohm = 6 A.
TEST(PinCurrent, ComesThroughTheMeasuredLoopsOfItsCueAlone) {
  const plan::Plan plan = two_cues();
  const auto outcome = read(plan, match::Verdict::fits, 3);
  const auto first = current_of(plan, outcome, {1, 1, 1});
  ASSERT_TRUE(first);
  EXPECT_TRUE(first->measured);
  EXPECT_NEAR(first->least_a, 4.8, 1e-9);
  EXPECT_NEAR(current_of(plan, outcome, {1, 1, 3})->least_a, 6.0, 1e-9);
}

TEST(PinCurrent, IsThatOfTheWholePlansJudge) {
  const plan::Plan plan = two_cues();
  const auto all = match::firing_currents(plan, {});
  const auto one = current_of(plan, {}, {1, 1, 2});
  ASSERT_TRUE(one);
  EXPECT_EQ(one->least_a, all[1].least_a);
  EXPECT_FALSE(one->measured);
}

// The tester's own offset is no part of the loop.
TEST(PinCurrent, TakesOffWhatTheWholeFieldHasInCommon) {
  const plan::Plan plan = two_cues();
  auto outcome = read(plan, match::Verdict::fits, 3.5);
  outcome.field.offset_ohm = 0.5;
  EXPECT_NEAR(current_of(plan, outcome, {1, 1, 3})->least_a, 6.0, 1e-9);
}

TEST(PinCurrent, DoesNotTrustAReadingThatNoLongerCounts) {
  const plan::Plan plan = two_cues();
  for (const auto verdict : {match::Verdict::stale, match::Verdict::unsteady, match::Verdict::open,
                             match::Verdict::shorted, match::Verdict::unread}) {
    EXPECT_FALSE(current_of(plan, read(plan, verdict, 3), {1, 1, 1})->measured);
  }
  EXPECT_FALSE(current_of(plan, {}, {9, 1, 1}));
}

}  // namespace
}  // namespace walkdown::gui
