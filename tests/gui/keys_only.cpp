// SPDX-License-Identifier: Apache-2.0
#include "tests/gui/keys_only.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QComboBox>

namespace walkdown::gui {
namespace {

constexpr int kPatience_ms = 40'000;
constexpr int kMostTabs = 200;

QString name_of(const QWidget* widget) {
  if (widget == nullptr) return {};
  if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) return button->text();
  return widget->accessibleName();
}

// A list or a box to choose from.
bool has_many(const QWidget* widget) {
  return qobject_cast<const QComboBox*>(widget) != nullptr ||
         qobject_cast<const QAbstractItemView*>(widget) != nullptr;
}

}  // namespace

bool KeysOnly::wait(const std::function<bool()>& until) {
  return QTest::qWaitFor(until, kPatience_ms);
}

bool KeysOnly::look_at(QWidget& root) {
  dialog_ = &root == window_ ? nullptr : &root;
  if (QApplication::activeWindow() != &root) QApplication::setActiveWindow(&root);
  return QApplication::activeWindow() == &root;
}

bool KeysOnly::closed() {
  return wait([&] { return (!dialog_ || !dialog_->isVisible()) && look_at(*window_); });
}

void KeysOnly::key(Qt::Key key, Qt::KeyboardModifiers modifiers) {
  QWidget* focused = QApplication::focusWidget();
  QTest::keyClick(focused != nullptr ? focused
                  : dialog_          ? dialog_.data()
                                     : window_,
                  key, modifiers);
}

// A control that is not there yet may come with the next look at the record.
bool KeysOnly::go(const QString& name, bool among_many) {
  return wait([&] {
    for (int i = 0; i < kMostTabs; ++i) {
      const QWidget* now = QApplication::focusWidget();
      if (name_of(now) == name && (!among_many || has_many(now))) return true;
      key(Qt::Key_Tab);
    }
    return false;
  });
}

bool KeysOnly::press(const QString& name) {
  if (!go(name)) return false;
  key(Qt::Key_Space);
  return true;
}

bool KeysOnly::type(const QString& name, const QString& text) {
  if (!go(name)) return false;
  key(Qt::Key_A, Qt::ControlModifier);
  QTest::keyClicks(QApplication::focusWidget(), text);
  return true;
}

bool KeysOnly::choose(const QString& name, const QString& begin) {
  if (!go(name, true)) return false;
  key(Qt::Key_Home);
  if (auto* box = qobject_cast<QComboBox*>(QApplication::focusWidget())) {
    return wait([&] {
      for (int i = 0; i < box->count(); ++i, key(Qt::Key_Down)) {
        if (box->currentText().startsWith(begin)) return true;
      }
      key(Qt::Key_Home);
      return false;
    });
  }
  auto* list = qobject_cast<QAbstractItemView*>(QApplication::focusWidget());
  for (int i = 0; list != nullptr && i < kMostTabs; ++i, key(Qt::Key_Down)) {
    if (list->currentIndex().data().toString().startsWith(begin)) return true;
  }
  return false;
}

}  // namespace walkdown::gui
