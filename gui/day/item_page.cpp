// SPDX-License-Identifier: Apache-2.0
#include "gui/day/item_page.h"

#include <algorithm>

#include "gui/day/answer_words.h"
#include "gui/look/palette.h"
#include "gui/look/sentences.h"
#include "gui/look/words.h"
#include "gui/parts/flow_layout.h"
#include "gui/parts/pieces.h"
#include "gui/parts/top_layout.h"

namespace walkdown::gui {

ItemPage::ItemPage(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), layout_(new TopLayout(this)) {}

void ItemPage::begin(const QString& title) {
  clear_layout(layout_);
  form_ = nullptr;
  standing_ = why_ = seen_answer_ = trouble_ = nullptr;
  second_ = waive_ = pause_ = nullptr;
  layout_->addWidget(label(title, 1.4, true));
}

void ItemPage::show_item(std::size_t item) {
  item_ = item;
  stage_ = day::Checklist::npos;
  begin(q(session_.checklist().items[item].question));
  fill_item();
  if (session_.now()) see(*session_.now());
}

void ItemPage::fill_item() {
  const day::Item& item = session_.checklist().items[item_];
  layout_->addWidget(standing_ = label({}, 1.2, true));
  layout_->addWidget(why_ = label({}));
  layout_->addWidget(seen_answer_ = label({}));
  auto* row = new QWidget;
  auto* buttons = new FlowLayout(row);
  if (item.asked()) {
    form_ = new AnswerForm(item, session_.desk().now().up_ms);
    layout_->addWidget(form_);
    buttons->addWidget(button(tr("Sign this answer"), [this] { answer(); }));
  }
  buttons->addWidget(second_ = button(tr("Second signature"),
                                      [this] { second(second_->property("of").toULongLong()); }));
  buttons->addWidget(waive_ = button(tr("Waive \u2026"), [this] { waive(); }));
  second_->hide();
  waive_->hide();
  layout_->addWidget(trouble_ = label({}));
  set_tone(trouble_, "bad");
  trouble_->hide();
  layout_->addWidget(row);
  for (const QString& fact : item_facts(session_.checklist(), item)) {
    layout_->addWidget(quiet_label(fact));
  }
}

void ItemPage::show_stage(std::size_t stage) {
  stage_ = stage;
  item_ = day::Checklist::npos;
  const day::Stage& it = session_.checklist().stages[stage];
  begin(q(it.title));
  layout_->addWidget(why_ = label({}));
  layout_->addWidget(pause_ = button(tr("Close this stage"), [this] { close_pause(); }));
  layout_->addWidget(quiet_label(
      tr("The pause at the end of a stage is closed by: %1. Every item of the stage must hold.")
          .arg(roles_words(it.pause_by))));
  if (session_.now()) see(*session_.now());
}

void ItemPage::see(const Snapshot& seen) {
  if (stage_ != day::Checklist::npos && pause_ != nullptr) {
    const day::StageState& state = seen.state.stages[stage_];
    why_->setText(state.locked   ? tr("Not open yet: the stage before it is not closed.")
                  : state.paused ? tr("Closed by %1.").arg(q(state.paused_by))
                                 : tr("Open."));
    pause_->setVisible(!state.locked && !state.paused);
  }
  if (item_ == day::Checklist::npos || standing_ == nullptr) return;
  const day::ItemState& state = seen.state.items[item_];
  standing_->setText(words(state.standing));
  const Tone tone = tone_of(state.standing);
  set_tone(standing_, tone == Tone::good ? "good" : tone == Tone::warn ? "warn" : "bad");
  why_->setText(translated(state.why));
  QString answer;
  if (!state.answer.empty()) {
    answer = tr("Answer: %1, by %2").arg(q(state.answer), q(state.by));
    if (!state.second.empty()) answer += tr(", confirmed by %1").arg(q(state.second));
    if (state.fast) answer += tr(". Given under a second after the question.");
  }
  seen_answer_->setText(answer);
  seen_answer_->setVisible(!answer.isEmpty());
  const auto& waiting = seen.state.waiting;
  const auto found = std::find_if(waiting.begin(), waiting.end(), [&](const auto& each) {
    return state.answered_n && each.n == *state.answered_n;
  });
  second_->setVisible(found != waiting.end());
  if (found != waiting.end()) second_->setProperty("of", QVariant::fromValue(found->n));
  const bool fails =
      state.standing != day::Standing::holds && state.standing != day::Standing::waived;
  waive_->setVisible(fails && day::can_be_waived(session_.checklist().items[item_]));
}

void ItemPage::answer() {
  QString why;
  const auto deed = form_->deed(why);
  trouble_->setText(why);
  trouble_->setVisible(!why.isEmpty());
  if (!deed) return;
  const day::Item& item = session_.checklist().items[item_];
  ask_to_sign(
      session_,
      {tr("Sign this answer"), q(item.question) + QChar('\n') + form_->words(), item.by, {}, {}},
      *deed, this);
}

void ItemPage::second(std::uint64_t n) {
  const day::Item& item = session_.checklist().items[item_];
  ask_to_sign(
      session_,
      {tr("Second signature"),
       q(item.question) + QChar('\n') + seen_answer_->text(),
       item.second,
       {},
       {}},
      [n](desk::Desk& desk, const desk::Signer& signer, const std::string&) {
        return desk::second(desk, signer, n);
      },
      this);
}

void ItemPage::waive() {
  const day::Item& item = session_.checklist().items[item_];
  ask_to_sign(
      session_,
      {tr("Waive this item"),
       q(item.question) + QChar('\n') +
           tr("This covers only the failure as it stands now: %1").arg(why_->text()),
       session_.checklist().lead,
       {},
       tr("Reason")},
      [id = item.id](desk::Desk& desk, const desk::Signer& signer, const std::string& reason) {
        return desk::waive(desk, signer, id, reason);
      },
      this);
}

void ItemPage::close_pause() {
  const day::Stage& stage = session_.checklist().stages[stage_];
  ask_to_sign(
      session_, {tr("Close this stage"), q(stage.title), stage.pause_by, {}, {}},
      [id = stage.id](desk::Desk& desk, const desk::Signer& signer, const std::string&) {
        return desk::close_pause(desk, signer, id);
      },
      this);
}

}  // namespace walkdown::gui
