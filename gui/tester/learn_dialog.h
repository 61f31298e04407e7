// SPDX-License-Identifier: Apache-2.0
// Learns a format: paste a few lines, mark the parts of one, see what every line becomes, and only
// then save it as a profile for the next show. A record's own profile never changes.
#pragma once

#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>

#include "gui/parts/dialog.h"
#include "gui/tester/sample_line.h"

namespace walkdown::gui {

class LearnDialog : public Dialog {
  Q_OBJECT

 public:
  LearnDialog(tester::Profile base, const QStringList& lines, QWidget* parent);

  [[nodiscard]] const std::string& pattern() const { return pattern_; }
  [[nodiscard]] SampleLine& sample() { return *sample_; }
  void set_samples(const QString& text) { samples_->setPlainText(text); }
  [[nodiscard]] bool all_taken() const { return all_taken_; }

 private:
  void take_first();
  void try_it();
  void save();

  tester::Profile base_;
  tester::Profile profile_;  // as the first line asks for
  QPlainTextEdit* samples_;
  SampleLine* sample_;
  QLabel* pattern_label_;
  QPlainTextEdit* tried_;
  QPushButton* save_;
  std::string pattern_;
  bool all_taken_ = false;
};

}  // namespace walkdown::gui
