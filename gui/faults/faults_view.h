// SPDX-License-Identifier: Apache-2.0
// What is to be done in the field, in walking order, large enough for arm's length.
#pragma once

#include <QComboBox>
#include <QListView>
#include <QTextDocument>
#include <memory>
#include <string>
#include <utility>

#include "gui/faults/fault_delegate.h"
#include "gui/faults/fault_model.h"
#include "gui/faults/rounds.h"
#include "gui/faults/walk_sheet.h"
#include "gui/live/session.h"
#include "gui/parts/pieces.h"
#include "gui/parts/two_pane.h"

namespace walkdown::gui {

class FaultsView : public QWidget {
  Q_OBJECT

 public:
  explicit FaultsView(Session& session, QWidget* parent = nullptr);

  void see(const Seen& seen);
  void dress(const Look& look);
  [[nodiscard]] const FaultModel& model() const { return model_; }
  void choose(int row);

 Q_SIGNALS:
  void pin_wanted(walkdown::plan::PinId pin);
  // A finding was re-hooked, and that is on disk: the demo's hand does it in its field.
  void rehooked(const walkdown::match::Finding& finding);

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  [[nodiscard]] QWidget* make_list();
  [[nodiscard]] QWidget* make_page();
  void add_places();
  void refill();
  void walk(std::vector<Fault>& faults);
  void choose_next();
  void show_fault();
  void rehook();
  [[nodiscard]] SheetHead sheet_head() const;
  void print();
  [[nodiscard]] const Fault* chosen() const;

  Session& session_;
  FaultModel model_;
  FaultDelegate delegate_;
  QListView* list_;
  QLabel* head_;
  QLabel* kind_;
  QLabel* where_;
  QLabel* say_;
  QLabel* sure_;
  QLabel* readings_;
  QPushButton* press_;
  QPushButton* look_at_;
  QPushButton* next_;
  QComboBox* from_;
  QWidget* from_row_ = nullptr;
  TwoPane* panes_;
  std::shared_ptr<const match::Outcome> shown_;
  std::size_t shown_rehooks_ = 0;
  bool first_look_ = true;
  Round round_;
  std::pair<std::string, std::vector<std::string>> round_for_;  // asked anew only where it differs
};

}  // namespace walkdown::gui
