// SPDX-License-Identifier: Apache-2.0
// 21 CFR 11.50: a signature shows the printed name, the date and time, and what is meant by it.
// 21 CFR 11.70: it cannot be cut out, copied or moved to another record.
#include "checklist/record/signoff.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include "checklist/record/utf8.h"
#include "tests/record/sample.h"

namespace walkdown::record {
namespace {

using test::field_clear;
using test::signed_by_lead;
using testing::HasSubstr;

Head some_head() { return {"origin/1", 12, leaf_hash("x"), 0, 0}; }

TEST(SignOffTest, ReadsAsPlainSentences) {
  const auto sentences = text(field_clear(some_head(), 1'783'191'731'123));
  ASSERT_TRUE(sentences.ok());
  EXPECT_EQ(*sentences,
            "This is a sign-off in a walkdown record.\nI am Mara Linde.\nMy role is lead.\n"
            "I state: nobody is left in the field.\nThe value is 0.\n"
            "The time is 2026-07-04T19:02:11.123Z.\nThe record is origin/1.\nIt has 12 entries.\n"
            "Its root is " +
                base64(some_head().root.data(), 32) + ".\n");
}

// 11.50 (a): name, date and time, meaning; (b) in the readable form, which is the signed text
// itself.
TEST(SignOffTest, ShowsNameTimeAndMeaning) {
  const std::string note = signed_by_lead(field_clear(some_head(), 1'783'191'731'123));
  EXPECT_THAT(note, HasSubstr("I am Mara Linde."));
  EXPECT_THAT(note, HasSubstr("2026-07-04T19:02:11.123Z"));
  EXPECT_THAT(note, HasSubstr("I state: nobody is left in the field."));
}

RC_GTEST_PROP(SignOffProperty, ComesBackFromItsSentences, ()) {
  const auto words =
      rc::gen::container<std::string>(rc::gen::element('a', ' ', '.', ':', '\n', 'i', 's', '"'));
  SignOff sign_off{
      *words,     "lead", *words, {}, *rc::gen::inRange<std::int64_t>(0, 4'000'000'000'000),
      some_head()};
  for (int i = *rc::gen::inRange(0, 4); i > 0; --i) {
    sign_off.facts.emplace_back(
        *rc::gen::element<std::string>("value", "item", "is", "time", "a b"), *words);
  }
  const auto sentences = text(sign_off);
  if (!sentences) return;  // a field that cannot be said; what can be said must come back
  const auto back = parse_sign_off(*sentences);
  RC_ASSERT(back.ok());
  RC_ASSERT(back->person == sign_off.person);
  RC_ASSERT(back->statement == sign_off.statement);
  RC_ASSERT(back->facts == sign_off.facts);
  RC_ASSERT(back->at_ms == sign_off.at_ms);
  RC_ASSERT(back->head.root == sign_off.head.root);
}

TEST(SignOffTest, FieldsThatWouldForgeASentenceAreRefused) {
  SignOff sign_off = field_clear(some_head(), 0);
  sign_off.statement = "yes.\nThe time is 2026-07-04T19:02:11.123Z";
  EXPECT_FALSE(text(sign_off).ok());
  sign_off = field_clear(some_head(), 0);
  sign_off.facts = {{"time", "never"}};
  EXPECT_FALSE(text(sign_off).ok());
  sign_off.facts = {{"value", "1"}, {"value", "2"}};
  EXPECT_FALSE(text(sign_off).ok());
}

TEST(SignOffTest, ByAnotherKeyIsForged) {
  const auto note = make_sign_off(field_clear(some_head(), 0), test::witness());
  const auto checked = check_sign_off(*note, {test::lead_person(), test::witness_person()});
  ASSERT_FALSE(checked.ok());
  EXPECT_EQ(checked.error().code, Code::forged);
}

struct SignOffInRecord : testing::Test {
  test::Scratch scratch;
  test::ManualClock clock;

