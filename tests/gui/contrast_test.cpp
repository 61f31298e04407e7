// SPDX-License-Identifier: Apache-2.0
#include "gui/look/contrast.h"

#include <gtest/gtest.h>

#include <QLineEdit>

#include "gui/look/glyph.h"
#include "gui/look/look.h"
#include "gui/look/palette.h"

namespace walkdown::gui {
namespace {

class EveryLight : public ::testing::TestWithParam<Light> {};
INSTANTIATE_TEST_SUITE_P(Palettes, EveryLight,
                         ::testing::Values(Light::day, Light::dusk, Light::night));

// WCAG 2.2: black on white is 21:1; #767676 on white is the well-known 4.54:1 (from memory).
TEST(Contrast, AgreesWithPublishedPairs) {
  EXPECT_NEAR(contrast(QColor(0, 0, 0), QColor(255, 255, 255)), 21.0, 1e-9);
  EXPECT_NEAR(contrast(QColor(0x76, 0x76, 0x76), QColor(255, 255, 255)), 4.54, 0.005);
  EXPECT_NEAR(contrast(QColor(255, 0, 0), QColor(0, 0, 0)), 5.25, 0.01);
}

// What an empty line is for is said as strongly as other quiet text; Qt would halve it.
TEST_P(EveryLight, WhatAnEmptyLineSaysCanBeRead) {
  dress_application({GetParam(), 100});
  QLineEdit line;
  line.setPlaceholderText("M01/R1/P05");
  line.show();
  EXPECT_EQ(line.palette().color(QPalette::PlaceholderText), palette(GetParam())[Tone::quiet]);
}

TEST_P(EveryLight, PairingsReachTheirContrast) {
  const Palette& it = palette(GetParam());
  for (const Pairing& pair : pairings()) {
    EXPECT_GE(contrast(it[pair.front], it[pair.back]), pair.least)
        << static_cast<int>(pair.front) << " on " << static_cast<int>(pair.back);
  }
}

TEST_P(EveryLight, MarksAreSeenAndTheirLettersRead) {
  const Palette& it = palette(GetParam());
  for (std::size_t v = 0; v < match::kVerdicts; ++v) {
    const Mark& mark = it.verdicts.at(v);
    EXPECT_GE(contrast(mark.ink, mark.fill), kTextContrast) << v;
    EXPECT_GE(contrast(mark.edge, it[Tone::ground]), kShapeContrast) << v;
  }
}

TEST(NightPalette, IsDeepRedAndNothingIsBrighterThanItsText) {
  const Palette& night = palette(Light::night);
  const auto red = [&](const QColor& colour) {
    EXPECT_EQ(colour.green(), 0);
    EXPECT_EQ(colour.blue(), 0);
    EXPECT_LE(luminance(colour), luminance(night[Tone::text]));
  };
  for (const QColor& tone : night.tones) red(tone);
  for (const Mark& mark : night.verdicts) {
    red(mark.fill);
    red(mark.ink);
    red(mark.edge);
  }
}

// No meaning by colour alone: two verdicts never share both letter and shape.
TEST(Marks, HaveEachTheirOwnLetterAndShape) {
  for (std::size_t a = 0; a < match::kVerdicts; ++a) {
    for (std::size_t b = a + 1; b < match::kVerdicts; ++b) {
      const auto first = static_cast<match::Verdict>(a);
      const auto second = static_cast<match::Verdict>(b);
      EXPECT_NE(letter(first), letter(second));
      EXPECT_NE(shape(first), shape(second));
    }
  }
}

}  // namespace
}  // namespace walkdown::gui
