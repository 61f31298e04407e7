// SPDX-License-Identifier: Apache-2.0
#include "gui/field/painter.h"

#include <cmath>
#include <limits>

#include "gui/look/glyph.h"

namespace walkdown::gui {
namespace {

constexpr std::size_t kFree = match::kVerdicts;
constexpr auto kNoOhm = std::numeric_limits<float>::quiet_NaN();

}  // namespace

CellFacts facts_of(const Scene& scene, const match::Outcome& outcome) {
  CellFacts facts;
  facts.verdicts.assign(scene.cells.size(), match::Verdict::unread);
  facts.ohm.assign(scene.cells.size(), kNoOhm);
  for (const match::PinVerdict& pin : outcome.pins) {
    const std::size_t cell = scene.find(pin.pin);
    if (cell == Scene::npos) continue;
    facts.verdicts[cell] = pin.verdict;
    if (pin.ohm) facts.ohm[cell] = static_cast<float>(*pin.ohm);
  }
  return facts;
}

void FieldPainter::set_look(const Look& look) {
  look_ = look;
  pixmaps_.clear();
}

void FieldPainter::paint(QPainter& painter, const QRectF& area, const Lens& lens,
                         const CellFacts& facts, const Marked& marked) {
  painter.fillRect(area, look_.palette()[Tone::ground]);
  const QRectF seen(lens.to_scene(area.topLeft()), area.size() / lens.px);
  ground(painter, lens);
  sort_cells(seen, facts);
  modules(painter, seen, lens);
  free_cells(painter, lens);
  if (lens.px < kShapeFrom_px) {
    bars(painter, lens);
  } else {
    shapes(painter, lens);
  }
  values(painter, lens, facts);
  marks(painter, lens, marked);
  names(painter, seen, lens);
}

void FieldPainter::sort_cells(const QRectF& seen, const CellFacts& facts) {
  for (auto& cells : seen_) cells.clear();
  for (const ModuleBlock& module : scene_->modules) {
    if (!module.box.intersects(seen)) continue;
    const bool whole = seen.contains(module.box);
    for (std::size_t c = module.first; c < module.first + module.count; ++c) {
      const Cell& cell = scene_->cells[c];
      if (!whole && !seen.intersects(scene_->box(c))) continue;
      const match::Verdict verdict = facts.verdicts[c];
      const bool is_free = !cell.planned && verdict == match::Verdict::unread;
      seen_.at(is_free ? kFree : static_cast<std::size_t>(verdict))
          .push_back(static_cast<std::uint32_t>(c));
    }
  }
}

void FieldPainter::bars(QPainter& painter, const Lens& lens) {
  painter.setPen(Qt::NoPen);
  for (std::size_t v = 0; v < match::kVerdicts; ++v) {
    const auto verdict = static_cast<match::Verdict>(v);
    const double high = std::max(1.0, bar_height(verdict) * lens.px);
    rects_.clear();
    for (const auto c : seen_.at(v)) {
      const Cell& cell = scene_->cells[c];
      const double foot = (cell.y + 1.0 - lens.at.y()) * lens.px;
      rects_.emplace_back((cell.x - lens.at.x()) * lens.px, foot - high, kCellW * lens.px, high);
    }
    if (rects_.empty()) continue;
    painter.setBrush(look_.palette().of(verdict).edge);
    painter.drawRects(rects_.data(), static_cast<int>(rects_.size()));
  }
}

void FieldPainter::free_cells(QPainter& painter, const Lens& lens) {
  if (lens.px < kShapeFrom_px || seen_.at(kFree).empty()) return;
  rects_.clear();
  for (const auto c : seen_.at(kFree)) {
    const QRectF box = lens.to_screen(scene_->box(c));
    rects_.emplace_back(box.center().x() - 1.5, box.center().y() - 1.5, 3, 3);
  }
  painter.setPen(Qt::NoPen);
  painter.setBrush(look_.palette()[Tone::edge]);
  painter.drawRects(rects_.data(), static_cast<int>(rects_.size()));
}

const QPixmap& FieldPainter::pixmap(match::Verdict verdict, int size_px, qreal ratio) {
  const auto key = std::make_pair(static_cast<int>(verdict), size_px);
  auto found = pixmaps_.find(key);
  if (found == pixmaps_.end()) {
    if (pixmaps_.size() > 256) pixmaps_.clear();
    found = pixmaps_.emplace(key, mark_pixmap(verdict, look_.palette(), size_px, ratio)).first;
  }
  return found->second;
}

void FieldPainter::shapes(QPainter& painter, const Lens& lens) {
  const int size = static_cast<int>(std::min(kCellW * lens.px, 96.0));
  const qreal ratio = painter.device()->devicePixelRatioF();
  for (std::size_t v = 0; v < match::kVerdicts; ++v) {
    if (seen_.at(v).empty()) continue;
    const QPixmap& mark = pixmap(static_cast<match::Verdict>(v), size, ratio);
    const QRectF source(QPointF(), QSizeF(mark.size()));
    fragments_.clear();
    for (const auto c : seen_.at(v)) {
      const QRectF box = lens.to_screen(scene_->box(c));
      const QPointF middle(std::round(box.left()) + size / 2.0, std::round(box.top()) + size / 2.0);
      fragments_.push_back(
          QPainter::PixmapFragment::create(middle, source, 1 / ratio, 1 / ratio, 0, 1));
    }
    painter.drawPixmapFragments(fragments_.data(), static_cast<int>(fragments_.size()), mark);
  }
}

void FieldPainter::marks(QPainter& painter, const Lens& lens, const Marked& marked) const {
  const double out = std::max(2.0, lens.px * 0.08);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(look_.palette()[Tone::text], 2, Qt::DashLine));
  for (const std::size_t cell : marked.group) {
    painter.drawRect(lens.to_screen(scene_->box(cell)).adjusted(-out, -out, out, out));
  }
  if (!marked.picked) return;
  const QRectF box = lens.to_screen(scene_->box(*marked.picked));
  painter.setPen(QPen(look_.palette()[Tone::focus], 3));
  painter.drawRect(box.adjusted(-out - 2, -out - 2, out + 2, out + 2));
}

}  // namespace walkdown::gui
