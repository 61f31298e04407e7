// SPDX-License-Identifier: Apache-2.0
// Asks who signs, and for the passphrase; signs in another thread, and closes when it is on disk.
#pragma once

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <functional>

#include "checklist/day/checklist.h"
#include "gui/live/session.h"
#include "gui/parts/dialog.h"

namespace walkdown::gui {

struct Ask {
  QString title;       // "Release"
  QString statement;   // what is stated, in words
  day::Roles roles;    // who may; empty: anyone enrolled
  std::string person;  // only this one; empty: any
  QString reason;      // the question for a reason; empty: none is asked for
};

using Deed =
    std::function<desk::Entry(desk::Desk&, const desk::Signer&, const std::string& reason)>;

class SignDialog : public Dialog {
  Q_OBJECT

 public:
  SignDialog(Session& session, Ask ask, Deed deed, QWidget* parent);

 private:
  void add_people();
  void sign();
  void signed_now(const desk::Entry& entry);
  [[nodiscard]] bool may(const day::Enrolled& person) const;

  Session& session_;
  Ask ask_;
  Deed deed_;
  QComboBox* who_;
  QLineEdit* reason_;
  QLineEdit* passphrase_;
  QLabel* trouble_;
  QPushButton* sign_;
};

// Opens one, which deletes itself.
void ask_to_sign(Session& session, Ask ask, Deed deed, QWidget* parent);

}  // namespace walkdown::gui
