// SPDX-License-Identifier: Apache-2.0
#include "checklist/day/statement.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "checklist/day/answer_value.h"
#include "checklist/day/body.h"
#include "checklist/day/duration.h"
#include "checklist/record/clock.h"

namespace walkdown::day {
namespace {

using nlohmann::json;

struct Sentence {
  std::string_view kind;
  std::string_view text;
};

constexpr std::array<Sentence, 14> kSentences = {{
    {"second", "I looked myself and confirm what another has signed"},
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
  const Item& item = checklist.items[index];
  std::string said = fmt::format("I looked and answer the question: {}", item.question);
  // The fact is in thousandths, which nobody reads.
  if (const auto milli = whole_in(body, "milli")) said += ' ' + say_milli(*milli, item.unit);
  return said;
}

std::string show_time(const json& body) {
  const auto at_ms = whole_in(body, "show_at_ms");
  if (!at_ms) return "the show is at the time given";
  const std::int64_t offset_min = whole_in(body, "utc_offset_min").value_or(0);
  return fmt::format("the show is at {} by the clock there, which is {}",
                     say_clock(*at_ms, offset_min), record::rfc3339(*at_ms));
}

std::string wind(const json& body) {
  return fmt::format("I read this wind at the field: mean {}, gusts {}, over {}",
                     say_milli(whole_in(body, "mean_mm_per_s").value_or(0), "m/s"),
                     say_milli(whole_in(body, "gust_mm_per_s").value_or(0), "m/s"),
                     say_duration(whole_in(body, "period_ms").value_or(0)));
}

}  // namespace

Statement statement(const Checklist& checklist, std::string_view kind, const json& body) {
  Statement made;
  const auto* const found = std::find_if(kSentences.begin(), kSentences.end(),
                                         [&](const Sentence& each) { return each.kind == kind; });
  if (kind == "answer") {
    made.text = answer(checklist, body);
  } else if (kind == "show-time") {
    made.text = show_time(body);
  } else if (kind == "wind") {
    made.text = wind(body);
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
