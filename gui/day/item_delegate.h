// SPDX-License-Identifier: Apache-2.0
// Draws the rows of the checklist: the standing as a plate with its word, the question, and how
// long it holds.
#pragma once

#include <QStyledItemDelegate>

#include "gui/look/look.h"

namespace walkdown::gui {

class ItemDelegate : public QStyledItemDelegate {
  Q_OBJECT

 public:
  using QStyledItemDelegate::QStyledItemDelegate;

  void dress(const Look& look) { look_ = look; }
  void set_width(int px) { width_px_ = px; }

  void paint(QPainter* painter, const QStyleOptionViewItem& option,
             const QModelIndex& index) const override;
  [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                               const QModelIndex& index) const override;

 private:
  void paint_plate(QPainter* painter, const QRect& box, const QModelIndex& index,
                   bool picked) const;
  [[nodiscard]] QRect text_box(int width, const QModelIndex& index) const;

  Look look_;
  int width_px_ = 400;
};

}  // namespace walkdown::gui
