// SPDX-License-Identifier: Apache-2.0
// A new show in a few steps: plan, site, igniters, tester, checklist, and where the record goes.
// The crew is enrolled in the record itself, once it is open.
#pragma once

#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QStackedWidget>
#include <vector>

#include "gui/new_show/file_page.h"
#include "gui/new_show/show_draft.h"

namespace walkdown::gui {

class NewShowDialog : public QDialog {
  Q_OBJECT

 public:
  explicit NewShowDialog(QWidget* parent = nullptr);

  [[nodiscard]] ShowDraft draft() const;
  [[nodiscard]] QString record() const { return record_->text().trimmed(); }
  void set_path(show::Role role, const QString& path);
  void set_record(const QString& path) { record_->setText(path); }
  void go(int step);
  [[nodiscard]] int steps() const { return pages_->count(); }
  // What the program makes of the files as they are chosen now.
  [[nodiscard]] QString told() const { return looked_->text(); }
  [[nodiscard]] bool ready() const { return make_->isVisible() && make_->isEnabled(); }

 protected:
  bool focusNextPrevChild(bool next) override;

 private:
  [[nodiscard]] QWidget* make_last();
  void look();
  void tell(const Looked& looked);

  std::vector<FilePage*> files_;
  QStackedWidget* pages_;
  QLabel* where_;
  QLabel* looked_;
  QLineEdit* record_;
  QPushButton* back_;
  QPushButton* on_;
  QPushButton* make_;
  bool good_ = false;
  int looks_ = 0;
};

}  // namespace walkdown::gui
