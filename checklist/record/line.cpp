// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/line.h"

#include <algorithm>
#include <array>
#include <charconv>

#include "checklist/record/canonical.h"
#include "checklist/record/clock.h"
#include "checklist/record/json_text.h"
#include "checklist/record/utf8.h"

namespace walkdown::record {

namespace {

constexpr std::string_view kCheckpoint = "{\"checkpoint\":";
constexpr std::int64_t kYear10000 = 253'402'300'800'000;

Error not_a_line(std::string why) {
  return {Code::bad_input, "the line is not as a record writes it: " + std::move(why), "", ""};
}

Result<LineView> parse_checkpoint_line(std::string_view line) {
  Canonical json(line);
  std::string_view note;
  if (!json.take(kCheckpoint) || !json.take_string(&note) || !json.take('}') || !json.at_end()) {
    return not_a_line("a checkpoint holds one text and nothing else");
  }
  return LineView{CheckpointLine{unescape(note)}};
}

// The body up to the brace that ends the line, as it stands.
bool take_unread(std::string_view line, std::size_t begin, EntryView& entry) {
  const std::string_view rest = line.substr(begin);
  if (!rest.starts_with('{') || !rest.ends_with("}}")) return false;
  entry.body = rest.substr(0, rest.size() - 1);
  return true;
}

Result<LineView> parse_entry_line(std::string_view line, Bodies bodies) {
  Canonical json(line);
  EntryView entry;
  std::int64_t n = 0;
  std::string_view at;
  if (!json.take("{\"n\":") || !json.take_whole(&n) || n < 0) return not_a_line("no entry number");
  if (!json.take(",\"at\":") || !json.take_string(&at)) return not_a_line("no time");
  const auto at_ms = parse_at(at);
  if (!at_ms || *at_ms < 0) return not_a_line("the time is not one, in UTC with three decimals");
  if (!json.take(",\"up_ms\":") || !json.take_whole(&entry.up_ms) || entry.up_ms < 0) {
    return not_a_line("no boot clock");
  }
  if (!json.take(",\"kind\":") || !json.take_string(&entry.kind) || !is_kind(entry.kind)) {
    return not_a_line("no kind");
  }
  if (!json.take(",\"body\":")) return not_a_line("no body");
  const std::size_t begin = json.at();
  entry.n = static_cast<std::uint64_t>(n);
  entry.at_ms = *at_ms;
  const bool unread = bodies == Bodies::unread && is_plain_kind(entry.kind);
  if (unread && take_unread(line, begin, entry)) return LineView{entry};
  if (!is_utf8(line)) return not_a_line("it is not UTF-8");
  if (!json.take_object()) {
    return not_a_line("the body has another spelling at byte " + std::to_string(json.at() + 1));
  }
  entry.body = line.substr(begin, json.at() - begin);
  if (!json.take('}') || !json.at_end()) return not_a_line("there is something behind the entry");
  return LineView{entry};
}

template <typename Whole>
void append_number(Whole number, std::string& out) {
  std::array<char, 24> digits{};
  out.append(digits.data(), std::to_chars(digits.begin(), digits.end(), number).ptr);
}

}  // namespace

bool is_kind(std::string_view kind) {
  const auto is_letter = [](char c) { return c >= 'a' && c <= 'z'; };
  return !kind.empty() && kind.size() <= 40 && is_letter(kind.front()) &&
         std::all_of(kind.begin(), kind.end(),
                     [&](char c) { return is_letter(c) || (c >= '0' && c <= '9') || c == '-'; });
}

Result<LineView> parse_line(std::string_view line, Bodies bodies) {
  if (!line.starts_with(kCheckpoint)) return parse_entry_line(line, bodies);
  if (!is_utf8(line)) return not_a_line("it is not UTF-8");
  return parse_checkpoint_line(line);
}

Entry entry_of(const EntryView& view) {
  return {view.n, view.at_ms, view.up_ms, std::string(view.kind), parse_canonical(view.body)};
}

void append_entry_line(const EntryView& entry, std::string& out) {
  out += "{\"n\":";
  append_number(entry.n, out);
  out += ",\"at\":\"";
  out += rfc3339(entry.at_ms);
  out += "\",\"up_ms\":";
  append_number(entry.up_ms, out);
  out += ",\"kind\":\"";
  out += entry.kind;
  out += "\",\"body\":";
  out += entry.body;
  out += '}';
}

Result<std::string> entry_line(const Entry& entry) {
  if (!is_kind(entry.kind)) return not_a_line("the kind is not of a-z, 0-9 and '-'");
  if (entry.at_ms < 0 || entry.at_ms >= kYear10000 || entry.up_ms < 0) {
    return not_a_line("the time is outside 1970 to 9999");
  }
  if (!entry.body.is_object()) return not_a_line("the body is no object");
  std::string body;
  if (Done put = append_json(entry.body, body); !put) return put.error();
  std::string line;
  append_entry_line({entry.n, entry.at_ms, entry.up_ms, entry.kind, body}, line);
  if (line.size() > (entry.n == 0 ? kLongestOpen : kLongestLine)) return not_a_line("too long");
  return line;
}

std::string checkpoint_line(std::string_view note) {
  std::string line(kCheckpoint);
  append_string(note, line);
  line += '}';
  return line;
}

}  // namespace walkdown::record
