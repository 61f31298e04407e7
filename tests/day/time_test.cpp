// SPDX-License-Identifier: Apache-2.0
// Clocks that step, machines that sleep or die, and a show that moves.
#include <gmock/gmock.h>

#include "checklist/day/timeline.h"
#include "world.h"

namespace walkdown::day {
namespace {

using testing::HasSubstr;

record::Entry entry(const char* kind, std::int64_t at_ms, std::int64_t up_ms) {
  return {0, at_ms, up_ms, kind, nlohmann::json::object()};
}

Moment passed(std::int64_t at_ms, std::int64_t up_ms, const char* kind) {
  Timeline time;
  const auto first = entry("open", 1'000'000, 500'000);
  time.take(first, time.look(first));
  return time.look(entry(kind, at_ms, up_ms)).moment;
}

TEST(Timeline, WithinARunTheBootClockCounts) {
  EXPECT_EQ(passed(1'060'000, 560'000, "note"), (Moment{60'000, 60'000}));
  EXPECT_EQ(passed(9'000'000, 560'000, "clock-step"), (Moment{60'000, 60'000}));
  EXPECT_EQ(passed(0, 560'000, "clock-step"), (Moment{60'000, 60'000}));
}

// After a reboot: at most what the wall clock says, at least what the machine has run.
TEST(Timeline, OverARebootAgesAreLongAndWaitsAreShort) {
  EXPECT_EQ(passed(1'600'000, 20'000, "resumed"), (Moment{600'000, 20'000}));
}

TEST(Timeline, OverARestartOfTheProgramAlone) {
  EXPECT_EQ(passed(1'060'000, 560'000, "resumed"), (Moment{60'000, 60'000}));
  EXPECT_EQ(passed(1'010'000, 560'000, "resumed"), (Moment{60'000, 10'000}));
}

TEST(Timeline, BackOverARestartNoAgeIsKnown) {
  Timeline time;
  const auto first = entry("open", 1'000'000, 500'000);
  time.take(first, time.look(first));
  const Clocks clocks = time.look(entry("resumed", 900'000, 10'000));
  EXPECT_TRUE(clocks.age_unknown);
  EXPECT_EQ(clocks.moment, (Moment{0, 0}));
}

TEST(Timeline, ABootClockThatWentBackIsARestartEvenUntold) {
  Timeline time;
  const auto first = entry("open", 1'000'000, 500'000);
  time.take(first, time.look(first));
  EXPECT_TRUE(time.look(entry("note", 1'100'000, 3'000)).restarted);
}

TEST(Timeline, SlowDriftIsNoStepUntilItIs) {
  Timeline time;
  const auto first = entry("open", 0, 0);
  time.take(first, time.look(first));
  EXPECT_FALSE(time.look(entry("note", 100'000, 98'000)).stepped);
  EXPECT_TRUE(time.look(entry("note", 100'000, 97'999)).stepped);
}

TEST(Clocks, AStepBreaksWhatItShouldAndValidityGoesOnByTheBootClock) {
  World world;
  world.ready();
  world.now.at_ms += 3'600'000;
  world.write("clock-step", {{"by_ms", 3'600'000}});
  EXPECT_EQ(world.item("edge").why, "the wall clock stepped");
  EXPECT_EQ(world.standing("wind"), "holds");
  EXPECT_EQ(world.standing("angles"), "holds");
}

TEST(Clocks, AStepThatNoEntryTellsIsSeenAnyway) {
  World world;
  world.ready();
  world.now.at_ms -= 60'000;
  world.write("note", Body::object());
  EXPECT_EQ(world.standing("edge"), "broken");
}

TEST(Clocks, SleepCountsAndBreaks) {
  World world;
  world.ready();
  world.pass(31 * kMinute_ms);
  world.write("suspended", {{"slept_ms", 31 * kMinute_ms}});
  EXPECT_EQ(world.item("edge").why, "the machine slept");
  EXPECT_EQ(world.standing("wind"), "expired");
}

TEST(Clocks, OverARebootNothingLivesLongerThanTheWallClockAllows) {
  World world;
  world.ready();
  world.now.at_ms += 29 * kMinute_ms;
  world.now.up_ms = 4'000;
  world.write("resumed", Body::object());
  EXPECT_EQ(world.standing("wind"), "holds");
  world.pass(kMinute_ms);
  EXPECT_EQ(world.standing("wind"), "expired");
}

TEST(Clocks, OverARebootAWaitIsNeverCutShort) {
  World world;
  world.ready();
  world.put("thunder", propose_thunder(world.fold, world.now, 3'000));
  world.now.at_ms += 40 * kMinute_ms;  // whether this is true nobody knows
  world.now.up_ms = 10 * kMinute_ms;
  world.write("resumed", Body::object());
  EXPECT_EQ(world.standing("thunder"), "broken");
  world.pass(20 * kMinute_ms);
  EXPECT_EQ(world.standing("thunder"), "holds");
}

TEST(Clocks, BackOverARestartEverythingThatAgesBreaks) {
  World world;
  world.ready();
  world.now.at_ms -= kMinute_ms;
  world.now.up_ms = 4'000;
  world.write("resumed", {{"back_ms", kMinute_ms}});
  EXPECT_THAT(world.item("wind").why, HasSubstr("age is not known"));
  EXPECT_EQ(world.standing("loop"), "open");
  EXPECT_EQ(world.standing("angles"), "holds") << "it does not age";
}

TEST(Clocks, AfterARestartTheLastAnswerComesUpAgain) {
  World world;
  world.enrol_all();
  world.answer(kCy, "angles", "away");
  world.now.up_ms = 4'000;
  world.write("resumed", Body::object());
  EXPECT_EQ(world.item("angles").why, "comes up again after the restart");
}

TEST(Clocks, AProgramStartedAnewOnAMachineThatRanOnBreaksNothing) {
  World world;
  world.released();
  world.pass(kMinute_ms);
  world.write("resumed", {{"clock", "same"}});
  EXPECT_EQ(world.state().release.word, ReleaseWord::stands);
  EXPECT_EQ(world.standing("edge"), "holds");
  EXPECT_EQ(to_json(world.state()).dump(), world.replayed());
}

TEST(Clocks, ARebootBringsAReleaseDownWhateverTheEntrySays) {
  World world;
  world.released();
  world.now.at_ms += kMinute_ms;
  world.now.up_ms = 4'000;
  world.write("resumed", {{"clock", "same"}});
  EXPECT_EQ(world.state().release.word, ReleaseWord::fallen);
  EXPECT_THAT(world.state().release.why, HasSubstr("the machine was started anew"));
  EXPECT_EQ(to_json(world.state()).dump(), world.replayed());
}

// What a wait counts from is not asked again because everybody waited.
TEST(Clocks, AWaitIsNoBreak) {
  World world;
  world.released();
  world.answer(kAnn, "last-shot", "22:40, cue 96");
  world.pass(16 * kMinute_ms);
  EXPECT_EQ(world.standing("rest"), "holds");
  world.write("hold", Body::object());
  world.put("lift", propose_lift(world.fold, world.now, kAnn, "it was nothing"));
  EXPECT_EQ(world.standing("last-shot"), "holds");
  EXPECT_EQ(world.standing("rest"), "holds");
}

TEST(Show, MovingItBreaksWhatRestsOnIt) {
  World world;
  world.ready();
  world.put("show-time", propose_show_time(world.fold, world.now, kAnn, kStart_ms + 600'000));
  EXPECT_EQ(world.standing("edge"), "holds") << "the first time is no move";
  world.second(kBo, world.put("release", propose_release(world.fold, world.now, kAnn)));
  world.put("show-time", propose_show_time(world.fold, world.now, kAnn, kStart_ms + 900'000));
  EXPECT_EQ(world.item("edge").why, "the show was moved to 19:15");
  EXPECT_EQ(world.state().release.word, ReleaseWord::fallen);
  EXPECT_FALSE(propose_show_time(world.fold, world.now, kBo, kStart_ms));
  EXPECT_FALSE(propose_show_time(world.fold, world.now, kAnn, -1));
}

TEST(Show, AnItemNotAnsweredGrowsDue) {
  World world;
  world.enrol_all();
  world.put("show-time",
            propose_show_time(world.fold, world.now, kAnn, kStart_ms + 30 * kMinute_ms));
  EXPECT_EQ(world.standing("edge"), "open");
  world.pass(18 * kMinute_ms);  // due at 19:20, takes 2 min
  EXPECT_EQ(world.standing("edge"), "due");
}

}  // namespace
}  // namespace walkdown::day
