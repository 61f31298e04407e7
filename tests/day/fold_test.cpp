// SPDX-License-Identifier: Apache-2.0
// Answers, stages, signatures, the release and what brings it down.
#include "checklist/day/fold.h"

#include <gmock/gmock.h>

#include "world.h"

namespace walkdown::day {
namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::IsEmpty;

std::string refused(const Result<Body>& body) { return body ? "" : body.error().sentence(); }

TEST(Fold, AWholeDay) {
  World world;
  world.ready();
  EXPECT_THAT(world.state().against, IsEmpty());
  EXPECT_EQ(world.state().word, "ready");
  const auto n = world.put("release", propose_release(world.fold, world.now, kAnn));
  EXPECT_EQ(world.state().release.word, ReleaseWord::pending);
  world.second(kBo, n);
  const State state = world.state();
  EXPECT_EQ(state.release.word, ReleaseWord::stands);
  EXPECT_EQ(state.word, "released");
  EXPECT_EQ(state.release.by, "Ann");
  EXPECT_EQ(state.release.second, "Bo");
  EXPECT_EQ(state.release.until_at_ms, world.now.at_ms + 20 * kMinute_ms);  // the edge goes first
  EXPECT_EQ(state.ignored_count, 0U);
  EXPECT_EQ(to_json(state).dump(), world.replayed());
}

TEST(Fold, ReleaseFallsByItselfWithTheFirstThingUnderIt) {
  World world;
  world.released();
  world.pass(20 * kMinute_ms - 1);
  EXPECT_EQ(world.state().release.word, ReleaseWord::stands);
  world.pass(1);
  EXPECT_EQ(world.state().release.word, ReleaseWord::fallen);
  EXPECT_THAT(world.state().release.why, HasSubstr("edge is expired"));
  world.write("note", {{"text", "late"}});
  world.answer(kBo, "edge", "nobody");
  EXPECT_EQ(world.state().release.word, ReleaseWord::fallen) << "it does not come back by itself";
}

struct Blow {
  const char* kind;
  const char* body;
  const char* why;
};

class WhatBringsItDown : public testing::TestWithParam<Blow> {};

TEST_P(WhatBringsItDown, Falls) {
  World world;
  world.released();
  world.write(GetParam().kind, Body::parse(GetParam().body));
  EXPECT_EQ(world.state().release.word, ReleaseWord::fallen);
  EXPECT_THAT(world.state().release.why, HasSubstr(GetParam().why));
  EXPECT_EQ(to_json(world.state()).dump(), world.replayed());
}

INSTANTIATE_TEST_SUITE_P(
    Fold, WhatBringsItDown,
    testing::Values(Blow{"hold", "{}", "somebody called a hold"},
                    Blow{"hold", R"({"by":"Cy","reason":"smoke"})", "Cy called a hold: smoke"},
                    Blow{"in", R"({"person":"a stranger"})", "a stranger is in the field"},
                    Blow{"tag-hang", R"({"person":"Cy"})", "the tag of Cy"},
                    Blow{"thunder", "{}", "thunder: wait until 19:30"},
                    Blow{"rehook", R"({"pins":["M01/R1/P01"]})", "1 is unread"},
                    Blow{"reading", R"({"pin":"M01/R1/P01"})", "a pin was read"},
                    Blow{"suspended", "{}", "the machine slept"},
                    Blow{"clock-step", R"({"by_ms":5000})", "clock stepped"},
                    Blow{"wind",
                         R"({"from":"instrument","mean_mm_per_s":5000,"gust_mm_per_s":11001,
                             "period_ms":600000})",
                         "gusts of 11.1 m/s are above 11.0 m/s"},
                    Blow{"withdraw", R"({"reason":"rain"})", "withdrew it: rain"},
                    Blow{"close", "{}", "closed"}));

