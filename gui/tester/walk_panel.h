// SPDX-License-Identifier: Apache-2.0
// For meters without addresses: the pin to probe now, large; skip, back, and 'reads open'.
#pragma once

#include <QFrame>
#include <QLabel>

#include "gui/live/listener.h"

namespace walkdown::gui {

class WalkPanel : public QFrame {
  Q_OBJECT

 public:
  explicit WalkPanel(Listener& listener, QWidget* parent = nullptr);

  void see(const WalkState& state);
  [[nodiscard]] QString text() const { return pin_->text(); }

 private:
  QLabel* head_;
  QLabel* pin_;
  QLabel* next_;
};

}  // namespace walkdown::gui
