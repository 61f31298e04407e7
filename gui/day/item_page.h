// SPDX-License-Identifier: Apache-2.0
// The page of one item or one stage: its question, how it stands and why, and what can be done.
#pragma once

#include <QFrame>
#include <QVBoxLayout>

#include "gui/day/answer_form.h"

namespace walkdown::gui {

class ItemPage : public QWidget {
  Q_OBJECT

 public:
  explicit ItemPage(Session& session, QWidget* parent = nullptr);

  void show_item(std::size_t item);
  void show_stage(std::size_t stage);
  void see(const Snapshot& seen);

 private:
  void begin(const QString& title);
  void fill_item();
  void answer();
  void second(std::uint64_t n);
  void waive();
  void close_pause();

  Session& session_;
  std::size_t item_ = day::Checklist::npos;
  std::size_t stage_ = day::Checklist::npos;
  QVBoxLayout* layout_;
  AnswerForm* form_ = nullptr;
  QLabel* standing_ = nullptr;
  QLabel* why_ = nullptr;
  QLabel* seen_answer_ = nullptr;
  QLabel* trouble_ = nullptr;
  QPushButton* second_ = nullptr;
  QPushButton* waive_ = nullptr;
  QPushButton* pause_ = nullptr;
};

}  // namespace walkdown::gui
