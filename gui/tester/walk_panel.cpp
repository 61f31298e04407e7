// SPDX-License-Identifier: Apache-2.0
#include "gui/tester/walk_panel.h"

#include <QVBoxLayout>

#include "gui/look/words.h"
#include "gui/parts/flow_layout.h"
#include "gui/parts/pieces.h"

namespace walkdown::gui {

WalkPanel::WalkPanel(Listener& listener, QWidget* parent)
    : QFrame(parent),
      head_(label(tr("Now probe"), 1.2)),
      pin_(label({}, 3.0, true)),
      next_(label({}, 1.2)) {
  setProperty("card", true);
  auto* layout = new QVBoxLayout(this);
  layout->addWidget(head_);
  layout->addWidget(pin_);
  layout->addWidget(next_);
  auto* row = new QWidget;
  auto* buttons = new FlowLayout(row);
  buttons->addWidget(button(tr("Back one pin"), [&listener] { listener.walk_back(); }));
  buttons->addWidget(button(tr("Skip: leave it unread"), [&listener] { listener.walk_skip(); }));
  buttons->addWidget(button(tr("The probe is on it and it reads open"),
                            [&listener] { listener.walk_take_open(); }));
  layout->addWidget(row);
  hide();
}

void WalkPanel::see(const WalkState& state) {
  setVisible(state.walking);
  head_->setText(state.pin ? tr("Now probe") : tr("All pins are walked"));
  pin_->setText(state.pin ? q(plan::text(*state.pin)) : QString());
  next_->setText(state.lift_first ? tr("Lift the probe first. %1 of %2")
                                        .arg(static_cast<qulonglong>(state.done))
                                        .arg(static_cast<qulonglong>(state.of))
                                  : tr("%1 of %2; the value is taken when it is steady")
                                        .arg(static_cast<qulonglong>(state.done))
                                        .arg(static_cast<qulonglong>(state.of)));
  setAccessibleName(head_->text() + QChar(' ') + pin_->text());
}

}  // namespace walkdown::gui
