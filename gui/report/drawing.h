// SPDX-License-Identifier: Apache-2.0
// The report's drawings as images. Qt's SVG knows no patterns (SVG Tiny 1.2), and what is hatched
// on the page would be missing: each pattern is painted in a colour of its own, and hatched after.
#pragma once

#include <QByteArray>
#include <QImage>

namespace walkdown::gui {

inline constexpr int kSharp = 3;  // pixels of a drawing for one of the page

// Of a QR code; the others are charts, and name their class.
[[nodiscard]] bool is_code(const QByteArray& svg);

// A code is as large as the page has it; all else at most `width_px` wide on the
// page; null where the text is no SVG.
[[nodiscard]] QImage drawing(QByteArray svg, int width_px);

}  // namespace walkdown::gui
