// SPDX-License-Identifier: Apache-2.0
// Under the strip, in whole sentences, for as long as it stands: that nothing is written and why,
// who called a hold and why, or what keeps the release shut.
#pragma once

#include <QLabel>

#include "checklist/day/checklist.h"
#include "gui/day/strip_words.h"

namespace walkdown::gui {

// Empty text: nothing to say. `more`: all of it, where `text` has the first alone.
[[nodiscard]] Said standing_words(const Snapshot& seen, const day::Checklist& list);

class StandingLine : public QLabel {
  Q_OBJECT

 public:
  explicit StandingLine(QWidget* parent = nullptr);

  void see(const Snapshot& seen, const day::Checklist& list);
  [[nodiscard]] QString whole() const { return whole_; }
  // Leaves its room to a passing sentence, unless what it says is an alarm.
  void give_way(bool passing);

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  void fit();
  void show_or_hide();

  QString whole_;
  bool alarm_ = false;
  bool passing_ = false;
};

}  // namespace walkdown::gui
