// SPDX-License-Identifier: Apache-2.0
#include "gui/day/standing_line.h"

#include <QResizeEvent>

#include "gui/day/against_words.h"
#include "gui/look/words.h"
#include "gui/parts/pieces.h"

namespace walkdown::gui {
namespace {

constexpr int kMargin_px = 6;

Said holds_words(const day::State& state) {
  QStringList lines;
  for (const day::HoldLog& hold : state.holds) lines << hold_words(hold);
  return {lines.join(QChar('\n')), "bad", {}};
}

}  // namespace

Said standing_words(const Snapshot& seen, const day::Checklist& list) {
  const day::State& state = seen.state;
  if (!seen.trouble.isEmpty()) {
    return {StandingLine::tr("NOT WRITTEN: %1").arg(seen.trouble), "bad", {}};
  }
  if (!state.holds.empty()) return holds_words(state);
  const QStringList against = against_words(state, list);
  if (against.isEmpty() || state.word == "after" ||
      state.release.word == day::ReleaseWord::pending) {
    return {{}, "", {}};
  }
  if (state.release.word == day::ReleaseWord::fallen) {
    return {
        StandingLine::tr("The release fell: %1").arg(against_line(state.release.why, state, list)),
        "bad", against.join(QChar('\n'))};
  }
  return {StandingLine::tr("No release yet: %1").arg(against.front()), "",
          against.join(QChar('\n'))};
}

StandingLine::StandingLine(QWidget* parent) : QLabel(parent) {
  setTextFormat(Qt::PlainText);
  setMargin(kMargin_px);
  setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  setAccessibleName(tr("What stands"));
  hide();
}

void StandingLine::see(const Snapshot& seen, const day::Checklist& list) {
  const Said said = standing_words(seen, list);
  whole_ = said.text;
  // An alarm is never cut; what may be long and is whole on its own page takes one line.
  alarm_ = said.tone == QLatin1String("bad");
  setWordWrap(alarm_);
  set_tone(this, said.tone);
  // Not by its colour alone: nothing else of the window's lines stands on such a plate.
  set_flag(this, "alarm", !seen.state.holds.empty() || !seen.trouble.isEmpty());
  setToolTip(said.more);
  setAccessibleDescription(said.more.isEmpty() ? whole_ : said.more);
  fit();
  show_or_hide();
}

void StandingLine::give_way(bool passing) {
  passing_ = passing;
  show_or_hide();
}

void StandingLine::show_or_hide() { setVisible(!whole_.isEmpty() && (alarm_ || !passing_)); }

void StandingLine::fit() {
  const QString shown =
      wordWrap() ? whole_
                 : fontMetrics().elidedText(whole_, Qt::ElideRight, width() - 2 * kMargin_px - 2);
  if (shown != text()) setText(shown);
}

void StandingLine::resizeEvent(QResizeEvent* event) {
  QLabel::resizeEvent(event);
  fit();
}

}  // namespace walkdown::gui
