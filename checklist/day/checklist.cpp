// SPDX-License-Identifier: Apache-2.0
#include "checklist/day/checklist.h"

#include <algorithm>
#include <array>

namespace walkdown::day {
namespace {

constexpr std::array<std::string_view, kKinds> kKindWords = {
    "confirm", "number",    "continuity", "zone", "wind", "thunder",
    "custody", "headcount", "wait",       "file", "text"};
constexpr std::array<std::string_view, kEvents> kEventWords = {
    "entered", "rehook", "hold", "clock", "suspend", "restart", "show-time", "thunder", "custody"};
constexpr std::array<std::string_view, 17> kEmptyWords = {
    "n/a",     "na",  "not applicable", "n.a.", "none", "ok", "okay", "yes", "y", "check",
    "checked", "set", "checks",         "done", "tick", "x",  "true"};

template <typename List, typename Name>
std::size_t find(const List& list, Name name, std::string_view wanted) {
  const auto found = std::find_if(list.begin(), list.end(),
                                  [&](const auto& each) { return each.*name == wanted; });
  return found == list.end() ? Checklist::npos : static_cast<std::size_t>(found - list.begin());
}

template <typename Enum, std::size_t N>
std::optional<Enum> from(const std::array<std::string_view, N>& words, std::string_view wanted) {
  const auto* const found = std::find(words.begin(), words.end(), wanted);
  if (found == words.end()) return std::nullopt;
  return static_cast<Enum>(found - words.begin());
}

char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

}  // namespace

std::string_view word(Kind kind) { return kKindWords.at(static_cast<std::size_t>(kind)); }
std::string_view word(Event event) { return kEventWords.at(static_cast<std::size_t>(event)); }
std::optional<Kind> kind_of(std::string_view text) { return from<Kind>(kKindWords, text); }
std::optional<Event> event_of(std::string_view text) { return from<Event>(kEventWords, text); }

std::size_t Checklist::item(std::string_view id) const { return find(items, &Item::id, id); }
std::size_t Checklist::stage(std::string_view id) const { return find(stages, &Stage::id, id); }
std::size_t Checklist::key(std::string_view name_of_key) const {
  return find(keys, &Key::name, name_of_key);
}

std::size_t Checklist::last_release_stage() const {
  for (std::size_t i = stages.size(); i > 0; --i) {
    if (stages[i - 1].release) return i - 1;
  }
  return npos;
}

bool contains(const Roles& roles, std::string_view role) {
  return std::find(roles.begin(), roles.end(), role) != roles.end();
}

bool says_nothing(std::string_view answer) {
  std::string plain(answer);
  std::transform(plain.begin(), plain.end(), plain.begin(), lower);
  while (!plain.empty() && (plain.back() == ' ' || plain.back() == '.')) plain.pop_back();
  plain.erase(0, std::min(plain.find_first_not_of(' '), plain.size()));
  return plain.empty() ||
         std::find(kEmptyWords.begin(), kEmptyWords.end(), plain) != kEmptyWords.end();
}

}  // namespace walkdown::day
