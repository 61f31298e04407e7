// SPDX-License-Identifier: Apache-2.0
#include "checklist/day/schedule.h"

#include <gmock/gmock.h>

#include <algorithm>

#include "world.h"

namespace walkdown::day {
namespace {

using testing::HasSubstr;

Slot slot(const Schedule& plan, const std::string& id) {
  const auto found = std::find_if(plan.slots.begin(), plan.slots.end(),
                                  [&](const Slot& each) { return each.id == id; });
  EXPECT_NE(found, plan.slots.end()) << id;
  return found == plan.slots.end() ? Slot{} : *found;
}

void set_show(World& world, std::int64_t in_ms, std::int64_t utc_offset_min = 0) {
  world.put("show-time", propose_show_time(world.fold, world.now, kAnn, world.now.at_ms + in_ms,
                                           utc_offset_min));
}

TEST(Schedule, WithoutAShowTimeThereIsNone) {
  World world;
  EXPECT_FALSE(schedule(world.fold, world.now).feasible);
  EXPECT_EQ(schedule(world.fold, world.now).say, "no show time is set");
}

// Worked by hand: show at 21:00, 5 min long, now 19:00. Backwards: edge is due at 20:50 and takes
// 2 min; wind takes 10 min; field, thunder and key take none; so "set" must end by 20:48 (edge's
// latest start) and the pins, 20 min, begin by 20:28.
TEST(Schedule, LatestStartsBackwardsFromTheShow) {
  World world;
  world.enrol_all();
  set_show(world, 120 * kMinute_ms);
  const Schedule plan = schedule(world.fold, world.now);
  EXPECT_TRUE(plan.feasible) << plan.say;
  const auto at = [&](int hour, int minute) {
    return kStart_ms + ((hour - 19) * 60 + minute) * kMinute_ms;
  };
  EXPECT_EQ(slot(plan, "edge").latest_at_ms, at(20, 50));
  EXPECT_EQ(slot(plan, "edge").latest_start_at_ms, at(20, 48));
  EXPECT_EQ(slot(plan, "edge").not_before_at_ms, at(20, 45));
  EXPECT_EQ(slot(plan, "wind").latest_start_at_ms, at(20, 50));
  EXPECT_EQ(slot(plan, "wind").not_before_at_ms, at(20, 35));
  EXPECT_EQ(slot(plan, "loop").latest_at_ms, at(20, 48));
  EXPECT_EQ(slot(plan, "loop").latest_start_at_ms, at(20, 28));
  EXPECT_EQ(slot(plan, "loop").slack_ms, 88 * kMinute_ms);
  EXPECT_TRUE(slot(plan, "loop").critical);
  EXPECT_FALSE(slot(plan, "wind").critical);
  EXPECT_EQ(plan.say, "a release for 21:00 is possible: begin loop by 20:28");
}

TEST(Schedule, AnAnswerThatWillNotLastIsAskedForAgain) {
  World world;
  world.ready();
  // Wind read now lasts 30 min. The show is in 34 min: it expires 4 min before.
  set_show(world, 34 * kMinute_ms - 3'000, 120);
  world.answer(kBo, "edge", "nobody");
  const Schedule plan = schedule(world.fold, world.now);
  EXPECT_TRUE(plan.feasible) << plan.say;
  EXPECT_THAT(slot(plan, "wind").say,
              HasSubstr("as planned, wind expires 4 min before the show: answer it again between "
                        "21:09 and 21:34"));
}

TEST(Schedule, WhatLastsIsDone) {
  World world;
  world.ready();
  set_show(world, 10 * kMinute_ms);
  world.answer(kBo, "edge", "nobody");
  const Schedule plan = schedule(world.fold, world.now);
  EXPECT_TRUE(plan.feasible);
  EXPECT_TRUE(std::all_of(plan.slots.begin(), plan.slots.end(),
                          [](const Slot& each) { return each.done; }));
  EXPECT_THAT(plan.say, HasSubstr("every item holds to the end"));
}

TEST(Schedule, TooLateIsSaidWithWhatToDo) {
  World world;
  world.enrol_all();
  set_show(world, 15 * kMinute_ms);
  const Schedule plan = schedule(world.fold, world.now);
  EXPECT_FALSE(plan.feasible);
  EXPECT_THAT(plan.say, HasSubstr("loop cannot be done before 19:20"));
  EXPECT_THAT(plan.say, HasSubstr("move the show"));
  EXPECT_LT(slot(plan, "loop").slack_ms, 0);
}

TEST(Schedule, AThunderWaitCanMakeItImpossible) {
  World world;
  world.ready();
  set_show(world, 20 * kMinute_ms);
  world.put("thunder", propose_thunder(world.fold, world.now, 12'000));
  const Schedule plan = schedule(world.fold, world.now);
  EXPECT_FALSE(plan.feasible);
  EXPECT_THAT(slot(plan, "thunder").say, HasSubstr("thunder cannot be done before 19:30"));
}

TEST(Schedule, AShowLongerThanAnAnswerLastsCannotBeCovered) {
  Checklist checklist = small_checklist();
  checklist.show_length_ms = 40 * kMinute_ms;
  World world(checklist);
  world.enrol_all();
  set_show(world, 120 * kMinute_ms);
  const Schedule plan = schedule(world.fold, world.now);
  EXPECT_FALSE(plan.feasible);
  EXPECT_THAT(plan.say, HasSubstr("edge lasts only 20 min"));
}

TEST(Schedule, OnceAReleasedShowHasBegunNothingIsPlannedBeforeIt) {
  World world;
  world.ready();
  set_show(world, 3 * kMinute_ms);
  world.answer(kBo, "edge", "nobody");
  world.second(kBo, world.put("release", propose_release(world.fold, world.now, kAnn)));
  world.pass(4 * kMinute_ms);
  const Schedule plan = schedule(world.fold, world.now);
  EXPECT_TRUE(plan.feasible);
  EXPECT_TRUE(plan.slots.empty());
  EXPECT_THAT(plan.say, HasSubstr("the show of 19:03 was released"));
  set_show(world, 60 * kMinute_ms);
  EXPECT_FALSE(schedule(world.fold, world.now).slots.empty()) << "moved: planned anew";
}

TEST(Schedule, IsLive) {
  World world;
  world.enrol_all();
  set_show(world, 100 * kMinute_ms);
  const std::int64_t before = slot(schedule(world.fold, world.now), "loop").slack_ms;
  world.pass(kMinute_ms);
  EXPECT_EQ(slot(schedule(world.fold, world.now), "loop").slack_ms, before - kMinute_ms);
  world.read_all();
  EXPECT_TRUE(slot(schedule(world.fold, world.now), "loop").done);
}

}  // namespace
}  // namespace walkdown::day
