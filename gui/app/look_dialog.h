// SPDX-License-Identifier: Apache-2.0
// Day, dusk or night, and the size of text; seen at once.
#pragma once

#include "gui/look/look.h"
#include "gui/parts/dialog.h"

namespace walkdown::gui {

class LookDialog : public Dialog {
  Q_OBJECT

 public:
  LookDialog(const Look& look, QWidget* parent);

 Q_SIGNALS:
  void changed(const walkdown::gui::Look& look);

 private:
  Look look_;
};

}  // namespace walkdown::gui
