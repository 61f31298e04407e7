// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/signoff.h"

#include <algorithm>
#include <charconv>
#include <optional>

#include "checklist/record/checkpoint.h"
#include "checklist/record/clock.h"
#include "checklist/record/line.h"
#include "checklist/record/utf8.h"

namespace walkdown::record {

namespace {

constexpr std::string_view kFirst = "This is a sign-off in a walkdown record.";
constexpr std::size_t kLongestField = 2000;
constexpr std::size_t kMostFacts = 32;

Error cannot_say(const std::string& field) {
  return {Code::bad_input, "a sign-off cannot say this", field,
          "one line, not empty, without a space at either end"};
}

Error not_one() {
  return {Code::bad_input, "this is no sign-off: its sentences are not as they must be", "", ""};
}

bool is_field(std::string_view value) { return is_plain_line(value, kLongestField); }

bool is_fact_name(std::string_view name) {
  return is_kind(name) && name != "time" && name != "record";
}

void say(std::string& out, std::string_view before, std::string_view value) {
  out += before;
  out += value;
  out += ".\n";
}

// Takes the text apart, a sentence after the other.
class Sentences {
 public:
  explicit Sentences(std::string_view rest) : rest_(rest) {}

  // The value of the next sentence, where it begins with `before` and ends with `.` or `behind`.
  std::optional<std::string> take(std::string_view before, std::string_view behind = ".") {
    const std::size_t end = rest_.find('\n');
    if (end == std::string_view::npos) return std::nullopt;
    std::string_view line = rest_.substr(0, end);
    if (!line.starts_with(before) || !line.ends_with(behind)) return std::nullopt;
    if (line.size() <= before.size() + behind.size()) return std::nullopt;
    line.remove_prefix(before.size());
    line.remove_suffix(behind.size());
    rest_.remove_prefix(end + 1);
    return std::string(line);
  }
  // "The <name> is <value>." with a name that is no keyword.
  std::optional<std::pair<std::string, std::string>> take_fact() {
    Sentences ahead = *this;
    const auto inside = ahead.take("The ");
    if (!inside) return std::nullopt;
    const std::size_t is = inside->find(" is ");
    if (is == std::string::npos || !is_fact_name(inside->substr(0, is))) return std::nullopt;
    *this = ahead;
    return std::pair{inside->substr(0, is), inside->substr(is + 4)};
  }
  [[nodiscard]] bool at_end() const { return rest_.empty(); }

 private:
  std::string_view rest_;
};

bool parse_head(Sentences& sentences, Head& head) {
  const auto origin = sentences.take("The record is ");
  const auto size = sentences.take("It has ", " entries.");
  const auto root = sentences.take("Its root is ");
  if (!origin || !size || !root) return false;
  const auto checkpoint = parse_checkpoint(*origin + '\n' + *size + '\n' + *root + '\n');
  if (!checkpoint) return false;
  head.origin = checkpoint->origin;
  head.size = checkpoint->size;
  head.root = checkpoint->root;
  return true;
}

Error forged(std::string why) {
  return {Code::forged, "the sign-off does not hold: " + std::move(why), "", ""};
}

}  // namespace

std::string SignOff::fact(std::string_view name) const {
  const auto found = std::find_if(facts.begin(), facts.end(),
                                  [&](const auto& fact) { return fact.first == name; });
  return found == facts.end() ? std::string{} : found->second;
}

Result<std::string> text(const SignOff& sign_off) {
  if (!is_field(sign_off.person)) return cannot_say("person");
  if (!is_kind(sign_off.role)) return cannot_say("role");
  if (!is_field(sign_off.statement)) return cannot_say("statement");
  if (sign_off.facts.size() > kMostFacts) return cannot_say("too many facts");
  std::string out(kFirst);
  out += '\n';
  say(out, "I am ", sign_off.person);
  say(out, "My role is ", sign_off.role);
  say(out, "I state: ", sign_off.statement);
  for (const auto& [name, value] : sign_off.facts) {
    const bool again =
        std::count_if(sign_off.facts.begin(), sign_off.facts.end(),
                      [&named = name](const auto& fact) { return fact.first == named; }) > 1;
    if (!is_fact_name(name) || again || !is_field(value)) return cannot_say(name);
    say(out, "The " + name + " is ", value);
  }
  say(out, "The time is ", rfc3339(sign_off.at_ms));
  say(out, "The record is ", sign_off.head.origin);
  out += "It has " + std::to_string(sign_off.head.size) + " entries.\n";
  say(out, "Its root is ", base64(sign_off.head.root.data(), sign_off.head.root.size()));
  return out;
}

Result<SignOff> parse_sign_off(std::string_view from) {
  const std::string first = std::string(kFirst) + '\n';
  if (!from.starts_with(first)) return not_one();
  Sentences sentences(from.substr(first.size()));
  const auto person = sentences.take("I am ");
  const auto role = sentences.take("My role is ");
  const auto statement = sentences.take("I state: ");
  if (!person || !role || !statement) return not_one();
  SignOff sign_off{*person, *role, *statement, {}, 0, {}};
  while (auto fact = sentences.take_fact()) sign_off.facts.push_back(std::move(*fact));
  const auto time = sentences.take("The time is ");
  const auto at = time ? parse_at(*time) : std::nullopt;
  if (!at || !parse_head(sentences, sign_off.head) || !sentences.at_end()) return not_one();
  sign_off.at_ms = *at;
  const auto again = text(sign_off);
  if (!again || *again != from) return not_one();
  return sign_off;
}

Result<std::string> make_sign_off(const SignOff& sign_off, const SigningKey& person) {
  auto sentences = text(sign_off);
  if (!sentences) return sentences.error();
  return text(sign_note(std::move(*sentences), person));
}

Result<SignedSignOff> check_sign_off(std::string_view from, const std::vector<Person>& people) {
  const auto note = parse_note(from);
  if (!note) return note.error();
  auto sign_off = parse_sign_off(note->text);
  if (!sign_off) return sign_off.error();
  if (note->signatures.size() != 1) return forged("it has more than one signature");
  const NoteSignature& by = note->signatures.front();
  const auto has_key = [&](const Person& person) {
    return person.key.name == by.name && key_id(person.key) == by.id;
  };
  if (std::none_of(people.begin(), people.end(), has_key)) {
    return forged("nobody is enrolled with the key " + by.name);
  }
  const auto found = std::find_if(people.begin(), people.end(), [&](const Person& person) {
    return has_key(person) && person.name == sign_off->person && person.role == sign_off->role;
  });
  if (found == people.end()) {
    return forged(sign_off->person + " as " + sign_off->role + " is not enrolled with the key " +
                  by.name);
  }
  if (!is_signed_by(*note, found->key)) return forged("the signature is not that of " + by.name);
  return SignedSignOff{std::move(*sign_off), *found};
}

Result<std::vector<std::string>> sign_offs_of(const nlohmann::json& body) {
  std::vector<std::string> notes;
  const Error not_texts{Code::bad_input, "signoff must be a text, and signoffs a list of texts", "",
                        ""};
  if (const auto one = body.find("signoff"); one != body.end()) {
    if (!one->is_string()) return not_texts;
    notes.push_back(one->get<std::string>());
  }
  if (const auto many = body.find("signoffs"); many != body.end()) {
    if (!many->is_array() || many->empty()) return not_texts;
    for (const auto& each : *many) {
      if (!each.is_string()) return not_texts;
      notes.push_back(each.get<std::string>());
    }
  }
  return notes;
}

}  // namespace walkdown::record
