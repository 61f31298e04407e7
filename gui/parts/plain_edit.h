// SPDX-License-Identifier: Apache-2.0
// A text of several lines to type in; its cursor has the colour of the text (see look/style.h).
#pragma once

#include <QPlainTextEdit>

namespace walkdown::gui {

class PlainEdit : public QPlainTextEdit {
  Q_OBJECT

 public:
  using QPlainTextEdit::QPlainTextEdit;

 protected:
  void paintEvent(QPaintEvent* event) override;
};

}  // namespace walkdown::gui
