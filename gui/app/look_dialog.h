// SPDX-License-Identifier: Apache-2.0
// Day, dusk or night, and the size of text; seen at once.
#pragma once

#include <QDialog>

#include "gui/look/look.h"

namespace walkdown::gui {

class LookDialog : public QDialog {
  Q_OBJECT

 public:
  LookDialog(const Look& look, QWidget* parent);

 Q_SIGNALS:
  void changed(const walkdown::gui::Look& look);

 private:
  Look look_;
};

}  // namespace walkdown::gui
