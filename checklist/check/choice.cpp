// SPDX-License-Identifier: Apache-2.0
#include "checklist/check/choice.h"

#include <algorithm>
#include <charconv>

#include "checklist/audit/drafts.h"
#include "checklist/record/clock.h"
#include "checklist/record/naming.h"

namespace walkdown::check {
namespace {

using nlohmann::json;

Error not_understood(std::string_view part, const char* remedy) {
  return {Code::usage, "the choice of entries is not understood", std::string(part), remedy};
}

struct Token {
  std::string text;
  bool quoted = false;
  [[nodiscard]] bool is(std::string_view word) const { return !quoted && text == word; }
};

// Words, `=` and `,` as tokens of their own; what stands in double quotes is one.
std::optional<std::vector<Token>> tokens_of(std::string_view text) {
  std::vector<Token> tokens;
  bool joined = false;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    if (c == '"') {
      const std::size_t end = text.find('"', i + 1);
      if (end == std::string_view::npos) return std::nullopt;
      tokens.push_back({std::string(text.substr(i + 1, end - i - 1)), true});
      i = end;
      joined = false;
    } else if (c == ' ') {
      joined = false;
    } else if (c == '=' || c == ',') {
      tokens.push_back({std::string(1, c), false});
      joined = false;
    } else {
      if (!joined) tokens.emplace_back();
      tokens.back().text += c;
      joined = true;
    }
  }
  return tokens;
}

std::optional<std::int64_t> number_of(std::string_view text) {
  std::int64_t value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc{} || end != text.data() + text.size() || value < 0) return std::nullopt;
  return value;
}

