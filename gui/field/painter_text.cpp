// SPDX-License-Identifier: Apache-2.0
// Names and lines of the field: what is written on the ground, on modules and in large cells.
#include <algorithm>
#include <cmath>

#include "gui/field/painter.h"
#include "gui/look/words.h"

namespace walkdown::gui {
namespace {

constexpr double kModuleNameFrom_px = 7;
constexpr double kValuesFrom_px = 44;

Qt::PenStyle style_of(zone::Role role) {
  switch (role) {
    case zone::Role::audience:
      return Qt::DashLine;
    case zone::Role::structure:
      return Qt::SolidLine;
    case zone::Role::control:
      return Qt::DashDotLine;
    case zone::Role::exclusion:
      break;
  }
  return Qt::DotLine;
}

}  // namespace

void FieldPainter::ground(QPainter& painter, const Lens& lens) const {
  const Palette& palette = look_.palette();
  painter.setBrush(Qt::NoBrush);
  painter.setFont(look_.font(0.8));
  for (const Outline& outline : scene_->outlines) {
    QPolygonF line;
    line.reserve(outline.line.size());
    for (const QPointF& point : outline.line) line.append(lens.to_screen(point));
    painter.setPen(QPen(palette[Tone::edge], 1.5, style_of(outline.role)));
    if (outline.closed) {
      painter.drawPolygon(line);
    } else {
      painter.drawPolyline(line);
    }
  }
  outline_names(painter, lens);
  painter.setPen(QPen(palette[Tone::rule], 1));
  for (const PositionBlock& block : scene_->positions) {
    if (!block.on_site) continue;
    painter.drawLine(lens.to_screen(block.ground), lens.to_screen(block.box.center()));
  }
}

// At the highest point of the outline, inside it where it is a ring. A name that would lie under a
// position or on another name waits until there is room.
void FieldPainter::outline_names(QPainter& painter, const Lens& lens) const {
  const QFontMetricsF metrics(painter.font());
  std::vector<QRectF> taken;
  taken.reserve(scene_->positions.size() + scene_->outlines.size());
  for (const PositionBlock& block : scene_->positions) taken.push_back(lens.to_screen(block.box));
  for (const Outline& outline : scene_->outlines) {
    if (outline.line.isEmpty()) continue;
    const QRectF box = lens.to_screen(outline.line.boundingRect());
    const double wide = metrics.horizontalAdvance(outline.name);
    // Not out of the picture, as far as that can be helped.
    const double right = painter.viewport().width();
    const double left =
        box.left() < right ? std::min(box.left() + 4, right - wide - 4.0) : box.left() + 4;
    const QRectF plate(left, box.top() - metrics.height() - 2, wide, metrics.height());
    const auto meets = [&](const QRectF& other) { return other.intersects(plate); };
    if (std::any_of(taken.begin(), taken.end(), meets)) continue;
    taken.push_back(plate);
    // No other line goes through the words.
    painter.fillRect(plate, look_.palette()[Tone::ground]);
    painter.setPen(look_.palette()[Tone::quiet]);
    painter.drawText(QPointF(left, plate.top() + metrics.ascent()), outline.name);
  }
}

void FieldPainter::modules(QPainter& painter, const QRectF& seen, const Lens& lens) const {
  const Palette& palette = look_.palette();
  painter.setPen(QPen(palette[Tone::rule], 1));
  painter.setBrush(palette[Tone::ground]);
  for (const PositionBlock& block : scene_->positions) {
    if (!block.box.intersects(seen)) continue;
    painter.drawRect(lens.to_screen(block.box.adjusted(-0.8, 0, 0.8, 0.6)));
  }
  if (kModuleHead * lens.px * 0.8 < kModuleNameFrom_px) return;
  QFont font = look_.font();
  const double room = kModuleHead * lens.px * 0.8;
  font.setPixelSize(static_cast<int>(std::min(room, look_.em(1.2) * 1.0)));
  painter.setFont(font);
  painter.setPen(palette[Tone::quiet]);
  for (const ModuleBlock& module : scene_->modules) {
    if (!module.box.intersects(seen)) continue;
    const QPointF foot = lens.to_screen(module.box.topLeft() + QPointF(0, kModuleHead * 0.82));
    painter.drawText(foot, QStringLiteral("M%1").arg(module.module, 2, 10, QChar('0')));
  }
}

// On a plate of the ground's colour, so that a name reads over whatever it lies on.
void FieldPainter::names(QPainter& painter, const QRectF& seen, const Lens& lens) const {
  const Palette& palette = look_.palette();
  const double room = kPositionHead * lens.px;
  QFont font = look_.font(1.0, true);
  font.setPixelSize(
      std::max(look_.em(0.9), static_cast<int>(std::min(room * 0.6, look_.em(1.6) * 1.0))));
  painter.setFont(font);
  const QFontMetricsF metrics(font);
  std::vector<QRectF> plates;  // a name that would lie on another waits until there is room
  for (const PositionBlock& block : scene_->positions) {
    if (!block.box.intersects(seen)) continue;
    const QPointF corner = lens.to_screen(block.box.topLeft());
    const QSizeF size(metrics.horizontalAdvance(block.name) + 6, metrics.height());
    const QRectF plate(
        QPointF(corner.x(), std::min(corner.y(), corner.y() + room * 0.9 - size.height())), size);
    if (std::any_of(plates.begin(), plates.end(),
                    [&](const QRectF& other) { return other.intersects(plate); })) {
      continue;
    }
    plates.push_back(plate);
    painter.fillRect(plate, palette[Tone::ground]);
    painter.setPen(palette[Tone::text]);
    painter.drawText(plate, Qt::AlignCenter, block.name);
  }
}

void FieldPainter::values(QPainter& painter, const Lens& lens, const CellFacts& facts) const {
  if (lens.px < kValuesFrom_px) return;
  QFont font = look_.font();
  font.setPixelSize(std::max(9, static_cast<int>(lens.px * 0.2)));
  painter.setFont(font);
  painter.setPen(look_.palette()[Tone::text]);
  for (const auto& cells : seen_) {
    for (const auto c : cells) {
      const QRectF box = lens.to_screen(scene_->box(c));
      const float ohm = facts.ohm[c];
      QString text = QStringLiteral("P%1").arg(scene_->cells[c].pin.pin, 2, 10, QChar('0'));
      if (!std::isnan(ohm)) text += QChar(' ') + number_words(static_cast<double>(ohm), 2);
      painter.drawText(QRectF(box.left(), box.bottom() - lens.px * 0.14, lens.px, lens.px * 0.4),
                       Qt::AlignCenter, text);
    }
  }
}

}  // namespace walkdown::gui
