// SPDX-License-Identifier: Apache-2.0
// The controls with which one item is answered. Nothing is chosen beforehand: an answer is what
// somebody saw.
#pragma once

#include <QButtonGroup>
#include <QComboBox>
#include <QLineEdit>
#include <QWidget>
#include <optional>

#include "checklist/day/checklist.h"
#include "checklist/day/propose.h"
#include "gui/day/sign_dialog.h"

namespace walkdown::gui {

class AnswerForm : public QWidget {
  Q_OBJECT

 public:
  // `asked_up_ms`: boot clock when the question came up.
  AnswerForm(day::Item item, std::int64_t asked_up_ms, QWidget* parent = nullptr);

  // What will be written when it is signed; else a sentence in `why`.
  [[nodiscard]] std::optional<Deed> deed(QString& why) const;
  [[nodiscard]] QString words() const;  // the answer as it is read to people

 private:
  void add_choices();
  void add_line(const QString& name, QLineEdit*& line);
  void add_file();
  void add_wind();
  [[nodiscard]] std::optional<Deed> wind_deed(QString& why) const;
  [[nodiscard]] std::optional<day::Said> said(QString& why) const;

  const day::Item item_;
  const std::int64_t asked_up_ms_;
  QButtonGroup* choices_ = nullptr;
  QLineEdit* line_ = nullptr;  // number, text, or a file's path
  QLineEdit* mean_ = nullptr;
  QLineEdit* gust_ = nullptr;
};

}  // namespace walkdown::gui
