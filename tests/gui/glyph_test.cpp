// SPDX-License-Identifier: Apache-2.0
#include "gui/look/glyph.h"

#include <gtest/gtest.h>

#include <QImage>

namespace walkdown::gui {
namespace {

TEST(Marks, StayInsideTheirCell) {
  for (std::size_t v = 0; v < match::kVerdicts; ++v) {
    const QRectF box = shape(static_cast<match::Verdict>(v)).boundingRect();
    EXPECT_TRUE(QRectF(-1e-6, -1e-6, 1 + 2e-6, 1 + 2e-6).contains(box)) << v;
  }
}

// Drawn without colour the marks still differ from one another.
TEST(Marks, DifferInGreyToo) {
  std::vector<QImage> drawn;
  for (std::size_t v = 0; v < match::kVerdicts; ++v) {
    drawn.push_back(mark_pixmap(static_cast<match::Verdict>(v), palette(Light::night), 24, 1)
                        .toImage()
                        .convertToFormat(QImage::Format_Grayscale8));
  }
  for (std::size_t a = 0; a < drawn.size(); ++a) {
    for (std::size_t b = a + 1; b < drawn.size(); ++b) EXPECT_NE(drawn[a], drawn[b]) << a << b;
  }
}

TEST(Marks, BarsOfWhatDoesNotFitStandAboveThoseThatFit) {
  for (const auto bad : {match::Verdict::open, match::Verdict::shorted, match::Verdict::high,
                         match::Verdict::low, match::Verdict::doubtful, match::Verdict::stray}) {
    EXPECT_GT(bar_height(bad), bar_height(match::Verdict::fits) + 0.2);
  }
  EXPECT_LT(bar_height(match::Verdict::unread), bar_height(match::Verdict::fits));
}

}  // namespace
}  // namespace walkdown::gui
