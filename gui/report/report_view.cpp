// SPDX-License-Identifier: Apache-2.0
#include "gui/report/report_view.h"

#include <QVBoxLayout>

#include "checklist/report/build.h"
#include "checklist/report/html.h"
#include "gui/look/sentences.h"
#include "gui/look/words.h"
#include "gui/parts/ask_file.h"
#include "gui/parts/background.h"
#include "gui/parts/flow_layout.h"
#include "gui/parts/paper.h"
#include "gui/parts/save.h"
#include "gui/report/printable.h"

namespace walkdown::gui {

ReportView::ReportView(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      page_(new QTextBrowser),
      said_(label(tr("The report is made from the record alone, which is verified on the way."))),
      make_(button(tr("Make the report"), [this] { make(); })),
      pdf_(button(tr("Save as PDF \u2026"), [this] { save_pdf(); })),
      save_(button(tr("Save as HTML \u2026"), [this] { save_html(); })),
      print_(button(tr("Print \u2026"), [this] { print(); })) {
  auto* layout = new QVBoxLayout(this);
  auto* row = new QWidget;
  auto* buttons = new FlowLayout(row);
  for (QPushButton* each : {make_, pdf_, save_, print_}) buttons->addWidget(each);
  for (QPushButton* each : {pdf_, save_, print_}) each->setEnabled(false);
  layout->addWidget(row);
  layout->addWidget(said_);
  layout->addWidget(page_, 1);
  page_->setAccessibleName(tr("The report"));
  page_->setOpenLinks(false);
  page_->setMinimumHeight(kLeastScrolled_px);
  page_->hide();
}

void ReportView::make() {
  make_->setEnabled(false);
  said_->setText(tr("Reading the whole record \u2026"));
  in_background(
      this,
      [path = session_.path()] {
        const auto model = report::build(path);
        return model ? Result<std::string>(report::html(*model))
                     : Result<std::string>(model.error());
      },
      [this](const Result<std::string>& html) { told(html); });
}

void ReportView::told(const Result<std::string>& html) {
  make_->setEnabled(true);
  set_tone(said_, html ? "" : "bad");
  if (!html) return said_->setText(translated(html.error()));
  html_ = *html;
  dress(look_);
  page_->show();
  said_->setText(tr("As it stood at %1; printed it is black on white.")
                     .arg(clock_words_s(session_.desk().now().at_ms)));
  for (QPushButton* each : {pdf_, save_, print_}) each->setEnabled(true);
}

void ReportView::dress(const Look& look) {
  look_ = look;
  if (html_.empty()) return;
  auto fresh = preview(html_, 640, look_);
  page_->setDocument(fresh.get());
  document_ = std::move(fresh);
}

void ReportView::save_pdf() {
  const QString path = ask_to_save(this, tr("Save as PDF"), QStringLiteral("report.pdf"));
  if (path.isEmpty()) return;
  in_background(
      this, [html = html_, path] { return write_pdf(html, path); },
      [this, path](const Done& kept) { saved(path, kept); });
}

void ReportView::save_html() {
  const QString path = ask_to_save(this, tr("Save as HTML"), QStringLiteral("report.html"));
  if (path.isEmpty()) return;
  in_background(
      this, [bytes = QByteArray::fromStdString(html_), path] { return save_file(path, bytes); },
      [this, path](const Done& kept) { saved(path, kept); });
}

void ReportView::saved(const QString& path, const Done& kept) {
  set_tone(said_, kept ? "" : "bad");
  said_->setText(kept ? tr("Saved: %1").arg(path) : translated(kept.error()));
}

void ReportView::print() {
  ask_to_print(
      this, [html = html_] { return printable(html, 640); },
      [this](bool printed) {
        set_tone(said_, printed ? "" : "bad");
        said_->setText(printed_words(printed));
      });
}

}  // namespace walkdown::gui
