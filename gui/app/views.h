// SPDX-License-Identifier: Apache-2.0
// The views of an open record, in the order of the navigation.
#pragma once

#include <QStackedWidget>

#include "gui/day/checklist_view.h"
#include "gui/day/crew_view.h"
#include "gui/faults/faults_view.h"
#include "gui/field/field_view.h"
#include "gui/live/session.h"
#include "gui/record/record_view.h"
#include "gui/report/report_view.h"
#include "gui/tester/tester_view.h"
#include "gui/weather/weather_view.h"

namespace walkdown::gui {

class Views : public QStackedWidget {
  Q_OBJECT

 public:
  explicit Views(Session& session, QWidget* parent = nullptr);

  [[nodiscard]] QStringList names() const { return names_; }
  void dress(const Look& look);
  // Of the view that is seen: the tallest of all would take room from the strip.
  [[nodiscard]] QSize minimumSizeHint() const override;

  [[nodiscard]] ChecklistView& checklist() { return *checklist_; }
  [[nodiscard]] CrewView& crew() { return *crew_; }
  [[nodiscard]] FieldView& field() { return *field_; }
  [[nodiscard]] FaultsView& faults() { return *faults_; }
  [[nodiscard]] TesterView& tester() { return *tester_; }
  [[nodiscard]] WeatherView& weather() { return *weather_; }
  [[nodiscard]] ReportView& report() { return *report_; }
  [[nodiscard]] RecordView& record() { return *record_; }

 Q_SIGNALS:
  void view_wanted(int index);

 private:
  void connect_views();
  void add(const QString& name, QWidget* view);
  void see(const Seen& seen);

  QStringList names_;
  ChecklistView* checklist_;
  CrewView* crew_;
  FieldView* field_;
  FaultsView* faults_;
  TesterView* tester_;
  WeatherView* weather_;
  RecordView* record_;
  ReportView* report_;
};

}  // namespace walkdown::gui
