// SPDX-License-Identifier: Apache-2.0
#include "gui/day/crew_view.h"

#include <QBoxLayout>

#include "gui/parts/pieces.h"

namespace walkdown::gui {

CrewView::CrewView(Session& session, QWidget* parent)
    : QWidget(parent), people_(new PeoplePage(session)), keys_(new KeysPage(session)) {
  auto* inner = new QWidget;
  layout_ = new QBoxLayout(QBoxLayout::LeftToRight, inner);
  layout_->addWidget(people_, 3, Qt::AlignTop);
  layout_->addWidget(keys_, 2, Qt::AlignTop);
  auto* outer = new QVBoxLayout(this);
  outer->setContentsMargins(0, 0, 0, 0);
  outer->addWidget(scrolled(inner));
}

void CrewView::see(const Seen& seen) {
  people_->see(*seen);
  keys_->see(*seen);
}

void CrewView::dress(const Look& look) {
  least_px_ = look.em(46);
  arrange();
}

void CrewView::resizeEvent(QResizeEvent*) { arrange(); }

void CrewView::arrange() {
  layout_->setDirection(width() >= least_px_ ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
}

}  // namespace walkdown::gui
