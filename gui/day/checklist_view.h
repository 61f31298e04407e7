// SPDX-License-Identifier: Apache-2.0
// The stages with their items, the page of what is chosen, and the timeline.
#pragma once

#include <QScrollArea>
#include <QStackedWidget>
#include <QTreeView>

#include "gui/day/item_delegate.h"
#include "gui/day/item_model.h"
#include "gui/day/item_page.h"
#include "gui/day/release_page.h"
#include "gui/day/timeline.h"
#include "gui/parts/pieces.h"
#include "gui/parts/two_pane.h"

namespace walkdown::gui {

class ChecklistView : public QWidget {
  Q_OBJECT

 public:
  explicit ChecklistView(Session& session, QWidget* parent = nullptr);

  void see(const Seen& seen);
  void dress(const Look& look);
  void show_item(std::size_t item);
  void show_release();
  void show_timeline(bool on);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  [[nodiscard]] QWidget* make_list();
  [[nodiscard]] QWidget* make_page();
  void chosen(const QModelIndex& index);

  Session& session_;
  ItemModel model_;
  ItemDelegate delegate_;
  QTreeView* tree_;
  TimelineView* timeline_;
  QScrollArea* timeline_scroll_ = nullptr;
  QPushButton* timeline_button_ = nullptr;
  ItemPage* page_;
  ReleasePage* release_;
  QStackedWidget* pages_;
  TwoPane* panes_;
  bool first_look_ = true;
};

}  // namespace walkdown::gui
