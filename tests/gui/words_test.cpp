// SPDX-License-Identifier: Apache-2.0
#include "gui/look/words.h"

#include <gtest/gtest.h>

namespace walkdown::gui {
namespace {

TEST(Words, NumbersTakePointAndComma) {
  EXPECT_EQ(milli_from("2.5"), 2500);
  EXPECT_EQ(milli_from(" 2,5 "), 2500);
  EXPECT_EQ(milli_from("-0,001"), -1);
  EXPECT_EQ(milli_from(""), std::nullopt);
  EXPECT_EQ(milli_from("1.234,5"), std::nullopt);
  EXPECT_EQ(milli_from("nan"), std::nullopt);
  EXPECT_EQ(milli_from("9 m"), std::nullopt);
}

TEST(Words, SpansAreReadAtAGlance) {
  EXPECT_EQ(span_words(12'000), "12 s");
  EXPECT_EQ(span_words(249'000), "4:09 min");
  EXPECT_EQ(span_words(599'000), "9:59 min");
  EXPECT_EQ(span_words(1'230'000), "20 min");
  EXPECT_EQ(span_words(7'500'000), "2 h 05");
  EXPECT_EQ(span_words(-61'000), QString::fromUtf8("\u2212") + "1:01 min");
}

TEST(Words, WhatIsKeptHasItsDateAndItsZone) {
  EXPECT_EQ(zone_words(0), "UTC");
  EXPECT_EQ(zone_words(2 * 3600), "UTC+2");
  EXPECT_EQ(zone_words(-(3 * 3600 + 1800)), QString::fromUtf8("UTC\u22123:30"));
  const QString said = moment_words(1'783'201'503'000);  // 2026-07-04 21:45:03 UTC
  EXPECT_TRUE(said.startsWith("2026-07-0")) << said.toStdString();
  EXPECT_TRUE(said.contains(":03 UTC")) << said.toStdString();
}

}  // namespace
}  // namespace walkdown::gui
