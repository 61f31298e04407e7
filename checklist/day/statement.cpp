// SPDX-License-Identifier: Apache-2.0
#include "checklist/day/statement.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "checklist/day/body.h"

namespace walkdown::day {
namespace {

using nlohmann::json;

struct Sentence {
  std::string_view kind;
  std::string_view text;
};

constexpr std::array<Sentence, 16> kSentences = {{
    {"second", "I looked myself and confirm what another has signed"},
    {"show-time", "the show is at the time given"},
    {"wind", "I read this wind at the field"},
    {"out", "this person has left the field"},
    {"tag-back", "this person's tag is back"},
    {"key-offer", "I take this key"},
    {"key-give", "I have given this key away"},
    {"key-put", "I have put this key in its place"},
    {"key-take", "I have taken this key from its place"},
    {"lift", "the hold is lifted"},
    {"waive", "I waive this item for the reason given"},
    {"waive-pin", "I waive this pin for the reason given"},
    {"pause", "this stage is done"},
    {"release", "every item holds and I release the show"},
    {"withdraw", "the release is withdrawn"},
    {"statement", "what follows is so"},
}};

std::string plain(const json& value) {
  if (value.is_string()) return value.get<std::string>();
  if (value.is_number_integer()) return value.dump();
  if (!value.is_array()) return {};
  std::string joined;
  for (const json& each : value) {
    if (!joined.empty()) joined += ", ";
    joined += plain(each);
  }
  return joined;
}

std::string answer(const Checklist& checklist, const json& body) {
  const std::size_t index = checklist.item(text_in(body, "item"));
  if (index == Checklist::npos) return "I answer an item";
  return fmt::format("I looked and answer the question: {}", checklist.items[index].question);
}

}  // namespace

Statement statement(const Checklist& checklist, std::string_view kind, const json& body) {
  Statement made;
  const auto* const found = std::find_if(kSentences.begin(), kSentences.end(),
                                         [&](const Sentence& each) { return each.kind == kind; });
  if (kind == "answer") {
    made.text = answer(checklist, body);
  } else {
    made.text = found == kSentences.end() ? fmt::format("I make the entry {}", kind) : found->text;
  }
  if (!body.is_object()) return made;
  for (const auto& [name, value] : body.items()) {
    if (name == "by" || name == "role" || name == "signoff") continue;
    std::string fact = name;
    std::replace(fact.begin(), fact.end(), '_', '-');
    std::string words = plain(value);
    if (!words.empty()) made.facts.emplace_back(std::move(fact), std::move(words));
  }
  return made;
}

}  // namespace walkdown::day
