// SPDX-License-Identifier: Apache-2.0
// What counts as a proved field, the pins waived by name, those that read alike; wind and zone.
#include "checklist/day/continuity.h"

#include <gmock/gmock.h>

#include "checklist/day/read_checklist.h"
#include "world.h"

namespace walkdown::day {
namespace {

using testing::HasSubstr;

TEST(Continuity, EveryPlannedPinReadAndFitting) {
  World world;
  world.enrol_all();
  EXPECT_EQ(world.item("loop").why, "of 3 planned pins 3 are unread");
  world.write("reading", {{"pin", "M01/R1/P01"}});
  world.write("reading", {{"pin", "M01/R1/P02"}});
  world.write("reading", {{"pin", "M09/R9/P09"}});
  EXPECT_EQ(world.standing("loop"), "open");
  world.write("reading", {{"pin", "M02/R1/P01"}});
  EXPECT_EQ(world.standing("loop"), "holds");
  EXPECT_EQ(world.item("loop").why, "all 3 planned pins fit");
}

TEST(Continuity, AnyOtherWordIsNotGood) {
  for (const char* verdict :
       {"doubtful", "low", "high", "open", "short", "unsteady", "stale", ""}) {
    World world;
    world.pins.verdicts["M01/R1/P01"] = verdict;
    world.read_all();
    EXPECT_EQ(world.standing("loop"), "refused") << verdict;
  }
}

TEST(Continuity, AStrayReadingIsNotGood) {
  World world;
  world.pins.verdicts["M07/R1/P01"] = "stray";
  world.read_all();
  EXPECT_THAT(world.item("loop").why, HasSubstr("M07/R1/P01 stray"));
}

TEST(Continuity, WithoutAPlanOrADiagnosisNothingHolds) {
  World empty(small_checklist(), false);
  EXPECT_EQ(empty.standing("loop"), "open");
  World blind;
  Outside outside = blind.outside;
  outside.source = nullptr;
  Fold fold(small_checklist(), outside);
  for (const auto& entry : blind.entries) fold.take(entry);
  fold.take({1, kStart_ms, 1'000'000, "reading", {{"pin", "M01/R1/P01"}}});
  EXPECT_FALSE(fold.at(blind.now).items[2].standing == Standing::holds);
}

TEST(Continuity, ReadingsGrowOld) {
  World world;
  world.read_all();
  world.pass(119 * kMinute_ms);
  EXPECT_EQ(world.standing("loop"), "holds");
  world.write("reading", {{"pin", "M01/R1/P01"}});
  world.pass(kMinute_ms);
  EXPECT_EQ(world.standing("loop"), "expired");
  EXPECT_EQ(world.item("loop").why, "of 3 planned pins 2 were read too long ago");
}

TEST(Continuity, ARehookOrSomebodyAtThePositionUndoesReadings) {
  World world;
  world.read_all();
  world.write("rehook", {{"pins", {"M01/R1/P02"}}});
  EXPECT_EQ(world.item("loop").why, "of 3 planned pins 1 is unread");
  world.write("in", {{"person", "Cy"}, {"positions", {"Jetty"}}});
  EXPECT_EQ(world.item("loop").why, "of 3 planned pins 2 are unread");
  world.write("reading", {{"pin", "M01/R1/P01"}});
  world.write("reading", {{"pin", "M01/R1/P02"}});
  EXPECT_EQ(world.standing("loop"), "holds");
  world.write("in", {{"person", "Cy"}});
  EXPECT_EQ(world.item("loop").why, "of 3 planned pins 3 are unread") << "he went anywhere";
}

TEST(Continuity, ANameThePlanDoesNotKnowUndoesTheWholeField) {
  World world;
  world.read_all();
  world.write("rehook", {{"positions", {"Jety"}}});
  EXPECT_EQ(world.item("loop").why, "of 3 planned pins 3 are unread");
}

World& with_open_pin(World& world) {
  world.enrol_all();
  world.pins.verdicts["M01/R1/P02"] = "open";
  world.read_all();
  return world;
}

TEST(Continuity, PinsAreWaivedByNameForTheVerdictTheyHave) {
  World world;
  with_open_pin(world);
  EXPECT_EQ(world.item("loop").why, "of 3 planned pins 1 does not fit (M01/R1/P02 open)");
  EXPECT_FALSE(propose_waive_pin(world.fold, world.now, kBo, "M01/R1/P02", "cue cut"));
  EXPECT_FALSE(propose_waive_pin(world.fold, world.now, kAnn, "M01/R1/P01", "cue cut"));
  EXPECT_FALSE(propose_waive_pin(world.fold, world.now, kAnn, "M01/R1/P02", "n/a"));
  const auto n = world.put("waive-pin",
                           propose_waive_pin(world.fold, world.now, kAnn, "M01/R1/P02", "cue cut"));
  EXPECT_EQ(world.standing("loop"), "refused");
  world.second(kBo, n);
  EXPECT_EQ(world.standing("loop"), "holds");
  EXPECT_EQ(world.item("loop").why, "2 of 3 planned pins fit, 1 is waived by name");
}

TEST(Continuity, ANewFailureOfAWaivedPinIsNotCovered) {
  World world;
  with_open_pin(world);
  world.second(kBo, world.put("waive-pin", propose_waive_pin(world.fold, world.now, kAnn,
                                                             "M01/R1/P02", "cue cut")));
  world.pins.verdicts["M01/R1/P02"] = "short";
  world.write("reading", {{"pin", "M01/R1/P02"}});
  EXPECT_EQ(world.standing("loop"), "refused");
  world.pins.verdicts["M01/R1/P02"] = "open";
  world.write("rehook", {{"pins", {"M01/R1/P02"}}});
  world.write("reading", {{"pin", "M01/R1/P02"}});
  EXPECT_EQ(world.standing("loop"), "refused") << "hooked up anew since it was waived";
}

// Nine bad pins of which the sentence names three: the ninth changes places with a tenth.
TEST(Continuity, AWaiverOfTheItemCoversThesePinsAndNoOther) {
  World world;
  world.enrol_all();
  const auto strays = [&](int last) {
    world.pins.verdicts.clear();
    for (int pin = 1; pin < 9; ++pin) {
      world.pins.verdicts["M07/R1/P0" + std::to_string(pin)] = "stray";
    }
    world.pins.verdicts["M08/R1/P0" + std::to_string(last)] = "stray";
    for (const char* pin : {"M01/R1/P01", "M01/R1/P02", "M02/R1/P01"}) {
      world.pins.verdicts[pin] = "fits";
    }
    world.read_all();
  };
  strays(1);
  const std::string why = world.item("loop").why;
  world.second(kBo, world.put("waive", propose_waive(world.fold, world.now, kAnn, "loop",
                                                     "another show's module, unplugged")));
  EXPECT_EQ(world.standing("loop"), "waived");
  strays(1);
  EXPECT_EQ(world.standing("loop"), "waived") << "read again, and the same";
  strays(2);
  EXPECT_EQ(world.item("loop").why, why) << "the sentence cannot tell";
  EXPECT_EQ(world.standing("loop"), "refused");
}

// What is waived ends with the next failure, and says until when.
TEST(Continuity, AWaivedItemStandsUntilTheNextReadingGrowsOld) {
  World world;
  with_open_pin(world);
  const std::int64_t read_at_ms = world.now.at_ms;
  world.second(
      kBo, world.put("waive", propose_waive(world.fold, world.now, kAnn, "loop", "cue is cut")));
  EXPECT_EQ(world.item("loop").until_at_ms, read_at_ms + 120 * kMinute_ms);
  world.pass(120 * kMinute_ms);
  EXPECT_EQ(world.standing("loop"), "refused");
}

TEST(Continuity, TheDiagnosisIsAskedOnlyWhenSomethingRestsOnIt) {
  World world;
  for (int i = 0; i < 100; ++i) world.read_all();
  EXPECT_EQ(world.pins.asked, 0);
  EXPECT_EQ(world.pins.taken, 300);
  (void)world.state();
  (void)world.state();
  EXPECT_EQ(world.pins.asked, 1);
}

Checklist alike_checklist() {
  Checklist checklist = small_checklist();
  checklist.items[0].alike = true;
  return checklist;
}

TEST(Alike, TheNumberOfGroupsLookedAtIsSigned) {
  World world(alike_checklist());
  world.enrol_all();
  const auto body = propose_answer(world.fold, world.now, kCy, "angles", {"away", {}, {}}, 0);
  ASSERT_TRUE(body);
  EXPECT_EQ((*body)["groups"], 2);
  world.pins.groups = 3;
  world.sign(kCy, "answer", *body);
  EXPECT_EQ(world.standing("angles"), "open");
  world.answer(kCy, "angles", "away");
  EXPECT_EQ(world.standing("angles"), "holds");
}

TEST(Wind, ByThePeriodAndTheReaderTheItemAsksFor) {
  World world;
  world.ready();
  world.pass(31 * kMinute_ms);
  EXPECT_EQ(world.standing("wind"), "expired");
  world.put("wind", propose_wind(world.fold, world.now, kAnn, {1'000, 2'000, 120'000}));
  EXPECT_EQ(world.standing("wind"), "expired") << "a mean over 2 min is none over 10 min";
  world.put("wind", propose_wind(world.fold, world.now, kAnn, {9'001, 9'100, 600'000}));
  EXPECT_EQ(world.item("wind").why, "a mean wind of 9.1 m/s is above 9.0 m/s");
  EXPECT_FALSE(propose_wind(world.fold, world.now, kCy, {1'000, 2'000, 600'000}));
  EXPECT_FALSE(propose_wind(world.fold, world.now, kAnn, {2'000, 1'000, 600'000}));
  EXPECT_FALSE(propose_wind(world.fold, world.now, kAnn, {2'000, 3'000, 60'000}));
  world.put("wind", propose_wind(world.fold, world.now, {}, {9'000, 11'000, 600'000}));
  EXPECT_EQ(world.item("wind").why, "mean 9.0 m/s, gusts 11.0 m/s, by instrument");
}

TEST(Zone, FollowsFromTheSite) {
  Checklist checklist = small_checklist();
  checklist.items[0].kind = Kind::zone;
  checklist.items[0].by.clear();
  World world(checklist);
  EXPECT_EQ(world.standing("angles"), "holds");
  Outside outside = world.outside;
  outside.zone = ZoneFacts{false, "Jetty is 12.0 m from the bank"};
  EXPECT_EQ(Fold(checklist, outside).at(world.now).items[0].standing, Standing::refused);
  outside.zone.reset();
  EXPECT_EQ(Fold(checklist, outside).at(world.now).items[0].standing, Standing::open);
}

}  // namespace
}  // namespace walkdown::day
