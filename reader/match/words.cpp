// SPDX-License-Identifier: Apache-2.0
#include "reader/match/words.h"

#include <algorithm>
#include <array>
#include <cstddef>

namespace walkdown::match {
namespace {

constexpr std::array<std::string_view, kVerdicts> kVerdictWords = {
    "fits", "doubtful", "low", "high", "open", "short", "unsteady", "stray", "unread", "stale"};

constexpr std::array<std::string_view, kKinds> kKindWords = {
    "open",          "short",         "missing-igniter", "extra-igniter",
    "poor-joint",    "leak",          "intermittent",    "stray",
    "wrong-lead",    "wrong-igniter", "unknown",         "swapped",
    "shifted",       "reversed",      "rails-exchanged", "modules-exchanged",
    "tester-offset", "wire-differs"};

template <typename Word, std::size_t n>
std::optional<Word> find(const std::array<std::string_view, n>& words, std::string_view word) {
  const auto* const at = std::find(words.begin(), words.end(), word);
  if (at == words.end()) return std::nullopt;
  return static_cast<Word>(at - words.begin());
}

}  // namespace

std::string_view text(Verdict verdict) {
  return kVerdictWords.at(static_cast<std::size_t>(verdict));
}
std::string_view text(Kind kind) { return kKindWords.at(static_cast<std::size_t>(kind)); }

std::optional<Verdict> parse_verdict(std::string_view word) {
  return find<Verdict>(kVerdictWords, word);
}
std::optional<Kind> parse_kind(std::string_view word) { return find<Kind>(kKindWords, word); }

}  // namespace walkdown::match
