// SPDX-License-Identifier: Apache-2.0
#include "gui/record/record_view.h"

#include <QEvent>
#include <QHeaderView>
#include <QVBoxLayout>

#include "checklist/desk/copy.h"
#include "checklist/desk/tell.h"
#include "gui/look/sentences.h"
#include "gui/look/words.h"
#include "gui/parts/background.h"
#include "gui/parts/flow_layout.h"
#include "gui/parts/top_layout.h"

namespace walkdown::gui {
namespace {

constexpr qsizetype kMostText = 20'000;

}  // namespace

RecordView::RecordView(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      model_(session.ledger(), session.checklist()),
      table_(new QTableView),
      find_(new QLineEdit),
      readings_(new QCheckBox(tr("Readings too"))),
      says_(label({})),
      entry_(new QPlainTextEdit),
      mark_(label({}, 1.5, true)),
      verified_(label({})),
      verify_(button(tr("Verify now"), [this] { verify(); })),
      code_(new QrCode) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  panes_ = new TwoPane(QStringLiteral("record"), make_list(), make_page(), 62);
  layout->addWidget(panes_);
  connect(&session.ledger(), &Ledger::grown, &model_, &EntryModel::grow);
  connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
          &RecordView::show_entry);
  connect(table_, &QTableView::activated, panes_, &TwoPane::show_page);
  connect(find_, &QLineEdit::textChanged, this, &RecordView::filter);
  connect(readings_, &QCheckBox::toggled, this, &RecordView::filter);
  filter();
}

QWidget* RecordView::make_list() {
  auto* left = new QWidget;
  auto* layout = new QVBoxLayout(left);
  layout->setContentsMargins(0, 0, 0, 0);
  auto* tools = new QWidget;
  auto* row = new FlowLayout(tools);
  QLabel* name = quiet_label(tr("Find in the entries"));
  name->setWordWrap(false);
  row->addWidget(name);
  find_->setAccessibleName(tr("Find in the entries"));
  readings_->setAccessibleName(readings_->text());
  row->addWidget(find_);
  row->addWidget(readings_);
  layout->addWidget(tools);
  table_->setModel(&model_);
  table_->setMinimumHeight(kLeastScrolled_px);
  table_->setAccessibleName(tr("Entries of the record"));
  table_->verticalHeader()->hide();
  table_->setSelectionBehavior(QAbstractItemView::SelectRows);
  table_->setSelectionMode(QAbstractItemView::SingleSelection);
  table_->setShowGrid(false);
  table_->setTabKeyNavigation(false);
  table_->horizontalHeader()->setStretchLastSection(true);
  table_->viewport()->installEventFilter(this);
  layout->addWidget(table_, 1);
  left->setFocusProxy(table_);
  return left;
}

QWidget* RecordView::make_page() {
  auto* page = new QWidget;
  auto* layout = new TopLayout(page);
  layout->addWidget(quiet_label(tr("Mark of the record now: write it on the permit")));
  layout->addWidget(mark_);
  layout->addWidget(code_);
  layout->addWidget(verified_);
  layout->addWidget(verify_);
  layout->addWidget(says_);
  layout->addWidget(quiet_label(tr("The entry, as it stands on disk")));
  entry_->setReadOnly(true);
  entry_->setAccessibleName(tr("The entry, as it stands on disk"));
  layout->addWidget(entry_);
  verified_->setText(tr("Not verified since it was opened."));
  return scrolled(page);
}

void RecordView::filter() {
  model_.set_filter({readings_->isChecked(), find_->text().trimmed().toStdString()});
  table_->scrollToBottom();
}

void RecordView::show_entry() {
  const QModelIndex index = table_->currentIndex();
  if (!index.isValid()) return;
  const record::Entry entry = record::entry_of(model_.row_at(index.row()));
  says_->setText(translated(desk::tell(session_.checklist(), entry)));
  QString text = q(entry.body.dump(2));
  // A sign-off is text for people: its lines are shown as lines.
  text.replace(QStringLiteral("\\n"), QStringLiteral("\n    "));
  // The opening has the whole show in it, which may be megabytes.
  if (text.size() > kMostText) text = text.left(kMostText) + QStringLiteral("\n\u2026");
  entry_->setPlainText(
      QStringLiteral("%1  %2  %3\n").arg(entry.n).arg(moment_words(entry.at_ms), q(entry.kind)) +
      text);
}

void RecordView::see(const Seen& seen) {
  if (mark_->text() == seen->mark) return;
  mark_->setText(seen->mark);
  code_->show_text(seen->mark);
}

void RecordView::verify() {
  verify_->setEnabled(false);
  verified_->setText(tr("Reading the whole record \u2026"));
  in_background(
      this,
      [path = session_.path()] {
        const auto copy = desk::Copy::open(path);
        return copy ? Result<record::Report>(copy->report()) : Result<record::Report>(copy.error());
      },
      [this](const Result<record::Report>& report) { told(report); });
}

void RecordView::told(const Result<record::Report>& report) {
  verify_->setEnabled(true);
  if (!report) {
    set_tone(verified_, "bad");
    return verified_->setText(translated(report.error()));
  }
  set_tone(verified_, report->holds ? "good" : "bad");
  if (report->holds) {
    verified_->setText(tr("At %1 all %2 entries held; the mark was %3.")
                           .arg(clock_words_s(session_.desk().now().at_ms))
                           .arg(static_cast<qulonglong>(report->entries))
                           .arg(q(report->mark)));
  } else {
    verified_->setText(tr("DOES NOT HOLD, line %1: %2")
                           .arg(static_cast<qulonglong>(report->first_bad.value_or(0)))
                           .arg(translated(report->why)));
  }
}

// The kind gives way to the words, which say it too.
void RecordView::fit_columns() {
  table_->setColumnHidden(2, table_->viewport()->width() < least_px_);
}

bool RecordView::eventFilter(QObject* watched, QEvent* event) {
  if (event->type() == QEvent::Resize) fit_columns();
  return QWidget::eventFilter(watched, event);
}

void RecordView::dress(const Look& look) {
  code_->dress(look);
  panes_->set_least_width(look.em(46));
  const QFontMetrics metrics(look.font());
  table_->verticalHeader()->setDefaultSectionSize(metrics.height() + look.em(0.6));
  table_->setColumnWidth(0, metrics.horizontalAdvance(QStringLiteral("00000000")));
  table_->setColumnWidth(1, metrics.horizontalAdvance(QStringLiteral("00:00:000")));
  table_->setColumnWidth(2, metrics.horizontalAdvance(QStringLiteral("clock-stepped")));
  least_px_ = look.em(46);
  fit_columns();
  entry_->setMinimumHeight(look.em(14));
}

}  // namespace walkdown::gui
