// SPDX-License-Identifier: Apache-2.0
// A person without a mouse: goes with Tab to what has a name, types, presses. Waits for what they
// wait for, and never for a time.
#pragma once

#include <QApplication>
#include <QPointer>
#include <QTest>
#include <QWidget>
#include <functional>
#include <string>

namespace walkdown::gui {

class KeysOnly {
 public:
  explicit KeysOnly(QWidget& window) : window_(&window) {}

  // False where nothing comes about for long enough to say that it will not.
  [[nodiscard]] static bool wait(const std::function<bool()>& until);

  // Waits until a dialog of this kind is open, as the window manager would give it the keys.
  template <typename Dialog>
  [[nodiscard]] bool dialog() {
    return wait([&] {
      for (QWidget* each : QApplication::topLevelWidgets()) {
        if (qobject_cast<Dialog*>(each) != nullptr && each->isVisible()) return look_at(*each);
      }
      return false;
    });
  }
  // Waits until it is closed, and is back at the window.
  [[nodiscard]] bool closed();

  // With Tab to the control of this name: what a screen reader would say, or its text.
  // `among_many`: to one that lets choose, which a button may share its name with.
  [[nodiscard]] bool go(const QString& name, bool among_many = false);
  [[nodiscard]] bool press(const QString& name);  // once it is enabled
  [[nodiscard]] bool type(const QString& name, const QString& text);
  // The entry of a list, or the choice of a box, that begins so.
  [[nodiscard]] bool choose(const QString& name, const QString& begin);
  void key(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier);

 private:
  bool look_at(QWidget& root);

  QWidget* window_;
  QPointer<QWidget> dialog_;
};

}  // namespace walkdown::gui