// The item asks for 10 min; somebody reads a gust above its limit over 2 min.
TEST(Fold, AGustAboveTheLimitCountsHoweverItsMeanWasTaken) {
  World world;
  world.released();
  const auto blow = [&](std::int64_t gust_mm_per_s, std::int64_t period_ms) {
    world.put("wind",
              propose_wind(world.fold, world.now, std::nullopt, {5'000, gust_mm_per_s, period_ms}));
  };
  blow(10'900, 120'000);
  EXPECT_EQ(world.state().release.word, ReleaseWord::stands);
  blow(14'000, 120'000);
  EXPECT_EQ(world.state().release.word, ReleaseWord::fallen);
  EXPECT_EQ(world.item("wind").why, "gusts of 14.0 m/s are above 11.0 m/s, over 2 min");
  blow(8'000, 600'000);
  EXPECT_EQ(world.standing("wind"), "holds") << "read again over its own time";
}

TEST(Fold, OnlyAReleaseThatIsThereIsTakenBack) {
  World world;
  world.ready();
  const auto refusal = [&] { return refused(propose_withdraw(world.fold, world.now, "Cy", "")); };
  EXPECT_THAT(refusal(), HasSubstr("nothing is released, so nothing can be taken back; call a"));
  world.write("withdraw", Body::object());
  EXPECT_EQ(world.state().release.word, ReleaseWord::none);
  EXPECT_EQ(world.state().ignored_count, 1U);
  const auto n = world.put("release", propose_release(world.fold, world.now, kAnn));
  EXPECT_EQ(refusal(), "") << "one that waits for its second signature can be";
  world.second(kBo, n);
  EXPECT_EQ(refusal(), "");
  world.pass(20 * kMinute_ms);
  EXPECT_THAT(refusal(), HasSubstr("nothing is released")) << "it fell between two entries";
}

TEST(Fold, NoSecondSignatureByTheSamePersonInAnyRole) {
  World world;
  world.ready();
  world.put("enrol", propose_enrol(world.fold, world.now, "Ann", "safety", "vkey of Ann"));
  const auto n = world.put("release", propose_release(world.fold, world.now, kAnn));
  const Who ann_too{"Ann", "safety"};
  EXPECT_THAT(refused(propose_second(world.fold, world.now, ann_too, n)), HasSubstr("sign twice"));
  world.sign(ann_too, "second", {{"of", n}, {"what", "the release"}});
  EXPECT_EQ(world.state().release.word, ReleaseWord::pending);
  EXPECT_THAT(world.state().ignored.back().why, HasSubstr("one person cannot sign twice"));
}

TEST(Fold, OneKeyIsOnePerson) {
  World world;
  world.enrol_all();
  EXPECT_THAT(refused(propose_enrol(world.fold, world.now, "Annie", "safety", "vkey of Ann")),
              HasSubstr("name or key is that of Ann"));
  EXPECT_THAT(refused(propose_enrol(world.fold, world.now, "Ann", "safety", "vkey of Bo")),
              HasSubstr("name or key"));
}

TEST(Fold, WrongRoleIsRefusedBeforeAndIgnoredAfter) {
  World world;
  world.enrol_all();
  EXPECT_THAT(refused(propose_answer(world.fold, world.now, kBo, "angles", {"away", {}, {}}, 0)),
              HasSubstr("Bo may not do this as safety"));
  world.sign(kBo, "answer", {{"item", "angles"}, {"value", "away"}});
  EXPECT_EQ(world.standing("angles"), "open");
  EXPECT_EQ(world.state().ignored_count, 1U);
  world.sign({"Bo", "crew"}, "answer", {{"item", "angles"}, {"value", "away"}});
  EXPECT_EQ(world.standing("angles"), "open");
}

TEST(Fold, ASignatureVouchesForNothingButItsOwnEntry) {
  World world;
  world.enrol_all();
  Body body = {{"item", "angles"}, {"value", "at people"}, {"by", "Cy"}, {"role", "crew"}};
  body["signoff"] = plain_note(kCy, statement(world.fold.checklist(), "answer", body));
  body["value"] = "away";
  world.write("answer", body);
  EXPECT_EQ(world.standing("angles"), "open");
  EXPECT_THAT(world.state().ignored.back().why, HasSubstr("states something else"));
  body.erase("signoff");
  world.write("answer", body);
  EXPECT_THAT(world.state().ignored.back().why, HasSubstr("not signed"));
  body["by"] = "Ann";
  body["role"] = "lead";
  body["signoff"] = plain_note(kCy, statement(world.fold.checklist(), "answer", body));
  world.write("answer", body);
  EXPECT_THAT(world.state().ignored.back().why, HasSubstr("signed by Cy as crew, not by Ann"));
}

TEST(Fold, ARefusingAnswerNeedsNoSecondSignature) {
  World world;
  world.enrol_all();
  world.put("answer", propose_answer(world.fold, world.now, kCy, "water", {{}, 19'999, {}}, 0));
  EXPECT_EQ(world.standing("water"), "refused");
  EXPECT_EQ(world.item("water").why, "19.999 l is below 20 l");
}

TEST(Fold, AnAnswerWaitsForItsSecondSignature) {
  World world;
  world.enrol_all();
  const auto n =
      world.put("answer", propose_answer(world.fold, world.now, kCy, "water", {{}, 20'000, {}}, 0));
  EXPECT_EQ(world.standing("water"), "open");
  EXPECT_THAT(refused(propose_second(world.fold, world.now, kCy, n)), HasSubstr("sign twice"));
  EXPECT_THAT(refused(propose_second(world.fold, world.now, kAnn, n)), HasSubstr("may not"));
  ASSERT_EQ(world.state().waiting.size(), 1U);
  world.second(kBo, n);
  EXPECT_EQ(world.standing("water"), "holds");
  EXPECT_THAT(world.state().waiting, IsEmpty());
  EXPECT_THAT(refused(propose_second(world.fold, world.now, kBo, n)), HasSubstr("waits for no"));
}

TEST(Fold, ASecondSignatureComesSoonOrNotAtAll) {
  World world;
  world.enrol_all();
  const auto n =
      world.put("answer", propose_answer(world.fold, world.now, kCy, "water", {{}, 20'000, {}}, 0));
  world.pass(10 * kMinute_ms + 1);
  EXPECT_THAT(refused(propose_second(world.fold, world.now, kBo, n)), HasSubstr("too old"));
}

TEST(Fold, AnAnswerUnderASecondIsKeptAndFlagged) {
  World world;
  world.enrol_all();
  world.put("answer", propose_answer(world.fold, world.now, kCy, "angles", {"away", {}, {}},
                                     world.now.up_ms - 999));
  EXPECT_TRUE(world.item("angles").fast);
  EXPECT_EQ(world.standing("angles"), "holds");
  world.put("answer", propose_answer(world.fold, world.now, kCy, "angles", {"away", {}, {}},
                                     world.now.up_ms - 1'000));
  EXPECT_FALSE(world.item("angles").fast);
}

TEST(Fold, OnlyWhatCanBeSeenIsAnAnswer) {
  World world;
  world.enrol_all();
  for (const char* value : {"n/a", "", "away "}) {
    EXPECT_FALSE(propose_answer(world.fold, world.now, kCy, "angles", {value, {}, {}}, 0)) << value;
  }
  EXPECT_FALSE(propose_answer(world.fold, world.now, kCy, "water", {"40 l", {}, {}}, 0));
  EXPECT_FALSE(propose_answer(world.fold, world.now, kCy, "loop", {"fits", {}, {}}, 0));
  EXPECT_FALSE(propose_answer(world.fold, world.now, kCy, "nothing", {"x", {}, {}}, 0));
}

TEST(Fold, AStageIsLockedUntilThePauseBeforeItCloses) {
  World world;
  world.enrol_all();
  EXPECT_THAT(refused(propose_answer(world.fold, world.now, kBo, "edge", {"nobody", {}, {}}, 0)),
              HasSubstr("has not begun"));
  EXPECT_THAT(refused(propose_pause(world.fold, world.now, kAnn, "set")),
              HasSubstr("angles is open"));
  EXPECT_TRUE(world.state().stages[1].locked);
  EXPECT_THAT(refused(propose_pause(world.fold, world.now, kAnn, "clear")), HasSubstr("not begun"));
}

TEST(Fold, TheReleaseIsThePauseBeforeTheStageAfterIt) {
  World world;
  world.ready();
  EXPECT_THAT(refused(propose_pause(world.fold, world.now, kAnn, "clear")),
              HasSubstr("release itself"));
  EXPECT_THAT(
      refused(propose_answer(world.fold, world.now, kAnn, "last-shot", {"21:58", {}, {}}, 0)),
      HasSubstr("has not begun"));
  world.second(kBo, world.put("release", propose_release(world.fold, world.now, kAnn)));
  world.answer(kAnn, "last-shot", "19:10, cue 42");
  EXPECT_EQ(world.standing("rest"), "open");
  EXPECT_EQ(world.item("rest").ready_at_ms, world.now.at_ms + 15 * kMinute_ms);
  world.pass(15 * kMinute_ms);
  EXPECT_EQ(world.standing("rest"), "holds");
}

TEST(Fold, NeedsMustHoldWhenAnswered) {
  World world;
  world.ready();
  world.put("in", propose_in(world.fold, world.now, "Cy", {"Jetty"}));
  EXPECT_EQ(world.standing("edge"), "broken");
  EXPECT_THAT(refused(propose_answer(world.fold, world.now, kBo, "edge", {"nobody", {}, {}}, 0)),
              HasSubstr("edge rests on field, which is open: Cy is in the field"));
}

TEST(Fold, NoReleaseWhileAnythingIsAgainstIt) {
  World world;
  world.enrol_all();
  EXPECT_THAT(refused(propose_release(world.fold, world.now, kAnn)), HasSubstr("the gate is shut"));
  world.sign(kAnn, "release", Body::object());
  EXPECT_EQ(world.state().release.word, ReleaseWord::none);
  EXPECT_THAT(world.state().against, Contains(HasSubstr("pause after \"Set\"")));
}

TEST(Fold, ThePendingReleaseFallsToo) {
  World world;
  world.ready();
  const auto n = world.put("release", propose_release(world.fold, world.now, kAnn));
  world.put("hold", propose_hold(world.fold, world.now, "Cy", "dog"));
  world.put("lift", propose_lift(world.fold, world.now, kAnn, "dog is gone"));
  world.answer(kBo, "edge", "nobody");
  EXPECT_THAT(refused(propose_second(world.fold, world.now, kBo, n)), HasSubstr("waits for no"));
}

TEST(Fold, ChangesSayWhy) {
  World world;
  world.released();
  const State before = world.state();
  world.write("in", {{"person", "Cy"}, {"positions", {"Jetty"}}});
  const auto said = changes(world.fold.checklist(), before, world.state());
  EXPECT_THAT(said, Contains("edge is broken: Cy went into the field"));
  EXPECT_THAT(said, Contains("Cy is in the field"));
  EXPECT_THAT(said, Contains("the release fell: Cy is in the field"));
}

TEST(Fold, ChangesAreQuietAboutStagesThatAreOverOrHaveNotBegun) {
  World world;
  world.enrol_all();
  const State first = world.state();
  world.answer(kCy, "angles", "away");
  for (const auto& said : changes(world.fold.checklist(), first, world.state())) {
    EXPECT_THAT(said, testing::StartsWith("angles ")) << "the rest is locked";
  }
  World late;
  late.released();
  late.pass(10 * kMinute_ms);
  late.answer(kAnn, "last-shot", "21:07, cue 9");
  late.put("withdraw", propose_withdraw(late.fold, late.now, "Ann", "the show is over"));
  const State after = late.state();
  EXPECT_TRUE(after.stages.at(1).over);
  EXPECT_FALSE(after.stages.at(2).over);
  late.write("in", {{"person", "Cy"}, {"positions", {"Jetty"}}});
  EXPECT_THAT(changes(late.fold.checklist(), after, late.state()),
              testing::ElementsAre("Cy is in the field"));
}

TEST(Fold, AnyBodyIsSurvived) {
  World world;
  world.enrol_all();
  for (const char* kind :
       {"enrol",     "answer",    "second",   "pause",     "wind",       "thunder",  "in",
        "out",       "tag-hang",  "tag-back", "key-offer", "key-give",   "key-put",  "key-take",
        "hold",      "lift",      "waive",    "waive-pin", "release",    "withdraw", "rehook",
        "suspended", "show-time", "reading",  "resumed",   "clock-step", "other"}) {
    for (const char* body : {"null", "3", "[]", "{}", R"({"by":3,"item":[],"of":-1,"person":null})",
                             R"({"of":18446744073709551615,"pins":[3],"positions":"x"})"}) {
      world.write(kind, Body::parse(body));
    }
  }
  EXPECT_EQ(to_json(world.state()).dump(), world.replayed());
}

}  // namespace
}  // namespace walkdown::day
