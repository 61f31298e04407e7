// SPDX-License-Identifier: Apache-2.0
#include "gui/tester/sample_line.h"

#include <QLabel>
#include <QVBoxLayout>

#include "gui/look/words.h"
#include "gui/parts/flow_layout.h"
#include "gui/parts/pieces.h"

namespace walkdown::gui {

SampleLine::SampleLine(QWidget* parent) : QWidget(parent), line_(new QLineEdit), told_(label({})) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(line_);
  line_->setReadOnly(true);
  line_->setAccessibleName(tr("Sample line: choose a part of it"));
  QFont font(QStringLiteral("DejaVu Sans Mono"));
  line_->setFont(font);
  auto* row = new QWidget;
  auto* buttons = new FlowLayout(row);
  for (std::size_t i = 0; i < kParts; ++i) {
    const auto part = static_cast<Part>(i);
    buttons->addWidget(button(
        part_words(part), [this, part] { mark(part); },
        tr("The chosen part is: %1").arg(part_words(part))));
  }
  buttons->addWidget(button(tr("Begin anew"), [this] { clear(); }));
  layout->addWidget(row);
  layout->addWidget(told_);
}

void SampleLine::set_line(const QString& line) {
  if (line == line_->text()) return;
  line_->setText(line);
  clear();
}

void SampleLine::clear() {
  markings_.clear();
  tell();
  Q_EMIT changed();
}

void SampleLine::mark(Part part) {
  if (!line_->hasSelectedText()) return;
  std::erase_if(markings_, [&](const Marking& mark) { return mark.part == part; });
  // Bytes, not characters: the pattern is matched against bytes.
  const QString before = line_->text().left(line_->selectionStart());
  markings_.push_back({part, static_cast<std::size_t>(before.toUtf8().size()),
                       static_cast<std::size_t>(line_->selectedText().toUtf8().size())});
  tell();
  Q_EMIT changed();
}

void SampleLine::tell() {
  QStringList parts;
  const QByteArray bytes = line_->text().toUtf8();
  for (const Marking& mark : markings_) {
    parts << part_words(mark.part) + QStringLiteral(": ") +
                 QString::fromUtf8(bytes.mid(static_cast<qsizetype>(mark.first),
                                             static_cast<qsizetype>(mark.length)));
  }
  told_->setText(parts.isEmpty() ? tr("Nothing is marked yet.") : parts.join(QStringLiteral("; ")));
}

QString part_words(Part part) {
  switch (part) {
    case Part::module:
      return SampleLine::tr("Module");
    case Part::rail:
      return SampleLine::tr("Rail");
    case Part::pin:
      return SampleLine::tr("Pin");
    case Part::value:
      return SampleLine::tr("Value");
    case Part::unit:
      return SampleLine::tr("Unit");
    case Part::seq:
      return SampleLine::tr("Line number");
  }
  return {};
}

}  // namespace walkdown::gui
