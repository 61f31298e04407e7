// SPDX-License-Identifier: Apache-2.0
#include "gui/app/views.h"

namespace walkdown::gui {

Views::Views(Session& session, QWidget* parent)
    : QStackedWidget(parent),
      checklist_(new ChecklistView(session)),
      crew_(new CrewView(session)),
      field_(new FieldView(session)),
      faults_(new FaultsView(session)),
      tester_(new TesterView(session)),
      weather_(new WeatherView(session)),
      record_(new RecordView(session)),
      report_(new ReportView(session)) {
  add(tr("Checklist"), checklist_);
  add(tr("Crew"), crew_);
  add(tr("Field"), field_);
  add(tr("Faults"), faults_);
  add(tr("Tester"), tester_);
  add(tr("Weather"), weather_);
  add(tr("Record"), record_);
  add(tr("Report"), report_);
  connect_views();
  connect(&session, &Session::seen, this, &Views::see);
  connect(this, &QStackedWidget::currentChanged, this, [this] { updateGeometry(); });
}

QSize Views::minimumSizeHint() const {
  return currentWidget() == nullptr ? QSize() : currentWidget()->minimumSizeHint();
}

void Views::connect_views() {
  connect(faults_, &FaultsView::pin_wanted, this, [this](plan::PinId pin) {
    Q_EMIT view_wanted(indexOf(field_));
    field_->show_pin(pin);
  });
  connect(weather_, &WeatherView::item_wanted, this, [this](std::size_t item) {
    Q_EMIT view_wanted(indexOf(checklist_));
    checklist_->show_item(item);
  });
}

void Views::add(const QString& name, QWidget* view) {
  names_ << name;
  view->setAccessibleName(name);
  addWidget(view);
}

void Views::see(const Seen& seen) {
  checklist_->see(seen);
  crew_->see(seen);
  field_->see(seen);
  faults_->see(seen);
  weather_->see(seen);
  record_->see(seen);
}

void Views::dress(const Look& look) {
  checklist_->dress(look);
  crew_->dress(look);
  field_->dress(look);
  faults_->dress(look);
  tester_->dress(look);
  weather_->dress(look);
  record_->dress(look);
  report_->dress(look);
}

}  // namespace walkdown::gui
