// SPDX-License-Identifier: Apache-2.0
#include "gui/look/glyph.h"

#include <QPainter>
#include <array>
#include <string_view>

namespace walkdown::gui {
namespace {

using match::Verdict;

QPainterPath polygon(std::initializer_list<QPointF> points) {
  QPainterPath path;
  path.addPolygon(QPolygonF(points));
  path.closeSubpath();
  return path;
}

QPainterPath disc() {
  QPainterPath path;
  path.addEllipse(QRectF(0.06, 0.06, 0.88, 0.88));
  return path;
}

QPainterPath box(const QRectF& rect) {
  QPainterPath path;
  path.addRect(rect);
  return path;
}

// Room for a letter in the middle; the gap is at the right.
QPainterPath open_box() {
  return polygon(
      {{0.06, 0.06}, {0.94, 0.06}, {0.78, 0.32}, {0.78, 0.68}, {0.94, 0.94}, {0.06, 0.94}});
}

QPainterPath star() {
  return polygon({{0.0, 0.0},
                  {0.5, 0.18},
                  {1.0, 0.0},
                  {0.82, 0.5},
                  {1.0, 1.0},
                  {0.5, 0.82},
                  {0.0, 1.0},
                  {0.18, 0.5}});
}

}  // namespace

QChar letter(Verdict verdict) {
  static constexpr std::string_view kLetters = "FDLHOSUXNT";
  return QChar::fromLatin1(kLetters.at(static_cast<std::size_t>(verdict)));
}

QPainterPath shape(Verdict verdict) {
  switch (verdict) {
    case Verdict::fits:
      return disc();
    case Verdict::doubtful:
      return polygon({{0.5, 0.0}, {1.0, 0.5}, {0.5, 1.0}, {0.0, 0.5}});
    case Verdict::low:
      return polygon({{0.0, 0.08}, {1.0, 0.08}, {0.62, 1.0}, {0.38, 1.0}});
    case Verdict::high:
      return polygon({{0.38, 0.0}, {0.62, 0.0}, {1.0, 0.92}, {0.0, 0.92}});
    case Verdict::open:
      return open_box();
    case Verdict::shorted:
      return box({0.0, 0.2, 1.0, 0.6});
    case Verdict::unsteady:
      return polygon(
          {{0.25, 0.04}, {0.75, 0.04}, {1.0, 0.5}, {0.75, 0.96}, {0.25, 0.96}, {0.0, 0.5}});
    case Verdict::stray:
      return star();
    case Verdict::unread:
      return box({0.08, 0.08, 0.84, 0.84});
    case Verdict::stale:
      return polygon(
          {{0.04, 0.04}, {0.96, 0.04}, {0.74, 0.5}, {0.96, 0.96}, {0.04, 0.96}, {0.26, 0.5}});
  }
  return {};
}

double bar_height(Verdict verdict) {
  switch (verdict) {
    case Verdict::fits:
      return 0.4;
    case Verdict::unread:
    case Verdict::stale:
      return 0.15;
    case Verdict::doubtful:
    case Verdict::unsteady:
      return 0.7;
    default:
      return 1.0;
  }
}

void draw_mark(QPainter& painter, const QRectF& box, Verdict verdict, const Palette& palette) {
  const Mark& mark = palette.of(verdict);
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  painter.translate(box.topLeft());
  painter.scale(box.width(), box.height());
  QPen pen(mark.edge, 1.5);
  pen.setCosmetic(true);
  painter.setPen(pen);
  painter.setBrush(mark.fill);
  painter.drawPath(shape(verdict));
  painter.restore();
  if (box.height() < kLetterFrom_px) return;
  QFont font = painter.font();
  font.setBold(true);
  font.setPixelSize(static_cast<int>(box.height() * 0.56));
  painter.save();
  painter.setFont(font);
  painter.setPen(mark.ink);
  painter.drawText(box, Qt::AlignCenter, QString(letter(verdict)));
  painter.restore();
}

QPixmap mark_pixmap(Verdict verdict, const Palette& palette, int size_px, qreal ratio) {
  QPixmap pixmap(QSize(size_px, size_px) * ratio);
  pixmap.setDevicePixelRatio(ratio);
  pixmap.fill(Qt::transparent);
  QPainter painter(&pixmap);
  draw_mark(painter, QRectF(0.5, 0.5, size_px - 1.0, size_px - 1.0), verdict, palette);
  return pixmap;
}

}  // namespace walkdown::gui
