// SPDX-License-Identifier: Apache-2.0
#include "gui/look/words.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <array>
#include <cmath>

namespace walkdown::gui {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("words", text); }

constexpr std::array kVerdictWords{
    QT_TRANSLATE_NOOP("words", "fits"),     QT_TRANSLATE_NOOP("words", "doubtful"),
    QT_TRANSLATE_NOOP("words", "low"),      QT_TRANSLATE_NOOP("words", "high"),
    QT_TRANSLATE_NOOP("words", "open"),     QT_TRANSLATE_NOOP("words", "short"),
    QT_TRANSLATE_NOOP("words", "unsteady"), QT_TRANSLATE_NOOP("words", "stray"),
    QT_TRANSLATE_NOOP("words", "unread"),   QT_TRANSLATE_NOOP("words", "stale"),
};
static_assert(kVerdictWords.size() == match::kVerdicts);

constexpr std::array kKindWords{
    QT_TRANSLATE_NOOP("words", "open"),
    QT_TRANSLATE_NOOP("words", "short"),
    QT_TRANSLATE_NOOP("words", "igniter missing"),
    QT_TRANSLATE_NOOP("words", "one igniter too many"),
    QT_TRANSLATE_NOOP("words", "poor joint"),
    QT_TRANSLATE_NOOP("words", "leak"),
    QT_TRANSLATE_NOOP("words", "intermittent"),
    QT_TRANSLATE_NOOP("words", "stray load"),
    QT_TRANSLATE_NOOP("words", "wrong lead"),
    QT_TRANSLATE_NOOP("words", "wrong igniter"),
    QT_TRANSLATE_NOOP("words", "unknown"),
    QT_TRANSLATE_NOOP("words", "swapped"),
    QT_TRANSLATE_NOOP("words", "shifted"),
    QT_TRANSLATE_NOOP("words", "rail turned round"),
    QT_TRANSLATE_NOOP("words", "rails exchanged"),
    QT_TRANSLATE_NOOP("words", "modules exchanged"),
    QT_TRANSLATE_NOOP("words", "tester not zeroed"),
    QT_TRANSLATE_NOOP("words", "wire differs"),
};
static_assert(kKindWords.size() == match::kKinds);

constexpr std::array kStandingWords{
    QT_TRANSLATE_NOOP("words", "to do"),  QT_TRANSLATE_NOOP("words", "due"),
    QT_TRANSLATE_NOOP("words", "holds"),  QT_TRANSLATE_NOOP("words", "expired"),
    QT_TRANSLATE_NOOP("words", "broken"), QT_TRANSLATE_NOOP("words", "refused"),
    QT_TRANSLATE_NOOP("words", "waived"),
};

constexpr std::array kDayWords{
    QT_TRANSLATE_NOOP("words", "hold"),     QT_TRANSLATE_NOOP("words", "released"),
    QT_TRANSLATE_NOOP("words", "ready"),    QT_TRANSLATE_NOOP("words", "after"),
    QT_TRANSLATE_NOOP("words", "checking"),
};

}  // namespace

QString words(match::Verdict verdict) {
  return tr(kVerdictWords.at(static_cast<std::size_t>(verdict)));
}
QString words(match::Kind kind) { return tr(kKindWords.at(static_cast<std::size_t>(kind))); }
QString words(match::Kind kind, int by) {
  if (by == 0) return words(kind);
  return QStringLiteral("%1 %2%3").arg(words(kind), by > 0 ? "+" : "").arg(by);
}
QString words(day::Standing standing) {
  return tr(kStandingWords.at(static_cast<std::size_t>(standing)));
}

QString day_words(std::string_view word) {
  for (const char* known : kDayWords) {
    if (word == known) return tr(known);
  }
  return q(word);
}

QString span_words(std::int64_t ms) {
  const QString sign = ms < 0 ? QStringLiteral("\u2212") : QString();
  const std::int64_t s = std::abs(ms) / 1000;
  if (s < 60) return sign + tr("%1 s").arg(s);
  // Seconds only while they matter: "20:00 min" beside a time of day looks like one.
  if (s >= 600 && s < 3600) return sign + tr("%1 min").arg(s / 60);
  if (s < 3600) {
    return sign +
           tr("%1 min").arg(QStringLiteral("%1:%2").arg(s / 60).arg(s % 60, 2, 10, QChar('0')));
  }
  return sign + tr("%1 h %2").arg(s / 3600).arg(s % 3600 / 60, 2, 10, QChar('0'));
}

QString clock_words(std::int64_t at_ms) {
  return QDateTime::fromMSecsSinceEpoch(at_ms).toString(QStringLiteral("HH:mm"));
}
QString clock_words_s(std::int64_t at_ms) {
  return QDateTime::fromMSecsSinceEpoch(at_ms).toString(QStringLiteral("HH:mm:ss"));
}

QString zone_words(int offset_s) {
  const int min = std::abs(offset_s) / 60;
  if (min == 0) return QStringLiteral("UTC");
  const QString sign = offset_s < 0 ? QStringLiteral("\u2212") : QStringLiteral("+");
  const QString hours = QStringLiteral("UTC") + sign + QString::number(min / 60);
  return min % 60 == 0 ? hours : hours + QStringLiteral(":%1").arg(min % 60, 2, 10, QChar('0'));
}

QString moment_words(std::int64_t at_ms) {
  const QDateTime at = QDateTime::fromMSecsSinceEpoch(at_ms);
  return at.toString(QStringLiteral("yyyy-MM-dd HH:mm:ss ")) + zone_words(at.offsetFromUtc());
}

QString number_words(double value, int decimals) {
  return QLocale().toString(value, 'f', decimals);
}

std::optional<std::int64_t> milli_from(const QString& text) {
  QString plain = text.trimmed();
  if (plain.count(QChar(',')) + plain.count(QChar('.')) > 1) return std::nullopt;
  plain.replace(QChar(','), QChar('.'));
  bool ok = false;
  const double value = QLocale::c().toDouble(plain, &ok);
  if (!ok || !std::isfinite(value) || std::abs(value) > 1e12) return std::nullopt;
  return std::llround(value * 1000);
}

}  // namespace walkdown::gui
