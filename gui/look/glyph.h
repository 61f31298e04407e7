// SPDX-License-Identifier: Apache-2.0
// The marks of verdicts: a shape and a letter each, so that no meaning hangs on colour.
//
//   fits      F  disc                 unsteady  U  hexagon
//   doubtful  D  diamond              stray     X  star of four points
//   low       L  triangle, point down unread    N  hollow square
//   high      H  triangle, point up   stale     T  hourglass
//   open      O  square, one side missing
//   short     S  bar from side to side
//
// Too small for a shape, a cell is a bar: the taller, the more it wants somebody.
#pragma once

#include <QChar>
#include <QPainterPath>
#include <QPixmap>

#include "gui/look/palette.h"

namespace walkdown::gui {

[[nodiscard]] QChar letter(match::Verdict verdict);
// Within the unit square.
[[nodiscard]] QPainterPath shape(match::Verdict verdict);
// Share of the cell's height that its bar takes.
[[nodiscard]] double bar_height(match::Verdict verdict);

// Below this edge in pixels a cell is a bar; from it on a shape; and from the second on with
// letter.
inline constexpr double kShapeFrom_px = 9;
inline constexpr double kLetterFrom_px = 15;

// Draws the mark into `box`, with its letter where there is room.
void draw_mark(QPainter& painter, const QRectF& box, match::Verdict verdict,
               const Palette& palette);
[[nodiscard]] QPixmap mark_pixmap(match::Verdict verdict, const Palette& palette, int size_px,
                                  qreal ratio);

}  // namespace walkdown::gui
