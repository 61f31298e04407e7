// SPDX-License-Identifier: Apache-2.0
#include "gui/day/release_page.h"

#include <QDateTime>

#include "gui/day/against_words.h"
#include "gui/day/strip_words.h"
#include "gui/look/words.h"
#include "gui/parts/pieces.h"
#include "gui/parts/top_layout.h"

namespace walkdown::gui {
namespace {

std::optional<quint64> last_hold(const day::State& state) {
  if (state.holds.empty()) return std::nullopt;
  return quint64{state.holds.back().n};
}

}  // namespace

ReleasePage::ReleasePage(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      layout_(new TopLayout(this)),
      now_(new QVBoxLayout),
      show_at_(new QDateTimeEdit) {
  layout_->addWidget(label(tr("Release"), 1.4, true));
  layout_->addLayout(now_);
  add_show_time();
}

void ReleasePage::add_show_time() {
  layout_->addWidget(quiet_label(tr("Show time, by the clock of this place")));
  show_at_->setAccessibleName(tr("Show time"));
  show_at_->setDisplayFormat(QStringLiteral("yyyy-MM-dd HH:mm"));
  const QDateTime now = QDateTime::currentDateTime();
  show_at_->setDateTime(now.addSecs(2 * 3600 - now.time().second()));
  layout_->addWidget(show_at_);
  layout_->addWidget(button(tr("Set the show time \u2026"), [this] {
    const std::int64_t at_ms = show_at_->dateTime().toMSecsSinceEpoch();
    const std::int64_t offset_min = show_at_->dateTime().offsetFromUtc() / 60;
    ask_to_sign(
        session_,
        {tr("Set the show time"),
         tr("The show begins at %1.")
             .arg(show_at_->text() + QChar(' ') + zone_words(show_at_->dateTime().offsetFromUtc())),
         session_.checklist().lead,
         {},
         {}},
        [at_ms, offset_min](desk::Desk& desk, const desk::Signer& signer, const std::string&) {
          return desk::set_show_time(desk, signer, at_ms, offset_min);
        },
        this);
  }));
}

void ReleasePage::see(const Snapshot& seen) {
  QByteArray key;
  const day::State& state = seen.state;
  for (const auto& line : state.against) key += QByteArray::fromStdString(line) + '\n';
  for (const auto& each : state.waiting) key += QByteArray::number(qulonglong{each.n}) + ',';
  key += QByteArray::number(static_cast<int>(state.release.word));
  key += QByteArray::number(last_hold(state).value_or(0));
  key += release_words(seen).text.toUtf8();
  if (key == filled_) return;
  filled_ = key;
  fill(seen);
}

void ReleasePage::fill(const Snapshot& seen) {
  clear_layout(now_);
  const day::State& state = seen.state;
  const Said said = release_words(seen);
  QLabel* head = label(said.text, 1.2, true);
  set_tone(head, said.tone);
  now_->addWidget(head);
  if (!state.holds.empty()) {
    now_->addWidget(
        button(tr("Lift the hold \u2026"), [this, of = last_hold(state)] { lift(of); }));
  }
  const day::Checklist& list = session_.checklist();
  for (const QString& line : against_words(state, list)) {
    now_->addWidget(label(QStringLiteral("\u2022 ") + line));
  }
  if (!seen.schedule.say.empty()) {
    now_->addWidget(label(tr("Timeline"), 1.1, true));
    now_->addWidget(label(schedule_words(seen.schedule.say, list)));
  }
  add_release(state);
  add_waiting(state);
}

void ReleasePage::add_release(const day::State& state) {
  const day::Checklist& list = session_.checklist();
  if (state.release.word == day::ReleaseWord::stands ||
      state.release.word == day::ReleaseWord::pending) {
    now_->addWidget(button(tr("Withdraw the release: anyone, at once"), [this] {
      session_.act([](desk::Desk& desk) { return desk::withdraw(desk, {}, {}); }, this);
    }));
    return;
  }
  if (state.release.word == day::ReleaseWord::fallen) {
    now_->addWidget(
        label(tr("The last release fell: %1").arg(against_line(state.release.why, state, list))));
  }
  auto* press = button(tr("Sign the release \u2026"), [this] { release(); });
  press->setEnabled(state.against.empty());
  now_->addWidget(press);
}

void ReleasePage::add_waiting(const day::State& state) {
  if (state.waiting.empty()) return;
  now_->addWidget(label(tr("Waiting for a second signature"), 1.1, true));
  for (const day::WaitingState& each : state.waiting) {
    now_->addWidget(label(tr("%1, by %2").arg(q(each.what), q(each.by))));
    now_->addWidget(button(tr("Second signature to entry %1 \u2026").arg(each.n),
                           [this, each] { second(each); }));
  }
}

void ReleasePage::second(const day::WaitingState& waiting) {
  ask_to_sign(
      session_, {tr("Second signature"), q(waiting.what), {}, {}, {}},
      [n = waiting.n](desk::Desk& desk, const desk::Signer& signer, const std::string&) {
        return desk::second(desk, signer, n);
      },
      this);
}

void ReleasePage::release() {
  const auto& seen = session_.now();
  ask_to_sign(
      session_,
      {tr("Sign the release"),
       tr("Every item holds at this moment, the field is clear, and the release falls by "
          "itself when anything under it falls.") +
           QChar('\n') + (seen ? release_words(*seen).text : QString()),
       session_.checklist().release_by,
       {},
       {}},
      [](desk::Desk& desk, const desk::Signer& signer, const std::string&) {
        return desk::release(desk, signer);
      },
      this);
}

void ReleasePage::lift(std::optional<quint64> of) {
  ask_to_sign(
      session_,
      {tr("Lift the hold"),
       tr("What the hold broke is to be answered anew."),
       session_.checklist().lead,
       {},
       tr("Reason")},
      [of](desk::Desk& desk, const desk::Signer& signer, const std::string& reason) {
        return desk::lift(desk, signer, reason, of);
      },
      this);
}

}  // namespace walkdown::gui
