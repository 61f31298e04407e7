// SPDX-License-Identifier: Apache-2.0
#include "tests/gui/room.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAbstractSpinBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QScrollBar>
#include <QSplitter>
#include <QStackedWidget>
#include <QStyle>
#include <QStyleOptionComboBox>
#include <QTextBrowser>

namespace walkdown::gui {
namespace {

QString told(const QWidget& widget) {
  QString text = widget.accessibleName();
  if (const auto* label = qobject_cast<const QLabel*>(&widget)) text = label->text();
  if (const auto* button = qobject_cast<const QAbstractButton*>(&widget)) text = button->text();
  return QStringLiteral("%1 '%2'").arg(QLatin1String(widget.metaObject()->className()),
                                       text.left(60));
}

QString sides(const QSize& size) {
  return QStringLiteral("%1 x %2").arg(size.width()).arg(size.height());
}

// The line of a box to choose or count in: it is as large as the box makes it.
bool is_inside(const QLineEdit& line) {
  return qobject_cast<const QComboBox*>(line.parentWidget()) != nullptr ||
         qobject_cast<const QAbstractSpinBox*>(line.parentWidget()) != nullptr;
}

QSize needed_by(const QLabel& label) {
  if (!label.wordWrap()) return label.sizeHint();
  // The longest word, and as many lines as this width makes of it.
  return {label.minimumSizeHint().width(), label.heightForWidth(label.width())};
}

// Its text as drawn, in what the arrow leaves of it.
QSize needed_by(const QComboBox& choice) {
  const int height = choice.sizeHint().height();
  if (choice.isEditable()) return {0, height};  // a path may be as long as it likes, and scrolls
  QStyleOptionComboBox option;
  option.initFrom(&choice);
  const QRect field = choice.style()->subControlRect(QStyle::CC_ComboBox, &option,
                                                     QStyle::SC_ComboBoxEditField, &choice);
  const int text = choice.fontMetrics().boundingRect(choice.currentText()).width();
  return {text + choice.width() - field.width(), height};
}

// What it says while it is empty, with what Qt keeps free on either side.
QSize needed_by(const QLineEdit& line) {
  const int height = line.minimumSizeHint().height();
  if (line.placeholderText().isEmpty()) return {0, height};
  QStyleOptionFrame option;
  option.initFrom(&line);
  const QRect inside = line.style()->subElementRect(QStyle::SE_LineEditContents, &option, &line);
  const int text = line.fontMetrics().horizontalAdvance(line.placeholderText());
  return {text + 4 + line.width() - inside.width(), height};
}

// Nothing where it does not matter how large it is.
QSize needed(const QWidget& widget) {
  if (const auto* label = qobject_cast<const QLabel*>(&widget)) {
    return label->text().isEmpty() ? QSize() : needed_by(*label);
  }
  if (const auto* button = qobject_cast<const QAbstractButton*>(&widget)) {
    return button->text().isEmpty() ? QSize() : button->sizeHint();
  }
  if (const auto* choice = qobject_cast<const QComboBox*>(&widget)) {
    return needed_by(*choice);
  }
  if (const auto* line = qobject_cast<const QLineEdit*>(&widget)) {
    return is_inside(*line) ? QSize() : needed_by(*line);
  }
  if (qobject_cast<const QAbstractSpinBox*>(&widget) != nullptr) return widget.sizeHint();
  // Pages scroll up and down only: what is wider is cut off.
  if (const auto* area = qobject_cast<const QScrollArea*>(&widget);
      area != nullptr && area->widget() != nullptr) {
    return {area->widget()->width() + area->width() - area->viewport()->width(), 0};
  }
  if (const auto* text = qobject_cast<const QTextBrowser*>(&widget)) {
    return {text->width() + text->horizontalScrollBar()->maximum(), 0};
  }
  return {};
}

bool is_scrolled(const QWidget& widget) {
  return widget.parentWidget()->objectName() == QLatin1String("qt_scrollarea_viewport");
}

bool lies_on_purpose(const QWidget& widget) {
  const QWidget& parent = *widget.parentWidget();
  return is_scrolled(widget) || qobject_cast<const QComboBox*>(&parent) != nullptr ||
         qobject_cast<const QAbstractItemView*>(&parent) != nullptr ||
         qobject_cast<const QAbstractScrollArea*>(&parent) != nullptr ||
         qobject_cast<const QLineEdit*>(&parent) != nullptr ||
         widget.objectName().startsWith(QLatin1String("qt_"));
}

void look_for_overlaps(const QWidget& parent, std::vector<QString>& out) {
  if (parent.layout() == nullptr) return;
  std::vector<const QWidget*> inside;
  for (const auto* each : parent.findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly)) {
    if (each->isVisible() && !each->isWindow() && !lies_on_purpose(*each)) inside.push_back(each);
  }
  for (std::size_t i = 0; i < inside.size(); ++i) {
    for (std::size_t j = i + 1; j < inside.size(); ++j) {
      const QRect both = inside[i]->geometry() & inside[j]->geometry();
      if (both.width() > 1 && both.height() > 1) {
        out.push_back(told(*inside[i]) + QStringLiteral(" and ") + told(*inside[j]) +
                      QStringLiteral(" lie over one another"));
      }
    }
  }
}

}  // namespace

std::vector<QString> without_room(const QWidget& root) {
  std::vector<QString> out;
  look_for_overlaps(root, out);
  for (const auto* each : root.findChildren<QWidget*>()) {
    if (!each->isVisible() || each->window() != root.window()) continue;
    look_for_overlaps(*each, out);
    const QSize wanted = needed(*each);
    if (wanted.width() > each->width() || wanted.height() > each->height()) {
      out.push_back(QStringLiteral("%1 needs %2 and has %3")
                        .arg(told(*each), sides(wanted), sides(each->size())));
    }
    const QRect room = each->parentWidget()->rect().adjusted(-1, -1, 1, 1);
    if (!each->isWindow() && !lies_on_purpose(*each) && !room.contains(each->geometry())) {
      out.push_back(QStringLiteral("%1 lies partly outside of %2")
                        .arg(told(*each), told(*each->parentWidget())));
    }
  }
  return out;
}

}  // namespace walkdown::gui
