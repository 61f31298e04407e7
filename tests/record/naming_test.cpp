// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/naming.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/record/sample.h"

namespace walkdown::record {
namespace {

TEST(NamingTest, WordsOfTheirOwn) {
  EXPECT_TRUE(has_phrase("I am Jon Weir.", "jon"));
  EXPECT_TRUE(has_phrase("\xE2\x80\x94 Jon_Weir uKz", "Jon"));
  EXPECT_TRUE(has_phrase("JON", "Jon"));
  EXPECT_FALSE(has_phrase("Jonas", "Jon"));
  EXPECT_FALSE(has_phrase("Major Jonas", "Jon"));
  EXPECT_TRUE(has_phrase("Jonas or Jon", "Jon")) << "the second place counts";
  EXPECT_FALSE(has_phrase("Zo\xC3\xAB", "Zo")) << "a byte beyond ASCII is part of a word";
  EXPECT_FALSE(has_phrase("anything", ""));
}

TEST(NamingTest, AnyStringOfABodyAndItsKeys) {
  const std::vector<std::string> phrases{"Weir"};
  EXPECT_TRUE(says({{"a", {{"b", {1, "to Jon Weir"}}}}}, phrases));
  EXPECT_TRUE(says({{"a", {{"Weir", 1}}}}, phrases));
  EXPECT_FALSE(says({{"a", {{"b", {1, true, nullptr, "weird"}}}}}, phrases));
}

TEST(NamingTest, PartsAndKeysOfAPerson) {
  const Person lead = test::lead_person();
  const auto phrases = phrases_of(lead.name, {lead, test::witness_person()});
  EXPECT_THAT(phrases, ::testing::Contains(lead.name));
  EXPECT_THAT(phrases, ::testing::Contains(lead.key.name));
  EXPECT_THAT(phrases_of("Al de Vries-North", {}),
              ::testing::ElementsAre("Al de Vries-North", "Vries", "North"));
}

}  // namespace
}  // namespace walkdown::record
