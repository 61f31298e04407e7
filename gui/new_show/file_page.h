// SPDX-License-Identifier: Apache-2.0
// One step of a new show: one file, of the crew's own or of those the program carries.
#pragma once

#include <QComboBox>
#include <QLineEdit>
#include <QWidget>

#include "checklist/show/show.h"

namespace walkdown::gui {

struct Step {
  show::Role role = show::Role::plan;
  QString title;
  QString help;
  QStringList templates;  // names below templates/
};

class FilePage : public QWidget {
  Q_OBJECT

 public:
  explicit FilePage(const Step& step, QWidget* parent = nullptr);

  [[nodiscard]] show::Role role() const { return role_; }
  [[nodiscard]] std::string path() const;
  void set_path(const QString& path);

 Q_SIGNALS:
  void changed();

 private:
  show::Role role_;
  QComboBox* path_;
};

}  // namespace walkdown::gui
