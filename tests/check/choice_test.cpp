// SPDX-License-Identifier: Apache-2.0
#include "checklist/check/choice.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "checklist/record/json_text.h"

namespace walkdown::check {
namespace {

using nlohmann::json;
using ::testing::HasSubstr;

// Two pins at North, one at South, one nowhere.
plan::Plan a_plan() {
  plan::Plan plan;
  const std::vector<std::pair<plan::PinId, std::string>> pins{
      {{1, 1, 1}, "North"}, {{1, 1, 2}, "North"}, {{2, 1, 1}, "South bank"}, {{2, 1, 2}, ""}};
  for (const auto& [id, position] : pins) {
    plan.pins.emplace_back();
    plan.pins.back().id = id;
    plan.pins.back().position = position;
  }
  return plan;
}

bool takes(const char* expression, const char* kind, const json& body, std::uint64_t n = 7,
           std::int64_t at_ms = 60'000) {
  auto choice = Choice::parse(expression);
  EXPECT_TRUE(choice) << choice.error().sentence();
  const auto key = record::SigningKey("Mara_Linde", record::Seed{}).verify_key();
  EXPECT_TRUE(choice->know(a_plan(), {{key, "Mara Linde", "lead"}}));
  std::string text;
  EXPECT_TRUE(record::append_json(body, text));
  return choice->takes({n, at_ms, 0, kind, text});
}

TEST(ChoiceTest, KindNumberAndTime) {
  EXPECT_TRUE(takes("kind=reading,claim", "claim", json::object()));
  EXPECT_FALSE(takes("kind=reading,claim", "note", json::object()));
  EXPECT_TRUE(takes("n=3..7", "note", json::object()));
  EXPECT_FALSE(takes("n=..6,8..", "note", json::object()));
  EXPECT_TRUE(takes("at=1970-01-01T00:01Z", "note", json::object())) << "the whole minute";
  EXPECT_TRUE(takes("at=..1970-01-01T00:01:00.000Z", "note", json::object()));
  EXPECT_FALSE(takes("at=1970-01-01T00:01:00.001Z..", "note", json::object()));
  EXPECT_TRUE(takes("kind=note and n=7", "note", json::object()));
  EXPECT_FALSE(takes("kind=note and n=8", "note", json::object()));
}

TEST(ChoiceTest, PinAndPosition) {
  const json reading{{"pin", "M01/R1/P02"}};
  EXPECT_TRUE(takes("pin=M1/R1/P2", "reading", reading));
  EXPECT_FALSE(takes("pin=M01/R1/P01", "reading", reading));
  EXPECT_TRUE(takes("position=North", "reading", reading));
  EXPECT_FALSE(takes("position=\"South bank\"", "reading", reading));
  EXPECT_TRUE(takes("position=\"South bank\"", "rehook", {{"module", 2}}));
  EXPECT_FALSE(takes("position=\"South bank\"", "rehook", {{"module", 1}}));
  EXPECT_TRUE(takes("pin=M02/R1/P02", "rehook", json::object())) << "the whole field";
  EXPECT_TRUE(takes("position=North", "in", {{"positions", {"North"}}}));
  EXPECT_FALSE(takes("position=North", "in", {{"positions", {"South bank"}}}));
  EXPECT_TRUE(takes("pin=M09/R1/P01", "reading", {{"pin", "M09/R1/P01"}})) << "a stray one";
  EXPECT_TRUE(takes("pin=M01/R1/P01", "claim", {{"findings", {{{"pins", {"M01/R1/P01"}}}}}}));
}

TEST(ChoiceTest, Person) {
  EXPECT_TRUE(takes("person=\"Mara Linde\"", "in", {{"person", "Mara Linde"}}));
  EXPECT_TRUE(takes("person=\"Mara Linde\"", "note", {{"text", "by Mara_Linde"}}));
  EXPECT_FALSE(takes("person=\"Mara Linde\"", "in", {{"person", "Mara Lindemann"}}));
}

TEST(ChoiceTest, WhatIsWrongIsSaidWithWhatWouldBeRight) {
  const std::vector<std::pair<const char*, const char*>> wrong{
      {"", "write name=value"},
      {"reading", "write name=value"},
      {"kind=", "give a value"},
      {"kind=a,", "give a value"},
      {"kind=reading or n=1", "join terms by `and`"},
      {"kind=reading and", "join terms by `and`"},
      {"person=Mara Linde", "double quotes"},
      {"person=\"Mara", "close the double quotes"},
      {"pin=7", "M01/R1/P05"},
      {"n=-1", "3..7"},
      {"n=..", "3..7"},
      {"at=today", "UTC"},
      {"at=2026-02-30T10:00Z", "UTC"},
      {"colour=red", "choose by kind"}};
  for (const auto& [expression, says] : wrong) {
    const auto choice = Choice::parse(expression);
    ASSERT_FALSE(choice) << expression;
    EXPECT_EQ(choice.error().code, Code::usage);
    EXPECT_THAT(choice.error().sentence(), HasSubstr(says)) << expression;
  }
}

TEST(ChoiceTest, WhatTheRecordDoesNotKnowIsRefused) {
  auto nobody = Choice::parse("person=Nobody");
  EXPECT_THAT(nobody->know(a_plan(), {}).error().sentence(), HasSubstr("Nobody"));
  auto nowhere = Choice::parse("position=Nowhere");
  EXPECT_THAT(nowhere->know(a_plan(), {}).error().sentence(), HasSubstr("Nowhere"));
}

}  // namespace
}  // namespace walkdown::check
