// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/naming.h"

#include <algorithm>

namespace walkdown::record {

namespace {

constexpr std::size_t kShortestPart = 3;  // our choice: "de", "Al" would withhold half a record

char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

bool in_word(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
         static_cast<unsigned char>(c) >= 0x80;
}

std::vector<std::string> parts_of(std::string_view name) {
  std::vector<std::string> parts(1);
  for (const char c : name) {
    if (in_word(c)) {
      parts.back() += c;
    } else if (!parts.back().empty()) {
      parts.emplace_back();
    }
  }
  return parts;
}

}  // namespace

bool has_phrase(std::string_view text, std::string_view phrase) {
  auto at = text.begin();
  while (!phrase.empty()) {
    at = std::search(at, text.end(), phrase.begin(), phrase.end(),
                     [](char a, char b) { return lower(a) == lower(b); });
    if (at == text.end()) return false;
    const auto behind = at + static_cast<std::ptrdiff_t>(phrase.size());
    const bool begins = at == text.begin() || !in_word(*(at - 1)) || !in_word(phrase.front());
    const bool ends = behind == text.end() || !in_word(*behind) || !in_word(phrase.back());
    if (begins && ends) return true;
    ++at;
  }
  return false;
}

bool says(const nlohmann::json& value, const std::vector<std::string>& phrases) {
  const auto in_text = [&](const std::string& text) {
    return std::any_of(phrases.begin(), phrases.end(),
                       [&](const std::string& phrase) { return has_phrase(text, phrase); });
  };
  if (value.is_string()) return in_text(value.get_ref<const std::string&>());
  if (value.is_array()) {
    return std::any_of(value.begin(), value.end(),
                       [&](const auto& each) { return says(each, phrases); });
  }
  if (!value.is_object()) return false;
  const auto& members = value.items();
  return std::any_of(members.begin(), members.end(), [&](const auto& member) {
    return in_text(member.key()) || says(member.value(), phrases);
  });
}

std::vector<std::string> phrases_of(std::string_view name, const std::vector<Person>& people) {
  std::vector<std::string> phrases{std::string(name)};
  for (std::string& part : parts_of(name)) {
    if (part.size() >= kShortestPart) phrases.push_back(std::move(part));
  }
  for (const Person& person : people) {
    if (person.name == name) phrases.push_back(person.key.name);
  }
  return phrases;
}

}  // namespace walkdown::record
