// SPDX-License-Identifier: Apache-2.0
#include "gui/parts/plain_edit.h"

#include <QPainter>

namespace walkdown::gui {

void PlainEdit::paintEvent(QPaintEvent* event) {
  QPlainTextEdit::paintEvent(event);
  if (!hasFocus() || isReadOnly()) return;
  const QRect at = cursorRect();
  QPainter painter(viewport());
  painter.fillRect(QRect(at.left(), at.top(), 2, at.height()), palette().color(QPalette::Text));
}

}  // namespace walkdown::gui
