// SPDX-License-Identifier: Apache-2.0
#include "gui/parts/two_pane.h"

#include <QPushButton>
#include <QSettings>
#include <QSplitter>
#include <QVBoxLayout>
#include <algorithm>

namespace walkdown::gui {

namespace {

constexpr int kLeastShare = 15;

QString key_of(const QString& name) { return QStringLiteral("split/") + name; }

}  // namespace

TwoPane::TwoPane(const QString& name, QWidget* list, QWidget* page, int list_share, QWidget* parent)
    : QWidget(parent),
      list_(list),
      page_(page),
      splitter_(new QSplitter(Qt::Horizontal)),
      back_(new QPushButton(tr("Back to the list"))),
      share_(std::clamp(QSettings().value(key_of(name), list_share).toInt(), kLeastShare,
                        100 - kLeastShare)) {
  setObjectName(name);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(back_, 0, Qt::AlignLeft);
  layout->addWidget(splitter_, 1);
  splitter_->addWidget(list_);
  splitter_->addWidget(page_);
  splitter_->setChildrenCollapsible(false);
  splitter_->setStretchFactor(0, share_);
  splitter_->setStretchFactor(1, 100 - share_);
  back_->setAccessibleName(back_->text());
  connect(back_, &QPushButton::clicked, this, &TwoPane::show_list);
  connect(splitter_, &QSplitter::splitterMoved, this, [this](int px) {
    share_ = std::clamp(100 * px / std::max(1, splitter_->width()), kLeastShare, 100 - kLeastShare);
    moved_ = true;
  });
  arrange();
}

void TwoPane::keep_share() const {
  if (moved_) QSettings().setValue(key_of(objectName()), share_);
}

void TwoPane::set_least_width(int px) {
  least_px_ = px;
  arrange();
}

void TwoPane::show_page() {
  on_page_ = true;
  arrange();
}

void TwoPane::show_list() {
  on_page_ = false;
  arrange();
  list_->setFocus();
}

void TwoPane::resizeEvent(QResizeEvent*) {
  const bool before = both_;
  arrange();
  if (both_ != before || !isVisible()) {
    splitter_->setSizes({width() * share_ / 100, width() * (100 - share_) / 100});
  }
}

void TwoPane::arrange() {
  both_ = width() >= least_px_;
  list_->setVisible(both_ || !on_page_);
  page_->setVisible(both_ || on_page_);
  back_->setVisible(!both_ && on_page_);
}

}  // namespace walkdown::gui
