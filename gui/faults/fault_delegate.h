// SPDX-License-Identifier: Apache-2.0
// Draws one fault large: what, where, and a box that is empty, half full or ticked.
#pragma once

#include <QStyledItemDelegate>

#include "gui/look/look.h"

namespace walkdown::gui {

class FaultDelegate : public QStyledItemDelegate {
  Q_OBJECT

 public:
  using QStyledItemDelegate::QStyledItemDelegate;

  void dress(const Look& look) { look_ = look; }
  void paint(QPainter* painter, const QStyleOptionViewItem& option,
             const QModelIndex& index) const override;
  [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                               const QModelIndex& index) const override;

 private:
  Look look_;
};

}  // namespace walkdown::gui
