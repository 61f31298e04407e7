// SPDX-License-Identifier: Apache-2.0
#include "gui/parts/reading_order.h"

#include <QApplication>
#include <QLayout>
#include <QScrollArea>
#include <QSplitter>
#include <QVariant>
#include <algorithm>

namespace walkdown::gui {
namespace {

void add_all(QWidget& widget, std::vector<QWidget*>& out);

void add_all(QLayout& layout, std::vector<QWidget*>& out) {
  for (int i = 0; i < layout.count(); ++i) {
    QLayoutItem* item = layout.itemAt(i);
    if (QWidget* widget = item->widget()) {
      add_all(*widget, out);
    } else if (QLayout* inner = item->layout()) {
      add_all(*inner, out);
    }
  }
}

bool takes_focus(const QWidget& widget) {
  return widget.isEnabled() && (widget.focusPolicy() & Qt::TabFocus) == Qt::TabFocus &&
         widget.focusProxy() == nullptr;
}

void add_all(QWidget& widget, std::vector<QWidget*>& out) {
  if (!widget.isVisible()) return;
  if (takes_focus(widget)) out.push_back(&widget);
  if (const auto* splitter = qobject_cast<QSplitter*>(&widget)) {
    for (int i = 0; i < splitter->count(); ++i) add_all(*splitter->widget(i), out);
  } else if (const auto* area = qobject_cast<QScrollArea*>(&widget)) {
    if (area->widget() != nullptr) add_all(*area->widget(), out);
  } else if (widget.layout() != nullptr) {
    add_all(*widget.layout(), out);
  }
}

// What had the focus is hidden or grey. Whoever presses the same key once more must not call a hold
// by it, which is the first of the window.
bool stay_near(QWidget& gone, const std::vector<QWidget*>& order) {
  for (QWidget* around = gone.parentWidget(); around != nullptr; around = around->parentWidget()) {
    for (QWidget* each : order) {
      if (!around->isAncestorOf(each) || each->property("alarm").toBool()) continue;
      each->setFocus(Qt::OtherFocusReason);
      return true;
    }
    if (around->isWindow()) break;
  }
  return false;
}

void bring_into_sight(QWidget& widget) {
  for (QWidget* each = widget.parentWidget(); each != nullptr; each = each->parentWidget()) {
    if (auto* area = qobject_cast<QScrollArea*>(each)) area->ensureWidgetVisible(&widget);
    if (each->isWindow()) return;
  }
}

}  // namespace

std::vector<QWidget*> reading_order(QWidget& root) {
  std::vector<QWidget*> out;
  add_all(root, out);
  return out;
}

bool focus_next(QWidget& window, bool next) {
  const auto order = reading_order(window);
  if (order.empty()) return false;
  QWidget* had = QApplication::focusWidget();
  const auto now = std::find(order.begin(), order.end(), had);
  if (had != nullptr && window.isAncestorOf(had) && now == order.end()) {
    return stay_near(*had, order);
  }
  const auto count = static_cast<std::ptrdiff_t>(order.size());
  std::ptrdiff_t to = next ? 0 : count - 1;
  if (now != order.end()) to = (now - order.begin() + (next ? 1 : count - 1)) % count;
  QWidget* target = order[static_cast<std::size_t>(to)];
  target->setFocus(next ? Qt::TabFocusReason : Qt::BacktabFocusReason);
  bring_into_sight(*target);
  return true;
}

}  // namespace walkdown::gui
