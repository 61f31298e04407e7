// SPDX-License-Identifier: Apache-2.0
// The plan backwards from the show, drawn: a row an item. A solid bar is how long it holds; a
// hollow bar is when it may be answered; the pointer is its latest start. Upright lines are now,
// the show and its end.
#pragma once

#include <QWidget>

#include "gui/day/bars.h"
#include "gui/look/look.h"

namespace walkdown::gui {

class TimelineView : public QWidget {
  Q_OBJECT

 public:
  explicit TimelineView(QWidget* parent = nullptr);

  void see(Bars bars);
  void dress(const Look& look);
  [[nodiscard]] const Bars& bars() const { return bars_; }
  [[nodiscard]] QSize minimumSizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  [[nodiscard]] double x_of(std::int64_t at_ms) const;
  [[nodiscard]] int row_height() const;
  [[nodiscard]] int head_height() const;
  void paint_hours(QPainter& painter) const;
  void paint_line(QPainter& painter, std::int64_t at_ms, const QString& name, int level) const;
  void paint_row(QPainter& painter, const Bar& bar, int top) const;
  void paint_bar(QPainter& painter, const Bar& bar, const QRectF& row) const;

  Bars bars_;
  Look look_;
};

}  // namespace walkdown::gui