  Writer begin(const std::string& name, const std::string& origin) {
    auto writer = Writer::create(scratch.path(name), {origin, {}}, test::station(), clock);
    EXPECT_TRUE(writer->append_and_wait(test::enrol(test::lead_person())).ok());
    return std::move(*writer);
  }
  std::string refusal(Writer& writer, const std::string& note) {
    const Done kept = writer.append_and_wait(test::sign_off(note));
    return kept.ok() ? "" : kept.error().sentence();
  }
};

TEST_F(SignOffInRecord, HoldsWhereItWasMade) {
  Writer writer = begin("a", "origin/1");
  EXPECT_EQ(refusal(writer, signed_by_lead(field_clear(writer.head(), clock.at))), "");
  EXPECT_TRUE(verify_file(scratch.path("a"))->holds);
}

TEST_F(SignOffInRecord, CannotBeMovedToAnotherRecord) {
  Writer one = begin("a", "origin/1");
  Writer two = begin("b", "origin/2");
  const std::string note = signed_by_lead(field_clear(one.head(), clock.at));
  EXPECT_THAT(refusal(two, note), HasSubstr("another record"));
  // Not even to one that took its name.
  Writer twin = begin("c", "origin/1");
  ASSERT_TRUE(one.append_and_wait(test::some_reading(1)).ok());
  ASSERT_TRUE(twin.append_and_wait(test::some_reading(2)).ok());
  EXPECT_THAT(refusal(twin, signed_by_lead(field_clear(one.head(), clock.at))),
              HasSubstr("not in shortly"));
}

TEST_F(SignOffInRecord, CannotBeMovedToAnotherMoment) {
  Writer writer = begin("a", "origin/1");
  const std::string note = signed_by_lead(field_clear(writer.head(), clock.at));
  clock.pass(kSignOffLifeMs + 1);
  EXPECT_THAT(refusal(writer, note), HasSubstr("too old"));
  // A fresh time on an old head does not help, nor an old time on a fresh head.
  const Head old = writer.head();
  ASSERT_TRUE(writer.append_and_wait(test::some_reading(1)).ok());
  EXPECT_THAT(refusal(writer, signed_by_lead(field_clear(old, clock.at))), HasSubstr("too old"));
  EXPECT_THAT(
      refusal(writer, signed_by_lead(field_clear(writer.head(), clock.at - kSignOffLifeMs - 1))),
      HasSubstr("another time"));
  EXPECT_THAT(refusal(writer, signed_by_lead(field_clear(writer.head(), clock.at + 60'000))),
              HasSubstr("another time"));
}

TEST_F(SignOffInRecord, CannotBeUsedTwice) {
  Writer writer = begin("a", "origin/1");
  const std::string note = signed_by_lead(field_clear(writer.head(), clock.at));
  EXPECT_EQ(refusal(writer, note), "");
  EXPECT_THAT(refusal(writer, note), HasSubstr("used before"));
}

TEST_F(SignOffInRecord, DoesNotReachBackOverARestart) {
  Head before;
  { before = begin("a", "origin/1").head(); }
  auto writer = Writer::resume(scratch.path("a"), test::station(), clock);
  ASSERT_TRUE(writer.ok());
  EXPECT_THAT(refusal(*writer, signed_by_lead(field_clear(before, clock.at))),
              HasSubstr("not in shortly"));
  EXPECT_EQ(refusal(*writer, signed_by_lead(field_clear(writer->head(), clock.at))), "");
  EXPECT_TRUE(verify_file(scratch.path("a"))->holds);
}

TEST_F(SignOffInRecord, OfSomebodyNotEnrolledIsRefused) {
  Writer writer = begin("a", "origin/1");
  SignOff sign_off = field_clear(writer.head(), clock.at);
  sign_off.person = "Ivo Brandt";
  EXPECT_THAT(refusal(writer, *make_sign_off(sign_off, test::witness())),
              HasSubstr("nobody is enrolled"));
}

TEST_F(SignOffInRecord, RefusedEntryLeavesNothingBehind) {
  Writer writer = begin("a", "origin/1");
  const Person ivo{test::witness().verify_key(), "Ivo Brandt", "crew"};
  ASSERT_FALSE(writer.append_and_wait({test::enrol(ivo), test::sign_off("no note")}).ok());
  // The enrolment of the refused append did not happen, so it can be made now.
  EXPECT_TRUE(writer.append_and_wait(test::enrol(ivo)).ok());
  EXPECT_TRUE(verify_file(scratch.path("a"))->holds);
}

TEST_F(SignOffInRecord, EnrolmentsDoNotContradictEachOther) {
  Writer writer = begin("a", "origin/1");
  Person again = test::lead_person();
  EXPECT_FALSE(writer.append(test::enrol(again)).ok());
  again.role = "crew";
  EXPECT_TRUE(writer.append(test::enrol(again)).ok());
  again.name = "Somebody Else";
  EXPECT_FALSE(writer.append(test::enrol(again)).ok());
  Person other = test::witness_person();
  other.key.name = test::lead_person().key.name;
  EXPECT_FALSE(writer.append(test::enrol(other)).ok());
}

}  // namespace
}  // namespace walkdown::record
