// SPDX-License-Identifier: Apache-2.0
#include "gui/field/canvas.h"

#include <QAccessible>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "gui/look/words.h"

namespace walkdown::gui {
namespace {

constexpr double kMost_px = 160;

}  // namespace

FieldCanvas::FieldCanvas(QWidget* parent) : QWidget(parent) {
  setFocusPolicy(Qt::StrongFocus);
  setAttribute(Qt::WA_OpaquePaintEvent);
  setAccessibleName(tr("The field, drawn"));
}

void FieldCanvas::set_scene(std::shared_ptr<const Scene> scene) {
  scene_ = std::move(scene);
  painter_ = std::make_unique<FieldPainter>(*scene_);
  painter_->set_look(look_);
  auto facts = std::make_shared<CellFacts>(facts_of(*scene_, {}));
  facts_ = std::move(facts);
  marked_ = {};
  show_all();
}

void FieldCanvas::set_facts(std::shared_ptr<const CellFacts> facts) {
  facts_ = std::move(facts);
  describe();
  update();
}

void FieldCanvas::dress(const Look& look) {
  look_ = look;
  if (painter_) painter_->set_look(look);
  update();
}

void FieldCanvas::mark_group(const std::vector<plan::PinId>& pins) {
  marked_.group.clear();
  for (const plan::PinId pin : pins) {
    const std::size_t cell = scene_ ? scene_->find(pin) : Scene::npos;
    if (cell != Scene::npos) marked_.group.push_back(cell);
  }
  update();
}

double FieldCanvas::whole_px() const {
  if (!scene_ || scene_->bounds.isEmpty()) return 10;
  return std::min(width() / scene_->bounds.width(),
                  (height() - name_room_px()) / scene_->bounds.height());
}

// The names of the topmost positions stand above their boxes where the drawing is small.
double FieldCanvas::name_room_px() const { return std::min(look_.em(1.2), height() / 4); }

void FieldCanvas::show_all() {
  whole_ = true;
  if (!scene_) return;
  lens_.px = whole_px();
  lens_.at = scene_->bounds.center() - QPointF(width(), height() + name_room_px()) / lens_.px / 2;
  update();
}

void FieldCanvas::zoom(double times, QPointF around) {
  const QPointF fixed = lens_.to_scene(around);
  if (!scene_) return;
  // Out to the whole site, with all that stands around the field.
  const double least = std::min(width() / scene_->site.width(), height() / scene_->site.height());
  lens_.px = std::clamp(lens_.px * times, std::min(least, kMost_px), kMost_px);
  lens_.at = fixed - around / lens_.px;
  whole_ = false;
  update();
}

std::optional<plan::PinId> FieldCanvas::picked() const {
  if (!scene_ || !marked_.picked) return std::nullopt;
  return scene_->cells[*marked_.picked].pin;
}

bool FieldCanvas::pick(plan::PinId pin) {
  const std::size_t cell = scene_ ? scene_->find(pin) : Scene::npos;
  if (cell == Scene::npos) return false;
  if (lens_.px < 18) {
    lens_.px = 18;
    whole_ = false;
  }
  pick_cell(cell);
  return true;
}

void FieldCanvas::pick_cell(std::size_t cell) {
  marked_.picked = cell;
  keep_in_sight();
  describe();
  update();
  Q_EMIT pin_picked(scene_->cells[cell].pin);
}

void FieldCanvas::keep_in_sight() {
  const QRectF box = lens_.to_screen(scene_->box(*marked_.picked));
  const QRectF seen = QRectF(rect()).adjusted(20, 20, -20, -20);
  if (seen.contains(box)) return;
  lens_.at += (box.center() - seen.center()) / lens_.px;
  whole_ = false;
}

// What a screen reader says of the pin that has the cursor.
void FieldCanvas::describe() {
  if (!marked_.picked || !facts_) return;
  const std::size_t cell = *marked_.picked;
  const QString text =
      tr("%1: %2").arg(q(plan::text(scene_->cells[cell].pin)), words(facts_->verdicts[cell]));
  if (text == accessibleDescription()) return;
  setAccessibleDescription(text);
  QAccessibleEvent event(this, QAccessible::DescriptionChanged);
  QAccessible::updateAccessibility(&event);
}

void FieldCanvas::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  if (!painter_ || !facts_) {
    painter.fillRect(rect(), look_.palette()[Tone::ground]);
    return;
  }
  painter_->paint(painter, rect(), lens_, *facts_, marked_);
  if (!hasFocus()) return;
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(look_.palette()[Tone::focus], 3));
  painter.drawRect(rect().adjusted(1, 1, -2, -2));
}

void FieldCanvas::resizeEvent(QResizeEvent*) {
  if (whole_) show_all();
}

}  // namespace walkdown::gui
