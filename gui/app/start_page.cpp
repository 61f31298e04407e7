// SPDX-License-Identifier: Apache-2.0
#include "gui/app/start_page.h"

#include <QVBoxLayout>

#include "gui/parts/pieces.h"
#include "gui/parts/top_layout.h"

namespace walkdown::gui {

StartPage::StartPage(const QString& last, QWidget* parent) : QWidget(parent), said_(label({})) {
  auto* layout = new TopLayout(this);
  layout->setContentsMargins(40, 40, 40, 40);
  layout->addWidget(label(QStringLiteral("walkdown"), 2.4, true));
  layout->addWidget(
      label(tr("Reads and records the show day. It never fires, arms or transmits.")));
  layout->addSpacing(20);
  if (!last.isEmpty()) {
    layout->addWidget(button(tr("Go on with the last record"), [this] { Q_EMIT last_wanted(); }));
    layout->addWidget(quiet_label(last));
  }
  layout->addWidget(button(tr("Open a record \u2026"), [this] { Q_EMIT open_wanted(); }));
  layout->addWidget(button(tr("New show \u2026"), [this] { Q_EMIT new_wanted(); }));
  layout->addWidget(said_);
  set_tone(said_, "bad");
}

void StartPage::say(const QString& sentence) { said_->setText(sentence); }

}  // namespace walkdown::gui
