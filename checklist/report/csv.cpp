// SPDX-License-Identifier: Apache-2.0
#include "checklist/report/csv.h"

#include <fmt/format.h>

#include <cstdlib>

#include "checklist/audit/drafts.h"
#include "checklist/day/body.h"
#include "checklist/record/clock.h"
#include "checklist/record/signoff.h"

namespace walkdown::report {
namespace {

using day::text_in;

std::string joined(const std::vector<std::string>& texts) {
  std::string out;
  for (const std::string& each : texts) out += (out.empty() ? "" : " ") + each;
  return out;
}

}  // namespace

std::string csv_field(std::string_view text) {
  if (text.find_first_of(",\"\r\n") == std::string_view::npos) return std::string(text);
  std::string out = "\"";
  for (const char c : text) {
    if (c == '"') out += '"';
    out += c;
  }
  return out + '"';
}

std::string ohm_text(std::int64_t micro_ohm) {
  const std::int64_t size = std::abs(micro_ohm);
  std::string out =
      fmt::format("{}{}.{:06}", micro_ohm < 0 ? "-" : "", size / 1'000'000, size % 1'000'000);
  while (out.back() == '0') out.pop_back();
  if (out.back() == '.') out.pop_back();
  return out;
}

CsvTable::CsvTable(Table table) : table_(table) {
  if (table == Table::readings) row({"entry", "time", "pin", "ohm", "over", "raw"});
  if (table == Table::findings) {
    row({"entry", "time", "kind", "pins", "by", "confidence_pct", "say"});
  }
  if (table == Table::sign_offs) {
    row({"entry", "time", "person", "role", "key", "statement", "facts"});
  }
}

void CsvTable::row(std::initializer_list<std::string_view> fields) {
  bool first = true;
  for (const std::string_view field : fields) {
    if (!first) text_ += ',';
    first = false;
    text_ += csv_field(field);
  }
  text_ += "\r\n";
}

void CsvTable::take(const record::EntryView& view) {
  if (view.n == 0) return;
  const Place place{std::to_string(view.n), record::rfc3339(view.at_ms)};
  if (table_ == Table::readings) {
    if (view.kind == audit::kReading) reading(view, place);
  } else if (table_ == Table::findings) {
    if (view.kind == audit::kClaim) findings(record::entry_of(view).body, place);
  } else {
    sign_offs(record::entry_of(view).body, place);
  }
}

void CsvTable::reading(const record::EntryView& view, const Place& place) {
  const auto read = audit::reading_of(record::entry_of(view).body);
  if (!read) return;
  const auto& reading = read->reading;
  row({place.n, place.at, plan::text(reading.pin),
       reading.over ? std::string() : ohm_text(reading.micro_ohm), reading.over ? "over" : "",
       read->raw});
}

void CsvTable::findings(const nlohmann::json& body, const Place& place) {
  const auto found = body.find("findings");
  if (found == body.end() || !found->is_array()) return;
  for (const auto& each : *found) {
    row({place.n, place.at, text_in(each, "kind"), joined(day::texts_in(each, "pins")),
         std::to_string(day::whole_in(each, "by").value_or(0)),
         std::to_string(day::whole_in(each, "confidence_pct").value_or(0)), text_in(each, "say")});
  }
}

void CsvTable::sign_offs(const nlohmann::json& body, const Place& place) {
  const auto notes = record::sign_offs_of(body);
  if (!notes) return;
  for (const std::string& text : *notes) {
    const auto note = record::parse_note(text);
    if (!note) continue;
    const auto said = record::parse_sign_off(note->text);
    if (!said) continue;
    std::string facts;
    for (const auto& [name, value] : said->facts) {
      facts += fmt::format("{}{}={}", facts.empty() ? "" : "; ", name, value);
    }
    row({place.n, record::rfc3339(said->at_ms), said->person, said->role,
         note->signatures.front().name, said->statement, facts});
  }
}

}  // namespace walkdown::report
