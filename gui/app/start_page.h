// SPDX-License-Identifier: Apache-2.0
// What stands in the window while no record is open.
#pragma once

#include <QLabel>
#include <QWidget>

namespace walkdown::gui {

class StartPage : public QWidget {
  Q_OBJECT

 public:
  explicit StartPage(QWidget* parent = nullptr);

  void say(const QString& sentence);
  [[nodiscard]] QString said() const { return said_->text(); }

 Q_SIGNALS:
  void open_wanted();
  void new_wanted();

 private:
  QLabel* said_;
};

}  // namespace walkdown::gui
