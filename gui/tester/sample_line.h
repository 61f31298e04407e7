// SPDX-License-Identifier: Apache-2.0
// One line of a tester, in which parts are marked: choose some of it, press what it is.
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QWidget>
#include <vector>

#include "gui/tester/learn.h"

namespace walkdown::gui {

class SampleLine : public QWidget {
  Q_OBJECT

 public:
  explicit SampleLine(QWidget* parent = nullptr);

  void set_line(const QString& line);
  [[nodiscard]] std::string line() const { return line_->text().toStdString(); }
  [[nodiscard]] const std::vector<Marking>& markings() const { return markings_; }
  // Marks the chosen characters; what was marked as this part before is not any more.
  void mark(Part part);
  void choose(int first, int length) { line_->setSelection(first, length); }
  void clear();

 Q_SIGNALS:
  void changed();

 private:
  void tell();

  QLineEdit* line_;
  QLabel* told_;
  std::vector<Marking> markings_;
};

[[nodiscard]] QString part_words(Part part);

}  // namespace walkdown::gui
