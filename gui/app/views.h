// SPDX-License-Identifier: Apache-2.0
// The views of an open record, in the order of the navigation.
#pragma once

#include <QStackedWidget>

#include "gui/day/checklist_view.h"
#include "gui/day/crew_view.h"
#include "gui/field/field_view.h"
#include "gui/live/session.h"

namespace walkdown::gui {

class Views : public QStackedWidget {
  Q_OBJECT

 public:
  explicit Views(Session& session, QWidget* parent = nullptr);

  [[nodiscard]] QStringList names() const { return names_; }
  void dress(const Look& look);

  [[nodiscard]] ChecklistView& checklist() { return *checklist_; }
  [[nodiscard]] CrewView& crew() { return *crew_; }
  [[nodiscard]] FieldView& field() { return *field_; }

 private:
  void add(const QString& name, QWidget* view);
  void see(const Seen& seen);

  QStringList names_;
  ChecklistView* checklist_;
  CrewView* crew_;
  FieldView* field_;
};

}  // namespace walkdown::gui
