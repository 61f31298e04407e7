// SPDX-License-Identifier: Apache-2.0
#include "gui/parts/dialog.h"

#include <QApplication>
#include <QEvent>
#include <QFontInfo>
#include <QScreen>
#include <QStyle>
#include <QVBoxLayout>

#include "gui/parts/pieces.h"
#include "gui/parts/reading_order.h"

namespace walkdown::gui {

Dialog::Dialog(int width_em, QWidget* parent)
    : QDialog(parent),
      inner_(new QWidget),
      body_(new QVBoxLayout(inner_)),
      foot_(new QHBoxLayout),
      width_em_(width_em) {
  auto* layout = new QVBoxLayout(this);
  layout->addWidget(scrolled(inner_), 1);
  foot_->addStretch();
  layout->addLayout(foot_);
  body_->setContentsMargins(0, 0, 0, 0);
  inner_->installEventFilter(this);
}

void Dialog::showEvent(QShowEvent* event) {
  fit();
  QDialog::showEvent(event);
}

bool Dialog::focusNextPrevChild(bool next) { return focus_next(*this, next); }

// A sentence that was added may need another line.
bool Dialog::eventFilter(QObject* watched, QEvent* event) {
  if (watched == inner_ && event->type() == QEvent::LayoutRequest && isVisible()) fit();
  return QDialog::eventFilter(watched, event);
}

int Dialog::needed_height(int width) const {
  const QMargins margins = layout()->contentsMargins();
  // As wide as with a bar beside it, which may come and go.
  const int inside = width - margins.left() - margins.right() -
                     style()->pixelMetric(QStyle::PM_ScrollBarExtent, nullptr, this);
  const int body =
      body_->hasHeightForWidth() ? body_->heightForWidth(inside) : body_->sizeHint().height();
  return std::max(body, body_->minimumSize().height()) + foot_->sizeHint().height() +
         layout()->spacing() + margins.top() + margins.bottom() + 4;
}

void Dialog::fit() {
  const QSize room = parentWidget() != nullptr ? parentWidget()->window()->size()
                                               : screen()->availableGeometry().size();
  const int width = std::min(room.width(), width_em_ * QFontInfo(QApplication::font()).pixelSize());
  resize(width,
         std::min(room.height(), std::max(needed_height(width), isVisible() ? height() : 0)));
}

}  // namespace walkdown::gui
