// SPDX-License-Identifier: Apache-2.0
#include "checklist/audit/field.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "checklist/audit/claim.h"
#include "tests/audit/small_field.h"

namespace walkdown::audit {
namespace {

using match::Verdict;
using testing::HasSubstr;

Verdict verdict_of(const Field& field, plan::PinId pin) {
  for (const auto& verdict : field.diagnose().pins) {
    if (verdict.pin == pin) return verdict.verdict;
  }
  return Verdict::stray;
}

void read_all(Field& field, Entries& entries) {
  for (int i = 0; i < 6; ++i) {
    ASSERT_EQ(field.take(entries.reading(field, planned_line(i))), std::nullopt);
  }
}

TEST(Field, NothingReadIsNothingGood) {
  const Field field = small_field();
  for (const auto& pin : field.diagnose().pins) EXPECT_EQ(pin.verdict, Verdict::unread);
}

TEST(Field, ReadingsOfThePlanFit) {
  Field field = small_field();
  Entries entries;
  read_all(field, entries);
  for (const auto& pin : field.diagnose().pins) EXPECT_EQ(pin.verdict, Verdict::fits);
  EXPECT_EQ(field.readings(), 6U);
}

TEST(Field, ARehookMakesReadingsStaleUntilReadAgain) {
  Field field = small_field();
  Entries entries;
  read_all(field, entries);
  Rehook rehook;
  rehook.pins = {{1, 1, 2}};
  ASSERT_EQ(field.take(entries.make(kRehook, rehook_body(rehook))), std::nullopt);
  EXPECT_EQ(verdict_of(field, {1, 1, 2}), Verdict::stale);
  EXPECT_EQ(verdict_of(field, {1, 1, 3}), Verdict::fits);
  field.take(entries.reading(field, planned_line(1)));
  EXPECT_EQ(verdict_of(field, {1, 1, 2}), Verdict::fits);
}

TEST(Field, ARehookForgetsWhatWasReadBefore) {
  Field field = small_field();
  Entries entries;
  read_all(field, entries);
  field.take(entries.reading(field, "M01,R1,P02,OL,ohm"));
  EXPECT_NE(verdict_of(field, {1, 1, 2}), Verdict::fits);
  Rehook rehook;
  rehook.module = 1;
  field.take(entries.make(kRehook, rehook_body(rehook)));
  EXPECT_EQ(field.samples().size(), 2U) << "module 2 was not touched";
  for (int i = 0; i < 4; ++i) field.take(entries.reading(field, planned_line(i)));
  EXPECT_EQ(verdict_of(field, {1, 1, 2}), Verdict::fits);
}

TEST(Field, AReadingThatItsOwnLineDoesNotSayIsRefused) {
  Field field = small_field();
  Entries entries;
  tester::Reading reading;
  reading.pin = {1, 1, 2};
  reading.micro_ohm = 3430000;
  const auto why = field.take(entries.make(kReading, reading_body(reading, "M01,R1,P02,9.43,ohm")));
  ASSERT_TRUE(why.has_value());
  EXPECT_THAT(*why, HasSubstr("M01/R1/P02"));
  EXPECT_EQ(field.readings(), 0U);
  const auto moved =
      field.take(entries.make(kReading, reading_body(reading, "M01,R1,P03,3.43,ohm")));
  EXPECT_TRUE(moved.has_value()) << "the value is right and the pin is not";
}

TEST(Field, AClaimIsDerivedAgain) {
  Field field = small_field();
  Entries entries;
  read_all(field, entries);
  const auto honest = claim_body(field.diagnose());
  EXPECT_EQ(field.take(entries.make(kClaim, honest)), std::nullopt);
  auto better = honest;
  better["verdicts"]["fits"] = 7;
  EXPECT_TRUE(field.take(entries.make(kClaim, better)).has_value());
}

TEST(Field, AShowWithoutAPlanIsRefused) {
  EXPECT_FALSE(Field::open({{"show", nlohmann::json::object()}}).ok());
  EXPECT_FALSE(Field::open(nlohmann::json::object()).ok());
}

TEST(Field, OtherKindsDoNotTouchIt) {
  Field field = small_field();
  Entries entries;
  EXPECT_EQ(field.take(entries.make("weather", {{"any", 1}})), std::nullopt);
  EXPECT_EQ(field.take(entries.make(kRejected, rejected_body("???", "no pattern"))), std::nullopt);
  EXPECT_EQ(field.rejected(), 1U);
}

}  // namespace
}  // namespace walkdown::audit
