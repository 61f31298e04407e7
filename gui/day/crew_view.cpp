// SPDX-License-Identifier: Apache-2.0
#include "gui/day/crew_view.h"

#include <QBoxLayout>

#include "gui/parts/pieces.h"

namespace walkdown::gui {

CrewView::CrewView(Session& session, QWidget* parent)
    : QWidget(parent), people_(new PeoplePage(session)), keys_(new KeysPage(session)) {
  auto* inner = new QWidget;
  layout_ = new QBoxLayout(QBoxLayout::LeftToRight, inner);
  layout_->addWidget(people_);
  layout_->addWidget(keys_);
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
  const bool beside = width() >= least_px_;
  layout_->setDirection(beside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
  // The shares of the width; one below the other, the last takes what height is left.
  layout_->setStretch(0, beside ? 3 : 0);
  layout_->setStretch(1, beside ? 2 : 1);
}

}  // namespace walkdown::gui
