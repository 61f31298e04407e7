// SPDX-License-Identifier: Apache-2.0
#include "gui/day/checklist_view.h"

#include <QEvent>
#include <QHeaderView>
#include <QVBoxLayout>

#include "gui/parts/pieces.h"

namespace walkdown::gui {

ChecklistView::ChecklistView(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      model_(session.checklist()),
      tree_(new QTreeView),
      timeline_(new TimelineView),
      page_(new ItemPage(session)),
      release_(new ReleasePage(session)),
      pages_(new QStackedWidget) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  panes_ = new TwoPane(QStringLiteral("checklist"), make_list(), make_page(), 48);
  layout->addWidget(panes_);
  connect(tree_->selectionModel(), &QItemSelectionModel::currentChanged, this,
          [this](const QModelIndex& now) { chosen(now); });
  connect(tree_, &QTreeView::clicked, this, [this] { panes_->show_page(); });
  connect(tree_, &QTreeView::activated, this, [this] { panes_->show_page(); });
}

QWidget* ChecklistView::make_list() {
  tree_->setModel(&model_);
  tree_->setItemDelegate(&delegate_);
  tree_->setHeaderHidden(true);
  tree_->setRootIsDecorated(false);
  tree_->setIndentation(0);
  tree_->setItemsExpandable(false);
  tree_->setExpandsOnDoubleClick(false);
  tree_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  tree_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  tree_->setMinimumHeight(kLeastScrolled_px);
  tree_->setAccessibleName(tr("Checklist"));
  tree_->expandAll();
  tree_->viewport()->installEventFilter(this);
  auto* list = new QWidget;
  auto* layout = new QVBoxLayout(list);
  layout->setContentsMargins(0, 0, 0, 0);
  timeline_button_ =
      button(tr("Timeline"), [this] { show_timeline(timeline_button_->isChecked()); });
  timeline_button_->setCheckable(true);
  timeline_scroll_ = scrolled(timeline_);
  timeline_scroll_->hide();
  layout->addWidget(timeline_button_, 0, Qt::AlignLeft);
  layout->addWidget(tree_, 1);
  layout->addWidget(timeline_scroll_, 1);
  list->setFocusProxy(tree_);
  return list;
}

QWidget* ChecklistView::make_page() {
  pages_->addWidget(scrolled(page_));
  pages_->addWidget(scrolled(release_));
  return pages_;
}

void ChecklistView::show_timeline(bool on) {
  panes_->show_list();
  timeline_button_->setChecked(on);
  tree_->setVisible(!on);
  timeline_scroll_->setVisible(on);
}

void ChecklistView::see(const Seen& seen) {
  model_.see(seen);
  timeline_->see(bars_of(*seen, session_.checklist()));
  page_->see(*seen);
  release_->see(*seen);
  if (!first_look_) return;
  first_look_ = false;
  // What is to be done next: the first item that neither holds nor is locked away.
  const auto& state = seen->state;
  for (std::size_t i = 0; i < state.items.size(); ++i) {
    const std::size_t stage = session_.checklist().items[i].stage;
    if (state.stages[stage].locked || state.items[i].standing == day::Standing::holds) continue;
    tree_->setCurrentIndex(model_.index_of_item(i));
    return;
  }
  tree_->setCurrentIndex(model_.release_index());
}

void ChecklistView::chosen(const QModelIndex& index) {
  const std::size_t item = model_.item_of(index);
  const std::size_t stage = model_.stage_of(index);
  if (item != day::Checklist::npos) {
    page_->show_item(item);
    pages_->setCurrentIndex(0);
  } else if (stage != day::Checklist::npos) {
    page_->show_stage(stage);
    pages_->setCurrentIndex(0);
  } else {
    pages_->setCurrentIndex(1);
  }
}

void ChecklistView::show_item(std::size_t item) {
  tree_->setCurrentIndex(model_.index_of_item(item));
  panes_->show_page();
}

void ChecklistView::show_release() {
  tree_->setCurrentIndex(model_.release_index());
  panes_->show_page();
}

void ChecklistView::dress(const Look& look) {
  delegate_.dress(look);
  timeline_->dress(look);
  panes_->set_least_width(look.em(46));
  tree_->doItemsLayout();
}

bool ChecklistView::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Resize) {
    delegate_.set_width(tree_->viewport()->width());
    tree_->doItemsLayout();
  }
  return QWidget::eventFilter(watched, event);
}

}  // namespace walkdown::gui
