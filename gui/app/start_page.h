// SPDX-License-Identifier: Apache-2.0
// What stands in the window while no record is open.
#pragma once

#include <QLabel>
#include <QWidget>

namespace walkdown::gui {

class StartPage : public QWidget {
  Q_OBJECT

 public:
  // `last`: the record that was open last; empty: none is offered.
  explicit StartPage(const QString& last = {}, QWidget* parent = nullptr);

  void say(const QString& sentence);
  [[nodiscard]] QString said() const { return said_->text(); }

 Q_SIGNALS:
  void last_wanted();
  void open_wanted();
  void new_wanted();

 private:
  QLabel* said_;
};

}  // namespace walkdown::gui
