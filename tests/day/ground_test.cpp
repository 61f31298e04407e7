// SPDX-License-Identifier: Apache-2.0
// Keys, tags, headcount, holds and waivers.
#include <gmock/gmock.h>

#include "world.h"

namespace walkdown::day {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;

std::string refused(const Result<Body>& body) { return body ? "" : body.error().sentence(); }

std::string holder(const World& world) { return world.state().keys[0].holder; }

// Key with A; A to B accepted by B at 21:10:00 and released by A at 21:10:05: A holds it until the
// release and B after, and a crash in between leaves it with A.
TEST(Custody, TheGiverHoldsItUntilTheGiverSigns) {
  World world;
  world.enrol_all();
  world.put("key-take", propose_key_take(world.fold, world.now, kAnn, "key"));
  EXPECT_EQ(holder(world), "Ann");
  world.put("key-offer", propose_key_offer(world.fold, world.now, kBo, "key"));
  EXPECT_EQ(holder(world), "Ann");
  EXPECT_EQ(world.state().keys[0].offered_to, "Bo");
  world.now.up_ms = 5;  // the machine died and came back
  world.now.at_ms += kMinute_ms;
  world.write("resumed", Body::object());
  EXPECT_EQ(holder(world), "Ann");
  world.put("key-give", propose_key_give(world.fold, world.now, kAnn, "key"));
  EXPECT_EQ(holder(world), "Bo");
  EXPECT_EQ(to_json(world.state()).dump(), world.replayed());
}

TEST(Custody, NobodyGivesAwayWhatTheyDoNotHold) {
  World world;
  world.enrol_all();
  EXPECT_THAT(refused(propose_key_offer(world.fold, world.now, kBo, "key")),
              HasSubstr("nobody's hand"));
  EXPECT_THAT(refused(propose_key_put(world.fold, world.now, kAnn, "key", "box")),
              HasSubstr("Ann does not hold this key"));
  EXPECT_THAT(refused(propose_key_take(world.fold, world.now, kCy, "key")), HasSubstr("may not"));
  EXPECT_THAT(refused(propose_key_take(world.fold, world.now, kAnn, "spare")),
              HasSubstr("no such key"));
  world.put("key-take", propose_key_take(world.fold, world.now, kAnn, "key"));
  EXPECT_THAT(refused(propose_key_take(world.fold, world.now, kAnn, "key")),
              HasSubstr("Ann holds"));
  EXPECT_THAT(refused(propose_key_give(world.fold, world.now, kAnn, "key")),
              HasSubstr("receiver has not signed"));
  world.put("key-offer", propose_key_offer(world.fold, world.now, kBo, "key"));
  EXPECT_THAT(refused(propose_key_give(world.fold, world.now, kBo, "key")), HasSubstr("Ann does"));
  EXPECT_THAT(refused(propose_key_put(world.fold, world.now, kAnn, "key", "car")),
              HasSubstr("no such place"));
}

TEST(Custody, AnOfferThatWasReplacedCannotBeSigned) {
  World world;
  world.enrol_all();
  world.put("key-take", propose_key_take(world.fold, world.now, kAnn, "key"));
  world.put("key-offer", propose_key_offer(world.fold, world.now, kBo, "key"));
  const auto give = propose_key_give(world.fold, world.now, kAnn, "key");
  world.put("key-offer", propose_key_offer(world.fold, world.now, kCy, "key"));
  world.sign(kAnn, "key-give", *give);
  EXPECT_EQ(holder(world), "Ann");
}

TEST(Custody, TheFiringPositionOnlyWithTheFieldClearAndTheTagsBack) {
  World world;
  world.enrol_all();
  world.put("key-take", propose_key_take(world.fold, world.now, kAnn, "key"));
  world.put("in", propose_in(world.fold, world.now, "Cy", {}));
  EXPECT_THAT(refused(propose_key_put(world.fold, world.now, kAnn, "key", "desk")),
              HasSubstr("Cy is in"));
  world.sign(kAnn, "key-put", {{"key", "key"}, {"place", "desk"}});
  EXPECT_EQ(holder(world), "Ann");
  world.put("tag-hang", propose_tag_hang(world.fold, world.now, "Cy"));
  world.put("out", propose_out(world.fold, world.now, kCy, "Cy"));
  EXPECT_THAT(refused(propose_key_put(world.fold, world.now, kAnn, "key", "desk")),
              HasSubstr("tag of Cy"));
  world.put("tag-back", propose_tag_back(world.fold, world.now, kCy, "Cy"));
  world.put("hold", propose_hold(world.fold, world.now));
  EXPECT_THAT(refused(propose_key_put(world.fold, world.now, kAnn, "key", "desk")),
              HasSubstr("hold"));
  world.put("lift", propose_lift(world.fold, world.now, kAnn, "nothing there"));
  world.put("key-put", propose_key_put(world.fold, world.now, kAnn, "key", "desk"));
  EXPECT_EQ(holder(world), "desk");
}

TEST(Custody, OutOfTheBoxOnlyWhenEveryTagIsBack) {
  World world;
  world.enrol_all();
  world.put("tag-hang", propose_tag_hang(world.fold, world.now, "Cy"));
  EXPECT_THAT(refused(propose_key_take(world.fold, world.now, kAnn, "key")),
              HasSubstr("tag of Cy"));
}

TEST(Custody, TheItemHoldsWhereTheKeyHasToBe) {
  World world;
  world.ready();
  EXPECT_EQ(world.standing("key"), "holds");
  world.put("key-put", propose_key_put(world.fold, world.now, kAnn, "key", "desk"));
  EXPECT_EQ(world.standing("key"), "holds");
  world.put("key-take", propose_key_take(world.fold, world.now, kAnn, "key"));
  world.put("key-offer", propose_key_offer(world.fold, world.now, kCy, "key"));
  world.put("key-give", propose_key_give(world.fold, world.now, kAnn, "key"));
  EXPECT_EQ(world.standing("key"), "open");
}

// 29 CFR 1910.147(f)(3): a group lock box frees its keys when the last personal lock is off.
TEST(Custody, NoWayToTheFiringPositionPastATag) {
  World world;
  world.enrol_all();
  world.put("tag-hang", propose_tag_hang(world.fold, world.now, "Cy"));
  EXPECT_THAT(refused(propose_key_take(world.fold, world.now, kAnn, "key")),
              HasSubstr("the tag of Cy is not back; let its owner take it back first"));
  world.put("tag-back", propose_tag_back(world.fold, world.now, kCy, "Cy"));
  world.put("key-take", propose_key_take(world.fold, world.now, kAnn, "key"));
  world.put("tag-hang", propose_tag_hang(world.fold, world.now, "Cy"));
  EXPECT_THAT(refused(propose_key_put(world.fold, world.now, kAnn, "key", "desk")),
              HasSubstr("the tag of Cy is not back"));
  // Handed on, said to be back by one alone, and hung once more: it is out all the same.
  world.put("key-offer", propose_key_offer(world.fold, world.now, kBo, "key"));
  world.put("key-give", propose_key_give(world.fold, world.now, kAnn, "key"));
  const auto n =
      world.put("tag-back", propose_tag_back(world.fold, world.now, kBo, "Cy", "went home"));
  EXPECT_THAT(refused(propose_key_put(world.fold, world.now, kBo, "key", "desk")),
              HasSubstr("the tag of Cy is not back"));
  world.put("tag-hang", propose_tag_hang(world.fold, world.now, "Cy"));
  EXPECT_THAT(refused(propose_second(world.fold, world.now, kAnn, n)), HasSubstr("waits for no"));
  EXPECT_THAT(refused(propose_key_put(world.fold, world.now, kBo, "key", "desk")),
              HasSubstr("the tag of Cy is not back"));
}

// Another key whose places have the desk in them, which it does not arm from itself.
TEST(Custody, ASecondKeyIsNoWayRoundTheRuleOfTheFirst) {
  Checklist list = small_checklist();
  list.keys.push_back({"spare", "box", {"box", "desk", "van"}, "van", {"lead"}});
  World world(list);
  world.enrol_all();
  world.put("key-take", propose_key_take(world.fold, world.now, kAnn, "spare"));
  world.put("in", propose_in(world.fold, world.now, "Cy", {}));
  for (const char* place : {"desk", "van"}) {
    EXPECT_THAT(refused(propose_key_put(world.fold, world.now, kAnn, "spare", place)),
                HasSubstr("Cy is in the field; let them come out"));
  }
  world.put("key-put", propose_key_put(world.fold, world.now, kAnn, "spare", "box"));
}

TEST(Tags, OneAtABoxWithoutItsKeyIsSaidToProtectNobody) {
  World world;
  world.enrol_all();
  world.put("key-take", propose_key_take(world.fold, world.now, kAnn, "key"));
  const State before = world.state();
  world.put("tag-hang", propose_tag_hang(world.fold, world.now, "Cy"));
  EXPECT_THAT(changes(world.fold.checklist(), before, world.state()),
              testing::Contains("but the key is with Ann: nobody is to go in before it is back"));
}

TEST(Tags, OnlyTheOwnerAloneOrTwoWithAReason) {
  World world;
  world.enrol_all();
  world.put("tag-hang", propose_tag_hang(world.fold, world.now, "Cy"));
  EXPECT_THAT(refused(propose_tag_back(world.fold, world.now, kAnn, "Cy")),
              HasSubstr("only the owner"));
  const auto n =
      world.put("tag-back", propose_tag_back(world.fold, world.now, kAnn, "Cy", "went home"));
  EXPECT_THAT(world.state().tags, testing::ElementsAre("Cy"));
  EXPECT_THAT(refused(propose_second(world.fold, world.now, kAnn, n)), HasSubstr("sign twice"));
  world.second(kBo, n);
  EXPECT_THAT(world.state().tags, IsEmpty());
}

TEST(Headcount, EachSignsThemselvesOutOrTwoDoItWithAReason) {
  World world;
  world.enrol_all();
  world.put("in", propose_in(world.fold, world.now, "a guest", {}));
  world.put("in", propose_in(world.fold, world.now, "Cy", {}));
  EXPECT_EQ(world.item("field").why, "2 are in the field: Cy, a guest");
  world.put("out", propose_out(world.fold, world.now, kCy, "Cy"));
  const auto n =
      world.put("out", propose_out(world.fold, world.now, kBo, "a guest", "walked out with me"));
  EXPECT_EQ(world.standing("field"), "open");
  world.second(kAnn, n);
  EXPECT_EQ(world.standing("field"), "holds");
  EXPECT_THAT(refused(propose_out(world.fold, world.now, kCy, "Cy")),
              HasSubstr("not in the field"));
}

TEST(Headcount, WhoeverGoesBackInIsIn) {
  World world;
  world.enrol_all();
  world.put("in", propose_in(world.fold, world.now, "a guest", {}));
  const auto n =
      world.put("out", propose_out(world.fold, world.now, kBo, "a guest", "walked out with me"));
  world.put("in", propose_in(world.fold, world.now, "a guest", {}));
  EXPECT_THAT(refused(propose_second(world.fold, world.now, kAnn, n)), HasSubstr("waits for no"));
}

TEST(Hold, AnyoneCallsItTheLeadLiftsItWithAReason) {
  World world;
  world.ready();
  world.write("hold", Body::object());
  EXPECT_EQ(world.state().word, "hold");
  EXPECT_EQ(world.standing("edge"), "broken");
  EXPECT_THAT(refused(propose_lift(world.fold, world.now, kBo, "all clear")), HasSubstr("may not"));
  EXPECT_THAT(refused(propose_lift(world.fold, world.now, kAnn, "")), HasSubstr("reason"));
  world.put("lift", propose_lift(world.fold, world.now, kAnn, "it was a fox"));
  EXPECT_FALSE(world.state().hold);
  EXPECT_EQ(world.standing("edge"), "broken");
}

// The second caller saw something of his own: whoever knew of the first alone lifts neither.
TEST(Hold, ALiftIsForTheHoldsThatTheLeadKnewOf) {
  World world;
  world.enrol_all();
  const auto first = world.put("hold", propose_hold(world.fold, world.now, "Bo", "smoke"));
  const auto second = world.put("hold", propose_hold(world.fold, world.now, "Cy", "a child"));
  EXPECT_THAT(world.state().against,
              testing::IsSupersetOf({"Bo called a hold: smoke", "Cy called a hold: a child"}));
  EXPECT_THAT(refused(propose_lift(world.fold, world.now, kAnn, "it was fog", first)),
              HasSubstr("another hold was called since: Cy called a hold: a child; see to that"));
  world.sign(kAnn, "lift", {{"reason", "it was fog"}, {"of", first}});
  EXPECT_EQ(world.state().holds.size(), 2U);
  world.put("lift", propose_lift(world.fold, world.now, kAnn, "fog, and she is found", second));
  EXPECT_FALSE(world.state().hold);
  EXPECT_EQ(to_json(world.state()).dump(), world.replayed());
}

TEST(Hold, HoweverOftenItIsCalledTheDayStaysSmall) {
  World world;
  world.enrol_all();
  for (std::size_t i = 0; i < Day::kMostHolds + 10; ++i) world.write("hold", Body::object());
  const auto last = world.put("hold", propose_hold(world.fold, world.now, "Cy", "the last"));
  EXPECT_EQ(world.state().holds.size(), Day::kMostHolds);
  EXPECT_EQ(world.state().holds.back().n, last);
}

// A lift of a record from before holds were told apart.
TEST(Hold, ALiftThatNamesNoneIsForAll) {
  World world;
  world.enrol_all();
  world.write("hold", Body::object());
  world.write("hold", Body::object());
  world.sign(kAnn, "lift", {{"reason", "over"}});
  EXPECT_FALSE(world.state().hold);
}

TEST(Hold, TheLastAnsweredItemComesUpAgain) {
  World world;
  world.enrol_all();
  world.answer(kCy, "angles", "away");
  world.put("hold", propose_hold(world.fold, world.now));
  EXPECT_EQ(world.standing("angles"), "holds");
  world.put("lift", propose_lift(world.fold, world.now, kAnn, "over"));
  EXPECT_EQ(world.item("angles").why, "comes up again after the hold");
}

TEST(Break, ALongSilenceAsksTheLastItemAgain) {
  World world;
  world.enrol_all();
  world.answer(kCy, "angles", "away");
  world.pass(15 * kMinute_ms);
  world.put("answer", propose_answer(world.fold, world.now, kCy, "water", {{}, 40'000, {}}, 0));
  EXPECT_EQ(world.item("angles").why, "comes up again after a break");
}

TEST(Waiver, CoversOneFailureAndANewOneCancelsIt) {
  World world;
  world.enrol_all();
  world.answer(kCy, "angles", "at people");
  EXPECT_THAT(refused(propose_waive(world.fold, world.now, kBo, "angles", "x y")),
              HasSubstr("may not"));
  EXPECT_THAT(refused(propose_waive(world.fold, world.now, kAnn, "angles", "ok")),
              HasSubstr("reason"));
  const auto n =
      world.put("waive", propose_waive(world.fold, world.now, kAnn, "angles", "rack is empty"));
  EXPECT_EQ(world.standing("angles"), "refused");
  EXPECT_THAT(refused(propose_second(world.fold, world.now, kAnn, n)), HasSubstr("sign twice"));
  world.second(kBo, n);
  EXPECT_EQ(world.standing("angles"), "waived");
  EXPECT_THAT(world.item("angles").why, HasSubstr("waived by Ann and Bo: rack is empty"));
  world.answer(kCy, "angles", "at people");
  EXPECT_EQ(world.standing("angles"), "refused") << "the same words, but a new failure";
}

TEST(Waiver, NobodyWaivesAPersonInTheFieldOrAKey) {
  World world;
  world.ready();
  world.put("in", propose_in(world.fold, world.now, "Cy", {}));
  EXPECT_THAT(refused(propose_waive(world.fold, world.now, kAnn, "field", "he is quick")),
              HasSubstr("cannot be waived"));
  EXPECT_THAT(refused(propose_waive(world.fold, world.now, kAnn, "key", "no need")),
              HasSubstr("cannot be waived"));
  EXPECT_THAT(refused(propose_waive(world.fold, world.now, kAnn, "wind", "no need")),
              HasSubstr("needs no waiver"));
}

}  // namespace
}  // namespace walkdown::day
