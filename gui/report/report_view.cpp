// SPDX-License-Identifier: Apache-2.0
#include "gui/report/report_view.h"

#include <QCoreApplication>
#include <QPointer>
#include <QPrintDialog>
#include <QPrinter>
#include <QSaveFile>
#include <QThreadPool>
#include <QVBoxLayout>

#include "checklist/report/build.h"
#include "checklist/report/html.h"
#include "gui/look/words.h"
#include "gui/parts/ask_file.h"
#include "gui/parts/flow_layout.h"
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
  page_->hide();
}

void ReportView::make() {
  make_->setEnabled(false);
  said_->setText(tr("Reading the whole record \u2026"));
  const QPointer<ReportView> self(this);
  QThreadPool::globalInstance()->start([self, path = session_.path()] {
    const auto model = report::build(path);
    auto html = std::make_shared<Result<std::string>>(
        model ? Result<std::string>(report::html(*model)) : Result<std::string>(model.error()));
    QMetaObject::invokeMethod(QCoreApplication::instance(), [self, html] {
      if (self) self->told(*html);
    });
  });
}

void ReportView::told(const Result<std::string>& html) {
  make_->setEnabled(true);
  set_tone(said_, html ? "" : "bad");
  if (!html) return said_->setText(q(html.error().sentence()));
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
  const Done kept = write_pdf(html_, path);
  said_->setText(kept ? tr("Saved: %1").arg(path) : q(kept.error().sentence()));
}

void ReportView::save_html() {
  const QString path = ask_to_save(this, tr("Save as HTML"), QStringLiteral("report.html"));
  if (path.isEmpty()) return;
  QSaveFile file(path);
  const QByteArray bytes = QByteArray::fromStdString(html_);
  const bool kept =
      file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size() && file.commit();
  said_->setText(kept ? tr("Saved: %1").arg(path) : file.errorString());
}

void ReportView::print() {
  QPrinter printer(QPrinter::HighResolution);
  QPrintDialog dialog(&printer, this);
  if (dialog.exec() == QDialog::Accepted) printable(html_, 640)->print(&printer);
}

}  // namespace walkdown::gui
