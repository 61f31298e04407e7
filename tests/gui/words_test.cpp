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
  EXPECT_EQ(span_words(7'500'000), "2 h 05");
  EXPECT_EQ(span_words(-61'000), QString::fromUtf8("\u2212") + "1:01 min");
}

}  // namespace
}  // namespace walkdown::gui
