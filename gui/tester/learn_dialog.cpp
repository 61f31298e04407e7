// SPDX-License-Identifier: Apache-2.0
#include "gui/tester/learn_dialog.h"

#include <QApplication>
#include <QVBoxLayout>

#include "gui/look/sentences.h"
#include "gui/look/words.h"
#include "gui/parts/ask_file.h"
#include "gui/parts/background.h"
#include "gui/parts/pieces.h"
#include "gui/parts/plain_edit.h"
#include "gui/parts/save.h"

namespace walkdown::gui {

LearnDialog::LearnDialog(tester::Profile base, const QStringList& lines, QWidget* parent)
    : Dialog(58, parent),
      base_(std::move(base)),
      profile_(base_),
      samples_(new PlainEdit),
      sample_(new SampleLine),
      pattern_label_(quiet_label({})),
      tried_(new QPlainTextEdit),
      save_(button(tr("Save as a profile \u2026"), [this] { save(); })) {
  setWindowTitle(tr("Learn a format"));
  QVBoxLayout* layout = body();
  layout->addWidget(label(tr("Lines of the tester: paste a few"), 1.1, true));
  layout->addWidget(samples_);
  layout->addWidget(label(tr("Choose a part of the first line, then press what it is"), 1.1, true));
  layout->addWidget(sample_);
  layout->addWidget(pattern_label_);
  layout->addWidget(label(tr("What every line becomes"), 1.1, true));
  layout->addWidget(tried_);
  foot()->addWidget(button(tr("Close"), [this] { reject(); }));
  foot()->addWidget(save_);
  samples_->setAccessibleName(tr("Lines of the tester"));
  samples_->setTabChangesFocus(true);
  const int line = QFontMetrics(QApplication::font()).lineSpacing();
  samples_->setMinimumHeight(4 * line);
  tried_->setMinimumHeight(5 * line);
  tried_->setReadOnly(true);
  tried_->setAccessibleName(tr("What every line becomes"));
  connect(samples_, &QPlainTextEdit::textChanged, this, &LearnDialog::take_first);
  connect(sample_, &SampleLine::changed, this, &LearnDialog::try_it);
  samples_->setPlainText(lines.join(QChar('\n')));
  if (lines.isEmpty()) try_it();
}

void LearnDialog::take_first() {
  sample_->set_line(samples_->toPlainText().section(QChar('\n'), 0, 0));
  try_it();
}

void LearnDialog::try_it() {
  all_taken_ = false;
  save_->setEnabled(false);
  const std::string first = sample_->line();
  profile_ = profile_for(base_, first);
  const auto made = pattern_of(first, sample_->markings());
  if (!made) {
    pattern_label_->setText(translated(made.error()));
    return tried_->clear();
  }
  pattern_ = *made;
  pattern_label_->setText(tr("Pattern: %1").arg(q(pattern_)));
  std::vector<std::string> lines;
  for (const QString& line : samples_->toPlainText().split(QChar('\n'))) {
    lines.push_back(line.toStdString());
  }
  const auto tried = try_pattern(profile_, pattern_, lines);
  if (!tried) return pattern_label_->setText(translated(tried.error()));
  QString text;
  all_taken_ = !tried->empty();
  for (const Tried& each : *tried) {
    all_taken_ = all_taken_ && each.taken;
    text += (each.taken ? tr("taken: ") : tr("NOT taken: ")) + q(each.line) +
            QStringLiteral("  \u2192  ") + translated(each.what) + QChar('\n');
  }
  tried_->setPlainText(text);
  save_->setEnabled(all_taken_);
}

void LearnDialog::save() {
  const QString path = ask_to_save(this, tr("Save as a profile"), QStringLiteral("tester.toml"));
  if (path.isEmpty()) return;
  const QByteArray text = QByteArray::fromStdString(profile_text(profile_, pattern_));
  in_background(
      this, [path, text] { return save_file(path, text); },
      [this](const Done& kept) {
        if (kept) return accept();
        pattern_label_->setText(translated(kept.error()));
      });
}

}  // namespace walkdown::gui
