// SPDX-License-Identifier: Apache-2.0
#include "checklist/check/derive.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <string_view>

#include "checklist/day/statement.h"
#include "checklist/record/signoff.h"

namespace walkdown::check {
namespace {

using nlohmann::json;

constexpr std::array<std::string_view, 14> kSigned = {
    "answer",  "second",   "pause", "out",   "tag-back",  "key-offer", "key-give",
    "key-put", "key-take", "lift",  "waive", "waive-pin", "release",   "show-time"};

std::string text_of(const json& body, const char* name) {
  const auto found = body.find(name);
  return found != body.end() && found->is_string() ? found->get<std::string>() : std::string();
}

bool has_to_be_signed(std::string_view kind, const json& body) {
  if (kind == "wind") return text_of(body, "from") != "instrument";
  return std::find(kSigned.begin(), kSigned.end(), kind) != kSigned.end();
}

// Why the sign-off of a body does not vouch for it. That the signature itself is good, and by
// somebody enrolled, the record's own rules have found before.
std::optional<std::string> not_vouched(const day::Checklist& checklist, std::string_view kind,
                                       const json& body) {
  const std::string note = text_of(body, "signoff");
  if (note.empty()) return "it has to be signed, and is not";
  const auto parsed = record::parse_note(note);
  if (!parsed) return parsed.error().what;
  const auto said = record::parse_sign_off(parsed->text);
  if (!said) return said.error().what;
  if (said->person != text_of(body, "by") || said->role != text_of(body, "role")) {
    return fmt::format("it is signed by {} as {}, and says {} as {}", said->person, said->role,
                       text_of(body, "by"), text_of(body, "role"));
  }
  const day::Statement wanted = day::statement(checklist, kind, body);
  if (said->statement != wanted.text || said->facts != wanted.facts) {
    return said->person + " signed something else than the entry says";
  }
  return std::nullopt;
}

}  // namespace

std::optional<std::string> Deriver::judge_ignored(const record::EntryView& view) {
  const record::Entry entry = record::entry_of(view);
  const std::string& why = folded_.day().day().ignored.back().why;
  if (has_to_be_signed(entry.kind, entry.body)) {
    if (auto bad = not_vouched(folded_.day().checklist(), entry.kind, entry.body)) {
      return fmt::format("the entry {} does not hold: {}", entry.kind, *bad);
    }
  }
  const auto of = entry.body.find("of");
  const bool under_release = entry.kind == "second" && of != entry.body.end() &&
                             of->is_number_unsigned() &&
                             releases_.contains(of->get<std::uint64_t>());
  if (entry.kind == "release" || under_release) {
    return "the release was signed and not possible at that moment; " + why;
  }
  ++ignored_;
  if (remarks_.size() < kMostRemarks) {
    remarks_.push_back(fmt::format("entry {} broke a rule and changed nothing; {}", view.n, why));
  }
  return std::nullopt;
}

std::optional<std::string> Deriver::take(const record::EntryView& entry) {
  const std::uint64_t before = folded_.opened() ? folded_.day().day().ignored_count : 0;
  if (auto why = folded_.take(entry)) return why;
  if (entry.kind == "release") releases_.insert(entry.n);
  if (folded_.day().day().ignored_count == before) return std::nullopt;
  return judge_ignored(entry);
}

Result<record::Report> check_file(const std::string& path, record::VerifyOptions options) {
  Deriver deriver;
  options.visitor = [&](const record::EntryView& entry) { return deriver.take(entry); };
  auto report = record::verify_file(path, options);
  if (!report) return report;
  auto& remarks = report->remarks;
  remarks.insert(remarks.end(), deriver.remarks().begin(), deriver.remarks().end());
  if (deriver.ignored() > Deriver::kMostRemarks) {
    remarks.push_back(fmt::format("and {} more entries broke a rule and changed nothing",
                                  deriver.ignored() - Deriver::kMostRemarks));
  }
  return report;
}

}  // namespace walkdown::check
