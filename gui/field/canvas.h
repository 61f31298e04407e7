// SPDX-License-Identifier: Apache-2.0
// The field on the screen: drag or Shift + arrows to move, wheel or + and - to zoom, Home for the
// whole field; arrows go from pin to pin, N to the next that does not fit, Enter opens the pin.
#pragma once

#include <QWidget>
#include <memory>
#include <optional>

#include "gui/field/painter.h"
#include "gui/look/look.h"

namespace walkdown::gui {

class FieldCanvas : public QWidget {
  Q_OBJECT

 public:
  explicit FieldCanvas(QWidget* parent = nullptr);

  void set_scene(std::shared_ptr<const Scene> scene);
  void set_facts(std::shared_ptr<const CellFacts> facts);
  void dress(const Look& look);
  void mark_group(const std::vector<plan::PinId>& pins);
  // And brings it into sight; false where there is no such pin.
  bool pick(plan::PinId pin);
  void show_all();
  void zoom(double times, QPointF around);

  [[nodiscard]] std::optional<plan::PinId> picked() const;
  [[nodiscard]] const Lens& lens() const { return lens_; }
  [[nodiscard]] QSize minimumSizeHint() const override { return {240, 110}; }

 Q_SIGNALS:
  void pin_picked(walkdown::plan::PinId pin);
  void pin_opened(walkdown::plan::PinId pin);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void pick_cell(std::size_t cell);
  void step(int dx, int dy);
  void next_fault(int direction);
  void keep_in_sight();
  void describe();
  [[nodiscard]] double whole_px() const;
  [[nodiscard]] double name_room_px() const;

  std::shared_ptr<const Scene> scene_;
  std::shared_ptr<const CellFacts> facts_;
  std::unique_ptr<FieldPainter> painter_;
  Look look_;
  Lens lens_;
  Marked marked_;
  bool whole_ = true;  // follows the size of the window until somebody zooms
  QPointF pressed_at_;
  QPointF lens_when_pressed_;
  bool dragged_ = false;
};

}  // namespace walkdown::gui
