// SPDX-License-Identifier: Apache-2.0
#include "gui/look/style.h"

#include <QApplication>
#include <QEvent>
#include <QIcon>
#include <QLineEdit>
#include <QPainter>
#include <QStyleFactory>

namespace walkdown::gui {
namespace {

constexpr int kBesideCursor_px = 5;  // QLineEdit tells its cursor with that much on its left

void paint_cursor(QLineEdit& line) {
  if (!line.hasFocus() || line.hasSelectedText()) return;
  const QRect told = line.inputMethodQuery(Qt::ImCursorRectangle).toRect();
  QPainter painter(&line);
  painter.fillRect(QRect(told.left() + kBesideCursor_px, told.top(), 2, told.height()),
                   line.palette().color(QPalette::Text));
}

QPixmap tinted(QPixmap pixmap, const QColor& colour) {
  QPainter painter(&pixmap);
  painter.setCompositionMode(QPainter::CompositionMode_SourceIn);
  painter.fillRect(pixmap.rect(), colour);
  return pixmap;
}

}  // namespace

Style::Style() : QProxyStyle(QStyleFactory::create(QStringLiteral("Fusion"))) {
  qApp->installEventFilter(this);
}

int Style::pixelMetric(PixelMetric metric, const QStyleOption* option,
                       const QWidget* widget) const {
  return metric == PM_TextCursorWidth ? 0 : QProxyStyle::pixelMetric(metric, option, widget);
}

QIcon Style::standardIcon(StandardPixmap icon, const QStyleOption* option,
                          const QWidget* widget) const {
  const QIcon made = QProxyStyle::standardIcon(icon, option, widget);
  if (made.isNull()) return made;
  return tinted(made.pixmap(pixelMetric(PM_SmallIconSize, option, widget)),
                QApplication::palette().color(QPalette::Text));
}

bool Style::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() != QEvent::Paint || painting_) return false;
  auto* line = qobject_cast<QLineEdit*>(watched);
  if (line == nullptr) return false;
  painting_ = true;
  watched->event(event);
  painting_ = false;
  paint_cursor(*line);
  return true;
}

}  // namespace walkdown::gui
