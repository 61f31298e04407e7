// SPDX-License-Identifier: Apache-2.0
#include "gui/app/views.h"

namespace walkdown::gui {

Views::Views(Session& session, QWidget* parent)
    : QStackedWidget(parent),
      checklist_(new ChecklistView(session)),
      crew_(new CrewView(session)),
      field_(new FieldView(session)) {
  add(tr("Checklist"), checklist_);
  add(tr("Crew"), crew_);
  add(tr("Field"), field_);
  connect(&session, &Session::seen, this, &Views::see);
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
}

void Views::dress(const Look& look) {
  checklist_->dress(look);
  crew_->dress(look);
  field_->dress(look);
}

}  // namespace walkdown::gui
