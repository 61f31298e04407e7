// SPDX-License-Identifier: Apache-2.0
#include <QCoreApplication>
#include <QRegularExpression>
#include <QStringList>
#include <algorithm>
#include <optional>

#include "gui/look/sentence_lists.h"
#include "gui/look/sentences.h"
#include "gui/look/words.h"

namespace walkdown::gui {
namespace {

constexpr int kDeepest = 4;            // of sentences in one another
constexpr qsizetype kLongest = 1'000;  // characters: a text of somebody's own, and no sentence

// A sentence taken apart: what stands between its values.
struct Pattern {
  const char* text = "";
  bool inside = false;
  QStringList between;    // one more than it has values
  qsizetype letters = 0;  // of all of them: the more, the less can be meant by chance
};

Pattern taken_apart(const Sentence& sentence) {
  Pattern out{sentence.text, sentence.inside, {}, 0};
  QString rest = q(sentence.text);
  for (int value = 1;; ++value) {
    const QString place = QStringLiteral("%") + QString::number(value);
    const auto at = rest.indexOf(place);
    out.between << rest.left(at);
    if (at < 0) break;
    rest = rest.mid(at + place.size());
  }
  for (const QString& each : out.between) out.letters += each.size();
  return out;
}

const std::vector<Pattern>& patterns() {
  static const std::vector<Pattern> all = [] {
    std::vector<Pattern> made;
    for (const Sentence& each : sentences()) made.push_back(taken_apart(each));
    std::stable_sort(made.begin(), made.end(),
                     [](const Pattern& a, const Pattern& b) { return a.letters > b.letters; });
    return made;
  }();
  return all;
}

// The values in it; nothing where it is another sentence.
std::optional<QStringList> values_of(const Pattern& pattern, const QString& text) {
  if (pattern.between.size() == 1) {
    return text == pattern.between.front() ? std::optional(QStringList()) : std::nullopt;
  }
  const QString& end = pattern.between.back();
  if (!text.startsWith(pattern.between.front()) || !text.endsWith(end)) return std::nullopt;
  const auto last = text.size() - end.size();
  auto from = pattern.between.front().size();
  QStringList values;
  for (qsizetype i = 1; i < pattern.between.size(); ++i) {
    const bool is_last = i + 1 == pattern.between.size();
    const auto to = is_last ? last : text.indexOf(pattern.between[i], from + 1);
    if (to <= from || to > last) return std::nullopt;
    values << text.mid(from, to - from);
    from = to + pattern.between[i].size();
  }
  return values;
}

QString with_values(const QString& text, const QStringList& values) {
  QString out;
  for (qsizetype i = 0; i < text.size(); ++i) {
    const int value = text[i] == QChar('%') && i + 1 < text.size() ? text[i + 1].digitValue() : -1;
    if (value < 1 || value > values.size()) {
      out += text[i];
      continue;
    }
    out += values[value - 1];
    ++i;
  }
  return out;
}

std::optional<QString> found(const QString& text, int depth);

// A value: a sentence itself, a list of them, or a name that stays.
QString value_words(const QString& text, int depth) {
  if (auto known = found(text, depth)) return *known;
  const QStringList parts = text.split(QStringLiteral(", "));
  if (parts.size() < 2) return text;
  QStringList out;
  for (const QString& part : parts) out << found(part, depth).value_or(part);
  return out.join(QStringLiteral(", "));
}

std::optional<QString> found(const QString& text, int depth) {
  if (depth >= kDeepest || text.size() > kLongest) return std::nullopt;
  for (const Pattern& pattern : patterns()) {
    if (pattern.inside && depth == 0) continue;
    const auto values = values_of(pattern, text);
    if (!values) continue;
    QStringList shown;
    for (const QString& value : *values) shown << value_words(value, depth + 1);
    return with_values(QCoreApplication::translate("Sentences", pattern.text), shown);
  }
  return std::nullopt;
}

// Without the full stop at its end.
QString bare(const QString& text) { return text.endsWith(QChar('.')) ? text.chopped(1) : text; }

// "today.record, line 12": a path stays as it is.
QString place_words(const std::string& where) {
  static const QRegularExpression line(QStringLiteral("^(.*), (line \\d+)$"));
  const auto match = line.match(q(where));
  if (!match.hasMatch()) return bare(translated(where));
  return match.captured(1) + QStringLiteral(", ") + value_words(match.captured(2), 1);
}

}  // namespace

std::vector<Sentence> sentences() {
  std::vector<Sentence> all;
  for (const auto add : {add_field_sentences, add_day_sentences, add_record_sentences,
                         add_files_sentences, add_rules_sentences}) {
    add(all);
  }
  return all;
}

QString translated(std::string_view said) {
  const QString text = q(said);
  const auto known = found(bare(text), 0);
  if (!known) return text;
  return text.endsWith(QChar('.')) ? *known + QChar('.') : *known;
}

QString translated(const Error& error) {
  QString text = translated(error.what);
  if (!error.where.empty()) text += QStringLiteral(": ") + place_words(error.where);
  if (!error.remedy.empty()) text += QStringLiteral("; ") + translated(error.remedy);
  if (!text.isEmpty() && !text.endsWith(QChar('.'))) text += QChar('.');
  return text;
}

bool is_known(std::string_view said) { return found(bare(q(said)), 0).has_value(); }

}  // namespace walkdown::gui
