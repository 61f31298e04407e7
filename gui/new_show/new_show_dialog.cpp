// SPDX-License-Identifier: Apache-2.0
#include "gui/new_show/new_show_dialog.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

#include "gui/look/sentences.h"
#include "gui/look/words.h"
#include "gui/parts/ask_file.h"
#include "gui/parts/background.h"
#include "gui/parts/pieces.h"
#include "gui/parts/reading_order.h"
#include "gui/parts/top_layout.h"

namespace walkdown::gui {
namespace {

constexpr std::size_t kMostTold = 8;

QString told_list(const std::vector<std::string>& lines) {
  QString text;
  for (std::size_t i = 0; i < std::min(lines.size(), kMostTold); ++i) {
    text += QStringLiteral("\n\u2022 ") + translated(lines[i]);
  }
  if (lines.size() > kMostTold) text += QStringLiteral("\n\u2022 \u2026");
  return text;
}

std::vector<Step> steps_of() {
  const auto tr = [](const char* text) { return NewShowDialog::tr(text); };
  return {
      {show::Role::plan, tr("Plan"), tr("The wiring table, as CSV: one row a pin."), {}},
      {show::Role::modules,
       tr("Modules"),
       tr("How many pins each rail has; may stay empty: a rail is then as long as its last "
          "planned pin."),
       {}},
      {show::Role::site,
       tr("Site"),
       tr("Positions and boundaries on the ground, as GeoJSON; may stay empty."),
       {}},
      {show::Role::distances,
       tr("Distances"),
       tr("The table of distances that holds here. The one that comes with the program is an "
          "example: yours replaces it."),
       {QStringLiteral("distances/radius-70ft-per-inch.toml")}},
      {show::Role::igniters,
       tr("Igniters"),
       tr("Resistances and currents. The generic file has no currents: they come from the maker's "
          "sheet."),
       {QStringLiteral("igniters/generic.toml")}},
      {show::Role::tester,
       tr("Tester"),
       tr("How the tester's port is set and its lines look."),
       {QStringLiteral("testers/addressed-lines.toml"), QStringLiteral("testers/bare-values.toml"),
        QStringLiteral("testers/crc-lines.toml")}},
      {show::Role::checklist,
       tr("Checklist"),
       tr("The stages and items of the day."),
       {QStringLiteral("checklists/evening-show.toml"), QStringLiteral("checklists/club-show.toml"),
        QStringLiteral("checklists/thunder-reopening.toml")}},
  };
}

}  // namespace

NewShowDialog::NewShowDialog(QWidget* parent)
    : QDialog(parent),
      pages_(new QStackedWidget),
      where_(quiet_label({})),
      looked_(label({})),
      record_(new QLineEdit),
      back_(button(tr("Back"), [this] { go(pages_->currentIndex() - 1); })),
      on_(button(tr("Next"), [this] { go(pages_->currentIndex() + 1); })),
      make_(button(tr("Open the new record"), [this] { accept(); })) {
  setWindowTitle(tr("New show"));
  auto* layout = new QVBoxLayout(this);
  layout->addWidget(where_);
  layout->addWidget(pages_, 3);
  layout->addWidget(scrolled(looked_), 2);
  looked_->setAlignment(Qt::AlignTop);
  for (const Step& step : steps_of()) {
    files_.push_back(new FilePage(step));
    pages_->addWidget(scrolled(files_.back()));
    connect(files_.back(), &FilePage::changed, this, &NewShowDialog::look);
  }
  pages_->addWidget(scrolled(make_last()));
  auto* row = new QHBoxLayout;
  row->addWidget(button(tr("Cancel"), [this] { reject(); }));
  row->addStretch();
  row->addWidget(back_);
  row->addWidget(on_);
  row->addWidget(make_);
  layout->addLayout(row);
  connect(record_, &QLineEdit::textChanged, this, [this] { go(pages_->currentIndex()); });
  go(0);
  look();
}

QWidget* NewShowDialog::make_last() {
  auto* page = new QWidget;
  auto* layout = new TopLayout(page);
  layout->addWidget(label(tr("The record"), 1.4, true));
  layout->addWidget(
      label(tr("A new file, on this computer. Everything of the day is kept in it. "
               "The crew is enrolled once it is open.")));
  record_->setAccessibleName(tr("The record's file"));
  layout->addWidget(record_);
  layout->addWidget(button(tr("Choose where \u2026"), [this] {
    const QString path = ask_to_save(this, tr("The record's file"));
    if (!path.isEmpty()) record_->setText(path);
  }));
  return page;
}

bool NewShowDialog::focusNextPrevChild(bool next) { return focus_next(*this, next); }

ShowDraft NewShowDialog::draft() const {
  ShowDraft draft;
  for (const FilePage* page : files_) draft.path(page->role()) = page->path();
  return draft;
}

void NewShowDialog::set_path(show::Role role, const QString& path) {
  for (FilePage* page : files_) {
    if (page->role() == role) page->set_path(path);
  }
}

void NewShowDialog::go(int step) {
  const int last = pages_->count() - 1;
  pages_->setCurrentIndex(std::clamp(step, 0, last));
  const int now = pages_->currentIndex();
  where_->setText(tr("Step %1 of %2").arg(now + 1).arg(pages_->count()));
  back_->setEnabled(now > 0);
  on_->setVisible(now < last);
  make_->setVisible(now == last);
  make_->setEnabled(good_ && !record().isEmpty());
}

// In another thread; an answer that is out of date is dropped.
void NewShowDialog::look() {
  good_ = false;
  const int turn = ++looks_;
  in_background(
      this, [draft = draft()] { return look_at(draft); },
      [this, turn](const Looked& looked) {
        if (looks_ == turn) tell(looked);
      });
}

void NewShowDialog::tell(const Looked& looked) {
  good_ = looked.good;
  set_tone(looked_, looked.good ? "" : "bad");
  QString text = looked.good ? translated(looked.summary) : tr("What must be mended first:");
  text += told_list(looked.errors);
  if (!looked.warnings.empty()) text += QChar('\n') + tr("Worth a look:");
  text += told_list(looked.warnings);
  looked_->setText(text);
  go(pages_->currentIndex());
}

}  // namespace walkdown::gui
