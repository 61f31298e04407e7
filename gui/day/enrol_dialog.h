// SPDX-License-Identifier: Apache-2.0
// Somebody new to this record: with a key that is on this computer, or with a new one.
#pragma once

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>

#include "gui/live/session.h"
#include "gui/parts/dialog.h"

namespace walkdown::gui {

class EnrolDialog : public Dialog {
  Q_OBJECT

 public:
  EnrolDialog(Session& session, QWidget* parent);

 private:
  void add_names();
  void enrol();

  Session& session_;
  QComboBox* name_;
  QComboBox* role_;
  QLineEdit* passphrase_;
  QLabel* trouble_;
  QPushButton* press_;
};

}  // namespace walkdown::gui
