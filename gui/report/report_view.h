// SPDX-License-Identifier: Apache-2.0
// The report, as it would be printed; to a PDF, an HTML file, or paper.
#pragma once

#include <QTextBrowser>
#include <memory>

#include "gui/live/session.h"
#include "gui/look/look.h"
#include "gui/parts/pieces.h"

namespace walkdown::gui {

class ReportView : public QWidget {
  Q_OBJECT

 public:
  explicit ReportView(Session& session, QWidget* parent = nullptr);

  // Builds it from the record's file, in another thread.
  void make();
  void dress(const Look& look);
  [[nodiscard]] bool made() const { return !html_.empty(); }

 private:
  void told(const Result<std::string>& html);
  void save_pdf();
  void save_html();
  void saved(const QString& path, const Done& kept);
  void print();

  Session& session_;
  Look look_;
  std::string html_;
  std::unique_ptr<QTextDocument> document_;  // as it is looked at
  QTextBrowser* page_;
  QLabel* said_;
  QPushButton* make_;
  QPushButton* pdf_;
  QPushButton* save_;
  QPushButton* print_;
};

}  // namespace walkdown::gui
