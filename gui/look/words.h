// SPDX-License-Identifier: Apache-2.0
// Words of the program in the language of the person. In files and records the words of the
// contract stand; these are for eyes only.
#pragma once

#include <QString>
#include <string_view>

#include "checklist/day/day.h"
#include "checklist/day/standing.h"
#include "reader/match/words.h"

namespace walkdown::gui {

[[nodiscard]] QString words(match::Verdict verdict);
[[nodiscard]] QString words(match::Kind kind);
// With how far it went, where that tells it from another of its kind: "shifted +1".
[[nodiscard]] QString words(match::Kind kind, int by);
[[nodiscard]] QString words(day::Standing standing);
// Of the day's state: "checking", "ready", "released", "hold", "after".
[[nodiscard]] QString day_words(std::string_view word);

[[nodiscard]] inline QString q(std::string_view text) {
  return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

// "2 h 05", "20 min", "4:09 min", "12 s"; negative spans with a minus.
[[nodiscard]] QString span_words(std::int64_t ms);
// Local time of day: "21:45".
[[nodiscard]] QString clock_words(std::int64_t at_ms);
// With seconds: "21:45:03".
[[nodiscard]] QString clock_words_s(std::int64_t at_ms);
// Distance from UTC: "UTC", "UTC+1", "UTC\u22123:30".
[[nodiscard]] QString zone_words(int offset_s);
// For what is kept or signed: "2026-07-04 21:45:03 UTC+2", by the clock of this computer.
[[nodiscard]] QString moment_words(std::int64_t at_ms);
// A number as the person's language writes it, with so many decimals.
[[nodiscard]] QString number_words(double value, int decimals);
// Takes a decimal point or a decimal comma, whatever the language; empty text is no number.
[[nodiscard]] std::optional<std::int64_t> milli_from(const QString& text);

}  // namespace walkdown::gui
