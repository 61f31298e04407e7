// SPDX-License-Identifier: Apache-2.0
// People and keys, side by side or one below the other.
#pragma once

#include <QWidget>

#include "gui/day/keys_page.h"
#include "gui/day/people_page.h"
#include "gui/look/look.h"

class QBoxLayout;

namespace walkdown::gui {

class CrewView : public QWidget {
  Q_OBJECT

 public:
  explicit CrewView(Session& session, QWidget* parent = nullptr);

  void see(const Seen& seen);
  void dress(const Look& look);

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  void arrange();

  PeoplePage* people_;
  KeysPage* keys_;
  QBoxLayout* layout_;
  int least_px_ = 700;
};

}  // namespace walkdown::gui
