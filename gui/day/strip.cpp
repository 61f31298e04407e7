// SPDX-License-Identifier: Apache-2.0
#include "gui/day/strip.h"

#include <QEvent>
#include <QFontInfo>
#include <QResizeEvent>
#include <QVBoxLayout>
#include <utility>

#include "gui/look/words.h"
#include "gui/parts/flow_layout.h"
#include "gui/parts/pieces.h"

namespace walkdown::gui {
namespace {

constexpr int kSlack_px = 2;  // a label shows a text of just its own width cut off

}  // namespace

StripField::StripField(const QString& caption, QString brief, int least_em, bool grows)
    : name_(caption),
      brief_(std::move(brief)),
      caption_(quiet_label(caption)),
      value_(label({}, 1.1, true)),
      least_em_(least_em) {
  setProperty("card", true);
  caption_->setWordWrap(false);
  value_->setWordWrap(false);
  layout_ = new QBoxLayout(QBoxLayout::TopToBottom, this);
  layout_->setContentsMargins(8, 2, 8, 3);
  layout_->setSpacing(0);
  layout_->addWidget(caption_);
  layout_->addWidget(value_, 1);
  setAccessibleName(caption);
  setSizePolicy(grows ? QSizePolicy::Expanding : QSizePolicy::Preferred, QSizePolicy::Fixed);
}

QSize StripField::sizeHint() const {
  const int em = QFontInfo(caption_->font()).pixelSize();
  const int line = std::max(QFontMetrics(value_->font()).height(), value_->sizeHint().height());
  int value = least_em_ * em;
  for (const QString& word : words_) {
    value = std::max(value, QFontMetrics(value_->font()).horizontalAdvance(word) + kSlack_px);
  }
  if (layout_->direction() == QBoxLayout::LeftToRight) {
    return {caption_->sizeHint().width() + value + 24, line + 8};
  }
  return {std::max(caption_->sizeHint().width(), value) + 18,
          caption_->sizeHint().height() + line + 7};
}

void StripField::make_room_for(const QStringList& words) {
  words_ = words;
  updateGeometry();
}

void StripField::set_flat(bool flat) {
  layout_->setDirection(flat ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
  layout_->setSpacing(flat ? 8 : 0);
  caption_->setText(flat ? brief_ : name_);
  updateGeometry();
  fit();
}

int StripField::room() const {
  const bool flat = layout_->direction() == QBoxLayout::LeftToRight;
  return width() - 18 - (flat ? caption_->sizeHint().width() + 8 : 0);
}

void StripField::say(const Said& said) {
  whole_ = said.text;
  set_tone(value_, said.tone);
  const QString more = said.more.isEmpty() ? said.text : said.text + QChar('\n') + said.more;
  setToolTip(more);
  setAccessibleDescription(more);
  fit();
}

void StripField::fit() {
  value_->setText(QFontMetrics(value_->font()).elidedText(whole_, Qt::ElideRight, room()));
}

void StripField::resizeEvent(QResizeEvent*) { fit(); }

void StripField::changeEvent(QEvent* event) {
  if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) updateGeometry();
  QFrame::changeEvent(event);
}

Strip::Strip(QWidget* parent)
    : QFrame(parent),
      views_(button(
          {}, [] {}, tr("Views"))) {
  auto* layout = new FlowLayout(this, 4);
  layout->setContentsMargins(4, 4, 4, 4);
  hold_ = button(
      tr("Call a hold"), [this] { Q_EMIT hold_called(); }, tr("Call a hold: anyone, at once"));
  hold_->setProperty("alarm", true);
  QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Fixed);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
  fields_ = {new StripField(tr("Time to show"), tr("Show in"), 13, false),
             new StripField(tr("The day"), tr("Day"), 7, true),
             new StripField(tr("Release"), tr("Release"), 23, true),
             new StripField(tr("Arming key"), tr("Key"), 9, true),
             new StripField(tr("In the field"), tr("Field"), 6, false),
             new StripField(tr("Wind"), tr("Wind"), 10, false),
             new StripField(tr("Tester"), tr("Tester"), 9, false),
             new StripField(tr("Last written"), tr("Last"), 15, true)};
  QStringList day_words_known;
  for (const char* word : {"checking", "ready", "released", "hold", "after"}) {
    day_words_known << day_words(word);
  }
  fields_[day]->make_room_for(day_words_known);
  fields_[people]->make_room_for({tr("nobody")});
  const QString most = number_words(88.8, 1);
  QStringList winds{tr("not measured"),
                    QStringLiteral("! ") + tr("%1, gust %2 m/s").arg(most, most)};
  for (const auto standing : {day::Standing::open, day::Standing::due, day::Standing::expired,
                              day::Standing::broken, day::Standing::waived}) {
    winds << words(standing);
  }
  fields_[wind]->make_room_for(winds);
  fields_[tester]->make_room_for(
      {tr("no port chosen"), tr("quiet"), tr("reading"), tr("unplugged"), tr("not open")});
  views_->hide();
  layout->addWidget(views_);
  for (std::size_t i = 0; i < 3; ++i) layout->addWidget(fields_.at(i));
  layout->addWidget(hold_);
  for (std::size_t i = 3; i < fields_.size(); ++i) layout->addWidget(fields_.at(i));
  see_link(LinkWord::none, {});
}

void Strip::see(const Snapshot& seen, const day::Checklist& list) {
  fields_[show]->say(show_words(seen));
  fields_[day]->say(day_word(seen));
  fields_[release]->say(release_words(seen));
  fields_[key]->say(key_words(seen));
  fields_[people]->say(field_words(seen));
  fields_[wind]->say(wind_words(seen, list));
  fields_[written]->say(written_words(seen));
}

void Strip::dress(const Look& look) {
  for (StripField* field : fields_) field->set_flat(look.text_pct >= 150);
  layout()->invalidate();
  updateGeometry();
}

void Strip::see_link(LinkWord word, const QString& say) {
  fields_[tester]->say(link_words(word, say));
}

}  // namespace walkdown::gui