// A time to the minute or the second stands for all of it.
std::optional<Between> time_of(std::string_view text) {
  constexpr std::string_view kZero = ":00.000Z";  // behind 2026-07-04T19:00
  if (text.size() < 17 || text.size() > 24 || text.back() != 'Z') return std::nullopt;
  std::string full(text.substr(0, text.size() - 1));
  const std::size_t given = full.size();
  if (given != 16 && given != 19 && given != 23) return std::nullopt;
  full += kZero.substr(given - 16);
  const auto at = record::parse_at(full);
  if (!at) return std::nullopt;
  return Between{*at, *at + (given == 16 ? 59'999 : given == 19 ? 999 : 0)};
}

template <typename One>
std::optional<Between> between(std::string_view text, One one) {
  const std::size_t dots = text.find("..");
  if (dots == std::string_view::npos) return one(text);
  const std::string_view before = text.substr(0, dots), behind = text.substr(dots + 2);
  if (before.empty() && behind.empty()) return std::nullopt;
  Between range;
  if (!before.empty()) {
    const auto from = one(before);
    if (!from) return std::nullopt;
    range.from = from->from;
  }
  if (!behind.empty()) {
    const auto to = one(behind);
    if (!to) return std::nullopt;
    range.to = to->to;
  }
  return range;
}

bool any_has(const std::vector<Between>& ranges, std::int64_t value) {
  return ranges.empty() || std::any_of(ranges.begin(), ranges.end(),
                                       [&](const Between& range) { return range.has(value); });
}

bool quotes(const json& value, const std::set<std::string, std::less<>>& texts) {
  if (value.is_string()) {
    return texts.contains(value.get_ref<const std::string&>());
  }
  return (value.is_array() || value.is_object()) &&
         std::any_of(value.begin(), value.end(),
                     [&](const json& each) { return quotes(each, texts); });
}

}  // namespace

Result<Choice> Choice::parse(std::string_view expression) {
  const auto tokens = tokens_of(expression);
  if (!tokens) return not_understood(expression, "close the double quotes");
  Choice choice;
  for (std::size_t i = 0; i < tokens->size();) {
    const Token& name = (*tokens)[i];
    if (name.quoted || i + 1 >= tokens->size() || !(*tokens)[i + 1].is("=")) {
      return not_understood(name.text, "write name=value, as in kind=reading");
    }
    std::vector<std::string> values;
    i += 1;
    do {
      if (i + 1 >= tokens->size()) return not_understood(name.text, "give a value behind it");
      values.push_back((*tokens)[i + 1].text);
      i += 2;
    } while (i < tokens->size() && (*tokens)[i].is(","));
    if (const Done taken = choice.term(name.text, std::move(values)); !taken) return taken.error();
    if (i == tokens->size()) break;
    if (!(*tokens)[i].is("and") || i + 1 == tokens->size()) {
      return not_understood((*tokens)[i].text,
                            "join terms by `and`; put values with spaces into double quotes");
    }
    ++i;
  }
  if (choice.empty_) return not_understood(expression, "write name=value, as in kind=reading");
  return choice;
}

Done Choice::term(std::string_view name, std::vector<std::string> values) {
  empty_ = false;
  for (std::string& value : values) {
    if (name == "kind") {
      if (!record::is_kind(value)) return not_understood(value, "a kind is of a-z, 0-9 and '-'");
      kinds_.insert(std::move(value));
    } else if (name == "person" && !value.empty()) {
      persons_.push_back(std::move(value));
    } else if (name == "position" && !value.empty()) {
      positions_.push_back(std::move(value));
    } else if (name == "pin") {
      const auto pin = plan::parse_pin(value);
      if (!pin) return not_understood(value, "write a pin as M01/R1/P05");
      pins_.push_back(*pin);
    } else if (name == "n") {
      const auto one = [](std::string_view text) -> std::optional<Between> {
        const auto number = number_of(text);
        if (!number) return std::nullopt;
        return Between{*number, *number};
      };
      const auto range = between(value, one);
      if (!range) return not_understood(value, "write a number or a range: 3, 3..7, 3.. or ..7");
      numbers_.push_back(*range);
    } else if (name == "at") {
      const auto range = between(value, time_of);
      if (!range) return not_understood(value, "write UTC as 2026-07-04T19:00Z, or from..to");
      times_.push_back(*range);
    } else {
      return not_understood(name, "choose by kind, person, position, pin, n or at");
    }
  }
  return done();
}

Done Choice::know(const plan::Plan& plan, const std::vector<record::Person>& people) {
  for (const std::string& name : persons_) {
    const auto named = [&](const record::Person& person) { return person.name == name; };
    if (std::none_of(people.begin(), people.end(), named)) {
      return Error{Code::refused, "nobody of this name is enrolled", name,
                   "write the name as the record has it"};
    }
    phrases_.push_back(name);
    for (const auto& person : people) {
      if (named(person)) phrases_.push_back(person.key.name);
    }
  }
  std::set<std::string> found;
  for (const plan::PlannedPin& planned : plan.pins) {
    const bool by_position =
        std::find(positions_.begin(), positions_.end(), planned.position) != positions_.end();
    const bool by_pin = std::find(pins_.begin(), pins_.end(), planned.id) != pins_.end();
    if (by_position) found.insert(planned.position);
    places_.push_back({planned.id, planned.position, by_position || by_pin});
    if (places_.back().asked) quotes_.insert(plan::text(planned.id));
  }
  for (const std::string& position : positions_) {
    if (!found.contains(position)) {
      return Error{Code::refused, "the plan has no position of this name", position, ""};
    }
    quotes_.insert(position);
  }
  // A pin beyond the plan can still have stray readings.
  for (const plan::PinId pin : pins_) quotes_.insert(plan::text(pin));
  return done();
}

bool Choice::takes(const record::EntryView& entry) const {
  if (!kinds_.empty() && !kinds_.contains(entry.kind)) return false;
  if (!any_has(numbers_, static_cast<std::int64_t>(entry.n))) return false;
  if (!any_has(times_, entry.at_ms)) return false;
  if (persons_.empty() && positions_.empty() && pins_.empty()) return true;
  return takes_body(record::entry_of(entry));
}

bool Choice::takes_body(const record::Entry& entry) const {
  if (!persons_.empty() && !record::says(entry.body, phrases_)) return false;
  return (positions_.empty() && pins_.empty()) || about_pins(entry);
}

// Where it names nothing that the plan knows, it is about the whole field.
bool Choice::touches(const audit::Rehook& rehook) const {
  bool of_plan = false;
  for (const Place& place : places_) {
    if (!rehook.covers(place.pin, place.position)) continue;
    if (place.asked) return true;
    of_plan = true;
  }
  return !of_plan;
}

bool Choice::about_pins(const record::Entry& entry) const {
  if (entry.n == 0) return false;  // the whole plan is in it: about every pin, so about none
  if (entry.kind == audit::kRehook || entry.kind == audit::kEntered) {
    const auto rehook = audit::rehook_of(entry.body);
    return rehook && touches(*rehook);
  }
  return quotes(entry.body, quotes_);
}

}  // namespace walkdown::check
