// SPDX-License-Identifier: Apache-2.0
#include "gui/day/strip_words.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

#include "gui/look/sentences.h"
#include "gui/look/words.h"

namespace walkdown::gui {
namespace {

struct Strip {
  Q_DECLARE_TR_FUNCTIONS(Strip)
};

QString list_of(const std::vector<std::string>& texts) {
  QStringList list;
  for (const auto& text : texts) list << q(text);
  return list.join(QStringLiteral(", "));
}

}  // namespace

Said show_words(const Snapshot& seen) {
  if (!seen.state.show_at_ms) return {Strip::tr("not set"), "warn", {}};
  const auto left = *seen.state.show_at_ms - seen.now.at_ms;
  const QString at = Strip::tr("show at %1").arg(clock_words(*seen.state.show_at_ms));
  if (left < 0) return {Strip::tr("%1 past").arg(span_words(-left)), "", at};
  const QString more = at + QChar('\n') + translated(seen.schedule.say);
  if (seen.schedule.feasible) return {span_words(left), "", more};
  return {Strip::tr("%1, too short").arg(span_words(left)), "bad", more};
}

QString hold_words(const day::HoldLog& hold) {
  const QString by = hold.by.empty() ? Strip::tr("somebody") : q(hold.by);
  if (hold.reason.empty()) return Strip::tr("hold by %1, no reason given").arg(by);
  return Strip::tr("hold by %1: %2").arg(by, q(hold.reason));
}

Said day_word(const Snapshot& seen) {
  const std::string& word = seen.state.word;
  const char* tone = word == "hold" ? "bad" : word == "released" ? "good" : "";
  QString more;
  if (!seen.state.holds.empty()) more = hold_words(seen.state.holds.front());
  return {day_words(word), tone, more};
}

Said release_words(const Snapshot& seen) {
  const auto& state = seen.state;
  if (state.release.word == day::ReleaseWord::stands) {
    if (!state.release.until_at_ms)
      return {Strip::tr("stands until something breaks it"), "good", {}};
    return {Strip::tr("stands until %1 (%2)")
                .arg(clock_words(*state.release.until_at_ms),
                     span_words(*state.release.until_at_ms - seen.now.at_ms)),
            "good",
            Strip::tr("signed by %1 and %2").arg(q(state.release.by), q(state.release.second))};
  }
  if (state.release.word == day::ReleaseWord::pending) {
    return {Strip::tr("waits for the second signature"), "warn", translated(state.release.why)};
  }
  if (!state.against.empty()) {
    const QString count =
        Strip::tr("not possible: %n reason(s)", nullptr, static_cast<int>(state.against.size()));
    QStringList lines;
    for (const auto& line : state.against) lines << translated(line);
    return {count, "bad", lines.join(QChar('\n'))};
  }
  if (!state.would_stand_until_at_ms) return {Strip::tr("possible"), "warn", {}};
  return {Strip::tr("possible, would stand until %1 (%2)")
              .arg(clock_words(*state.would_stand_until_at_ms),
                   span_words(*state.would_stand_until_at_ms - seen.now.at_ms)),
          "warn",
          {}};
}

Said key_words(const Snapshot& seen) {
  QStringList list;
  QString more;
  for (const auto& key : seen.state.keys) {
    list << q(key.holder);
    more += q(key.name) + QStringLiteral(": ") + q(key.holder) + QChar('\n');
    if (!key.offered_to.empty()) {
      more += Strip::tr("offered to %1").arg(q(key.offered_to)) + QChar('\n');
    }
  }
  if (list.isEmpty()) return {Strip::tr("no key in the checklist"), "", {}};
  return {list.join(QStringLiteral(", ")), "", more.trimmed()};
}

Said field_words(const Snapshot& seen) {
  const auto count = seen.state.in_field.size();
  if (count == 0) return {Strip::tr("nobody"), "", {}};
  return {Strip::tr("%n inside", nullptr, static_cast<int>(count)), "warn",
          list_of(seen.state.in_field)};
}

QString wind_text(const day::WindLog& wind) {
  return Strip::tr("%1, gust %2 m/s")
      .arg(number_words(static_cast<double>(wind.mean_mm_per_s) / 1000, 1),
           number_words(static_cast<double>(wind.gust_mm_per_s) / 1000, 1));
}

Said wind_words(const Snapshot& seen, const day::Checklist& list) {
  const auto& winds = seen.state.winds;
  if (winds.empty()) return {Strip::tr("not measured"), "warn", {}};
  const day::WindLog& wind =
      *std::max_element(winds.begin(), winds.end(),
                        [](const day::WindLog& a, const day::WindLog& b) { return a.n < b.n; });
  const QString measured = wind_text(wind);
  const QString by = Strip::tr("by %1").arg(q(wind.by));
  for (std::size_t i = 0; i < list.items.size() && i < seen.state.items.size(); ++i) {
    if (list.items[i].kind != day::Kind::wind) continue;
    const day::ItemState& item = seen.state.items[i];
    if (item.standing == day::Standing::holds) continue;  // of two, the one that does not
    const QString more = words(item.standing) + QStringLiteral(": ") + translated(item.why) +
                         QChar('\n') + measured + QStringLiteral(", ") + by;
    // Above a limit it is the wind now, and must be seen; else it is none to go by.
    if (item.standing != day::Standing::refused) return {words(item.standing), "warn", more};
    return {QStringLiteral("! ") + measured, "bad", more};
  }
  return {measured, "", measured + QStringLiteral(", ") + by};
}

Said link_words(LinkWord word, const QString& say) {
  switch (word) {
    case LinkWord::none:
      return {Strip::tr("no port chosen"), "warn", say};
    case LinkWord::quiet:
      return {Strip::tr("quiet"), "", say};
    case LinkWord::reading:
      return {Strip::tr("reading"), "good", say};
    case LinkWord::unplugged:
      return {Strip::tr("unplugged"), "bad", say};
    case LinkWord::trouble:
      break;
  }
  return {Strip::tr("not open"), "bad", say};
}

Said written_words(const Snapshot& seen) {
  if (!seen.trouble.isEmpty()) return {Strip::tr("NOT WRITTEN"), "bad", seen.trouble};
  if (seen.told.empty()) return {QString(), "", {}};
  const auto& last = seen.told.back();
  return {QStringLiteral("%1 %2").arg(clock_words_s(last.at_ms), translated(last.say)), "",
          translated(last.say)};
}

}  // namespace walkdown::gui
