// SPDX-License-Identifier: Apache-2.0
// Keys and pointer of the field.
#include <QKeyEvent>
#include <QMouseEvent>
#include <QWheelEvent>
#include <cmath>

#include "gui/field/canvas.h"

namespace walkdown::gui {
namespace {

constexpr double kZoomStep = 1.25;
constexpr int kDrag_px = 6;

}  // namespace

void FieldCanvas::wheelEvent(QWheelEvent* event) {
  zoom(std::pow(kZoomStep, event->angleDelta().y() / 120.0), event->position());
  event->accept();
}

void FieldCanvas::mousePressEvent(QMouseEvent* event) {
  pressed_at_ = event->position();
  lens_when_pressed_ = lens_.at;
  dragged_ = false;
}

void FieldCanvas::mouseMoveEvent(QMouseEvent* event) {
  const QPointF by = event->position() - pressed_at_;
  if (!dragged_ && by.manhattanLength() < kDrag_px) return;
  dragged_ = true;
  whole_ = false;
  lens_.at = lens_when_pressed_ - by / lens_.px;
  update();
}

void FieldCanvas::mouseReleaseEvent(QMouseEvent* event) {
  if (dragged_ || !scene_) return;
  const std::size_t cell = scene_->at(lens_.to_scene(event->position()));
  if (cell != Scene::npos) pick_cell(cell);
}

void FieldCanvas::mouseDoubleClickEvent(QMouseEvent*) {
  if (const auto pin = picked()) Q_EMIT pin_opened(*pin);
}

void FieldCanvas::step(int dx, int dy) {
  if (!scene_ || scene_->cells.empty()) return;
  if (!marked_.picked) return pick_cell(0);
  // The nearest cell that way; what lies aside counts threefold.
  const QPointF from = scene_->box(*marked_.picked).center();
  std::size_t best = Scene::npos;
  double least = 1e18;
  for (std::size_t c = 0; c < scene_->cells.size(); ++c) {
    const QPointF by = scene_->box(c).center() - from;
    const double along = by.x() * dx + by.y() * dy;
    const double aside = std::abs(by.x() * dy) + std::abs(by.y() * dx);
    if (along < 0.5 || aside > along * 2) continue;
    const double cost = along + 3 * aside;
    if (cost < least) {
      least = cost;
      best = c;
    }
  }
  if (best != Scene::npos) pick_cell(best);
}

void FieldCanvas::next_fault(int direction) {
  if (!scene_ || !facts_ || scene_->cells.empty()) return;
  const std::size_t count = scene_->cells.size();
  const std::size_t from = marked_.picked.value_or(direction > 0 ? count - 1 : 0);
  for (std::size_t k = 1; k <= count; ++k) {
    const std::size_t c = (direction > 0 ? from + k : from + count - k) % count;
    const match::Verdict verdict = facts_->verdicts[c];
    if (verdict == match::Verdict::fits || verdict == match::Verdict::unread) continue;
    pick(scene_->cells[c].pin);
    return;
  }
}

void FieldCanvas::keyPressEvent(QKeyEvent* event) {
  const QPointF middle = QRectF(rect()).center();
  const bool moves = event->modifiers().testFlag(Qt::ShiftModifier);
  const auto arrow = [&](int dx, int dy) {
    if (!moves) return step(dx, dy);
    lens_.at += QPointF(dx, dy) * (80 / lens_.px);
    whole_ = false;
    update();
  };
  switch (event->key()) {
    case Qt::Key_Left:
      return arrow(-1, 0);
    case Qt::Key_Right:
      return arrow(1, 0);
    case Qt::Key_Up:
      return arrow(0, -1);
    case Qt::Key_Down:
      return arrow(0, 1);
    case Qt::Key_Plus:
    case Qt::Key_Equal:
      return zoom(kZoomStep, middle);
    case Qt::Key_Minus:
      return zoom(1 / kZoomStep, middle);
    case Qt::Key_Home:
      return show_all();
    case Qt::Key_N:
      return next_fault(moves ? -1 : 1);
    case Qt::Key_Return:
    case Qt::Key_Enter:
      if (const auto pin = picked()) Q_EMIT pin_opened(*pin);
      return;
    default:
      QWidget::keyPressEvent(event);
  }
}

}  // namespace walkdown::gui
