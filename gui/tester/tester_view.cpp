// SPDX-License-Identifier: Apache-2.0
#include "gui/tester/tester_view.h"

#include <QSettings>
#include <QVBoxLayout>
#include <algorithm>

#include "gui/day/strip_words.h"
#include "gui/look/sentences.h"
#include "gui/look/words.h"
#include "gui/parts/background.h"
#include "gui/parts/flow_layout.h"
#include "gui/parts/pieces.h"
#include "gui/tester/learn_dialog.h"
#include "reader/match/test_current.h"
#include "reader/tester/ports.h"

namespace walkdown::gui {
namespace {

constexpr const char* kPort = "tester/port";
constexpr int kMostLines = 500;
constexpr std::size_t kMostSamples = 12;

bool of_a_line(const record::EntryView& row) {
  return row.kind == audit::kReading || row.kind == audit::kRejected || row.kind == audit::kProbed;
}

// Empty where it was no plain text.
QString raw_of(const record::EntryView& row) {
  return q(record::entry_of(row).body.value("raw", std::string()));
}

}  // namespace

TesterView::TesterView(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      port_(new QComboBox),
      link_(label({}, 1.2, true)),
      walk_(new WalkPanel(session.listener())),
      lines_(new QPlainTextEdit) {
  auto* inner = new QWidget;
  auto* outer = new QVBoxLayout(this);
  outer->setContentsMargins(0, 0, 0, 0);
  outer->addWidget(scrolled(inner));
  auto* layout = new QVBoxLayout(inner);
  // Whoever walks looks at nothing else.
  layout->addWidget(walk_);
  add_ports(layout);
  layout->addWidget(link_);
  const audit::Planned& planned = session.prepared().planned;
  layout->addWidget(
      quiet_label(translated(match::judge_test_current(planned.plan, planned.tester.model).say)));
  layout->addWidget(quiet_label(tr("Lines as they came and what each became; all are on disk")));
  layout->addWidget(lines_, 1);
  lines_->setReadOnly(true);
  lines_->setMaximumBlockCount(kMostLines);
  lines_->setAccessibleName(tr("Lines of the tester"));
  connect(&session.listener(), &Listener::link_changed, this, &TesterView::see_link);
  connect(&session.listener(), &Listener::walk_changed, walk_, &WalkPanel::see);
  connect(&session.ledger(), &Ledger::grown, this, &TesterView::see_lines);
  see_link(LinkWord::none, {});
}

void TesterView::dress(const Look& look) { lines_->setMinimumHeight(look.em(14)); }

void TesterView::add_ports(QVBoxLayout* layout) {
  layout->addWidget(quiet_label(tr("Port: found by name, none is opened before you press Listen")));
  port_->setEditable(true);
  port_->setAccessibleName(tr("Port"));
  port_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  list_ports();
  layout->addWidget(port_);
  auto* row = new QWidget;
  auto* buttons = new FlowLayout(row);
  buttons->addWidget(button(tr("Listen"), [this] { listen(port_->currentText()); }));
  buttons->addWidget(button(tr("Stop"), [this] {
    session_.listener().stop();
    walk_->see({});
  }));
  buttons->addWidget(button(tr("Look for ports"), [this] { list_ports(); }));
  buttons->addWidget(button(tr("Learn a format \u2026"), [this] { learn(); }));
  layout->addWidget(row);
}

void TesterView::list_ports() {
  in_background(
      this, [] { return tester::list_ports(); },
      [this](const std::vector<tester::PortName>& ports) {
        const QString chosen = port_->currentText();
        port_->clear();
        for (const tester::PortName& port : ports) {
          port_->addItem(q(port.by_id.empty() ? port.path : port.by_id));
        }
        // The one of the last time, where it is here; none is opened by itself.
        const QString last = QSettings().value(QLatin1String(kPort)).toString();
        const int again = std::max(port_->findText(last), 0);
        port_->setCurrentText(chosen.isEmpty() && port_->count() > 0 ? port_->itemText(again)
                                                                     : chosen);
      });
}

void TesterView::listen(const QString& path) {
  port_->setCurrentText(path);
  if (path.trimmed().isEmpty()) return;
  session_.listener().listen(path.trimmed().toStdString());
  QSettings().setValue(QLatin1String(kPort), path.trimmed());
}

void TesterView::see_link(LinkWord word, const QString& say) {
  const Said said = link_words(word, say);
  link_->setText(said.more.isEmpty() ? said.text : said.text + QStringLiteral(": ") + said.more);
  set_tone(link_, said.tone);
}

QString TesterView::line_words(const record::EntryView& row) const {
  const auto body = record::entry_of(row).body;
  QString became;
  if (row.kind == audit::kReading) {
    became = q(body.value("pin", std::string()));
    if (body.value("over", false)) {
      became += tr(" above range");
    } else {
      became += tr(" %1 ohm").arg(
          number_words(static_cast<double>(body.value("uohm", std::int64_t{0})) * 1e-6, 3));
    }
  } else {
    became = tr("not taken: %1").arg(translated(body.value("why", std::string())));
  }
  const QString raw = raw_of(row);
  return QStringLiteral("%1  %2  \u2192  %3")
      .arg(clock_words_s(row.at_ms), raw.isEmpty() ? tr("(no plain text)") : raw, became);
}

// Only while it is looked at: four thousand lines a second are more than the eye takes in anyway.
void TesterView::see_lines() {
  if (!isVisible()) return;
  const auto& rows = session_.ledger().rows();
  const std::size_t from =
      rows.size() > kMostLines ? std::max(seen_, rows.size() - kMostLines) : seen_;
  QStringList fresh;
  for (std::size_t i = from; i < rows.size(); ++i) {
    if (of_a_line(rows[i])) fresh << line_words(rows[i]);
  }
  seen_ = rows.size();
  if (!fresh.isEmpty()) lines_->appendPlainText(fresh.join(QChar('\n')));
}

void TesterView::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  see_lines();
}

void TesterView::learn() {
  QStringList samples;
  const auto& rows = session_.ledger().rows();
  for (std::size_t i = rows.size(); i > 0 && samples.size() < static_cast<int>(kMostSamples); --i) {
    if (!of_a_line(rows[i - 1])) continue;
    if (const QString raw = raw_of(rows[i - 1]); !raw.isEmpty()) samples << raw;
  }
  auto* dialog = new LearnDialog(session_.prepared().planned.tester, samples, this);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->open();
}

}  // namespace walkdown::gui
