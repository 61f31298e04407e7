// SPDX-License-Identifier: Apache-2.0
// The tester: which port, how its link is, its lines with what each became.
#pragma once

#include <QComboBox>
#include <QPlainTextEdit>
#include <QVBoxLayout>

#include "gui/live/session.h"
#include "gui/look/look.h"
#include "gui/tester/walk_panel.h"

namespace walkdown::gui {

class TesterView : public QWidget {
  Q_OBJECT

 public:
  explicit TesterView(Session& session, QWidget* parent = nullptr);

  void dress(const Look& look);
  void listen(const QString& path);
  [[nodiscard]] QString lines() const { return lines_->toPlainText(); }
  [[nodiscard]] WalkPanel& walk() { return *walk_; }
  void learn();

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  void add_ports(QVBoxLayout* layout);
  void list_ports();
  void see_link(LinkWord word, const QString& say);
  void see_lines();
  [[nodiscard]] QString line_words(const record::EntryView& row) const;

  Session& session_;
  QComboBox* port_;
  QLabel* link_;
  WalkPanel* walk_;
  QPlainTextEdit* lines_;
  std::size_t seen_ = 0;  // rows of the ledger looked at
};

}  // namespace walkdown::gui
