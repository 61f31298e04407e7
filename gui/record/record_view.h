// SPDX-License-Identifier: Apache-2.0
// The record: its entries, whether it holds, and its mark to write on the permit.
#pragma once

#include <QCheckBox>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QTableView>

#include "checklist/record/verify.h"
#include "gui/live/session.h"
#include "gui/look/look.h"
#include "gui/parts/pieces.h"
#include "gui/parts/two_pane.h"
#include "gui/record/entry_model.h"
#include "gui/record/qr_code.h"

namespace walkdown::gui {

class RecordView : public QWidget {
  Q_OBJECT

 public:
  explicit RecordView(Session& session, QWidget* parent = nullptr);

  void see(const Seen& seen);
  void dress(const Look& look);
  // Reads the whole file again and derives every claim, in another thread.
  void verify();
  [[nodiscard]] EntryModel& model() { return model_; }
  [[nodiscard]] QString verified() const { return verified_->text(); }

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  [[nodiscard]] QWidget* make_list();
  [[nodiscard]] QWidget* make_page();
  void filter();
  void fit_columns();
  void show_entry();
  void told(const Result<record::Report>& report);

  Session& session_;
  EntryModel model_;
  QTableView* table_;
  QLineEdit* find_;
  QCheckBox* readings_;
  QLabel* says_;  // the chosen entry, whole: its row may be too short for it
  QPlainTextEdit* entry_;
  QLabel* mark_;
  QLabel* verified_;
  QPushButton* verify_;
  QrCode* code_;
  TwoPane* panes_;
  int least_px_ = 0;  // width of the table that has room for the kinds
};

}  // namespace walkdown::gui
