// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/extract_check.h"

#include <algorithm>

#include "checklist/record/json_text.h"
#include "checklist/record/line_source.h"
#include "checklist/record/rules.h"
#include "checklist/record/utf8.h"

namespace walkdown::record {

bool ExtractChecker::line(std::string_view line) {
  if (report_.first_bad) return false;
  ++lines_;
  Why why;
  if (!is_utf8(line)) {
    why = "the line is not UTF-8";
  } else if (lines_ == 1) {
    why = head(line);
  } else if (!path_) {
    why = proof(line);
  } else {
    why = line.starts_with("{\"withheld\":") ? withheld(line) : entry(line);
    path_.reset();
  }
  if (!why) return true;
  report_.first_bad = lines_;
  report_.why = std::move(*why);
  return false;
}

void ExtractChecker::too_long() {
  if (report_.first_bad) return;
  report_.first_bad = lines_ + 1;
  report_.why = "the line is longer than a record allows";
}

ExtractChecker::Why ExtractChecker::head(std::string_view line) {
  auto head = parse_extract_head(line);
  if (!head) return head.error().what;
  const auto note = parse_note(head->checkpoint);
  if (!note) return note.error().what;
  auto checkpoint = parse_checkpoint(note->text);
  if (!checkpoint) return checkpoint.error().what;
  if (note->signatures.size() != 1) return "a checkpoint has one signature";
  if (head->station.type != kSignsNotes || !is_signed_by(*note, head->station)) {
    return "the checkpoint is not signed by the station that the extract names";
  }
  station_ = std::move(head->station);
  checkpoint_ = std::move(*checkpoint);
  report_.origin = checkpoint_.origin;
  report_.record_entries = checkpoint_.size;
  report_.mark = mark(checkpoint_.root);
  return std::nullopt;
}

ExtractChecker::Why ExtractChecker::proof(std::string_view line) {
  auto proof = parse_proof_line(line);
  if (!proof) return proof.error().what;
  path_ = std::move(*proof);
  return std::nullopt;
}

ExtractChecker::Why ExtractChecker::place(std::uint64_t n, const Hash& leaf) {
  if (last_n_ && n <= *last_n_) return "the entries do not rise in number";
  last_n_ = n;
  if (holds_inclusion(leaf, n, checkpoint_.size, path_->path, checkpoint_.root)) {
    return std::nullopt;
  }
  return "the record has no such entry " + std::to_string(n) + ": it, or its proof, was changed";
}

ExtractChecker::Why ExtractChecker::withheld(std::string_view line) {
  const auto withheld = parse_withheld_line(line);
  if (!withheld) return withheld.error().what;
  if (auto why = place(withheld->n, withheld->leaf)) return why;
  ++report_.withheld;
  return std::nullopt;
}

ExtractChecker::Why ExtractChecker::entry(std::string_view line) {
  const auto parsed = parse_line(line);
  if (!parsed) return parsed.error().what;
  const auto* view = std::get_if<EntryView>(&*parsed);
  if (view == nullptr) return "a checkpoint stands where an entry should";
  if (view->n > 0 && line.size() > kLongestLine) return "the line is longer than a record allows";
  if (auto why = place(view->n, leaf_hash(line))) return why;
  if (auto why = view->n == 0 ? opening(*view) : body(*view)) return why;
  ++report_.entries;
  return std::nullopt;
}

// The last checkpoint may be by a station that came later, so the opening's own need not be it.
ExtractChecker::Why ExtractChecker::opening(const EntryView& view) const {
  const auto facts = open_facts(view);
  if (!facts) return facts.error().what;
  if (facts->origin == checkpoint_.origin) return std::nullopt;
  return "the opening is that of another record";
}

ExtractChecker::Why ExtractChecker::body(const EntryView& view) {
  const bool enrols = view.kind == "enrol";
  if (!enrols && view.body.find("\"signoff") == std::string_view::npos) return std::nullopt;
  const nlohmann::json body = parse_canonical(view.body);
  if (enrols) {
    auto person = person_of(body);
    if (!person) return person.error().what;
    people_.push_back(std::move(*person));
  }
  const auto notes = sign_offs_of(body);
  if (!notes) return notes.error().what;
  for (const std::string& note : *notes) {
    if (auto why = sign_off(view, note)) return why;
  }
  return std::nullopt;
}

ExtractChecker::Why ExtractChecker::sign_off(const EntryView& view, const std::string& text) {
  const auto note = parse_note(text);
  if (!note) return note.error().what;
  const auto said = parse_sign_off(note->text);
  if (!said) return said.error().what;
  if (said->head.origin != checkpoint_.origin) return "the sign-off belongs to another record";
  if (said->head.size > view.n) return "the sign-off names a later state of the record";
  const NoteSignature& by = note->signatures.front();
  const bool enrolled = std::any_of(people_.begin(), people_.end(), [&](const Person& person) {
    return person.key.name == by.name && key_id(person.key) == by.id;
  });
  if (!enrolled) return signed_by_known(*note);
  const auto checked = check_sign_off(text, people_);
  if (checked) return std::nullopt;
  return checked.error().what;
}

ExtractChecker::Why ExtractChecker::signed_by_known(const Note& note) {
  if (note.signatures.size() != 1) return "a sign-off has one signature";
  const NoteSignature& by = note.signatures.front();
  const auto known =
      std::find_if(options_.known.begin(), options_.known.end(),
                   [&](const auto& key) { return key.name == by.name && key_id(key) == by.id; });
  if (known == options_.known.end()) {
    ++report_.unchecked_sign_offs;
    return std::nullopt;
  }
  if (is_signed_by(note, *known)) return std::nullopt;
  return "the sign-off does not hold: the signature is not that of " + by.name;
}

void ExtractChecker::check_mark() {
  if (report_.first_bad || options_.expected_mark.empty()) return;
  if (same_mark(options_.expected_mark, report_.mark)) return;
  report_.first_bad = 1;
  report_.why = "the extract is of a record with the mark " + report_.mark + ", and not the " +
                options_.expected_mark + " that was written down";
}

void ExtractChecker::name_keys() {
  std::vector<VerifyKey> keys{station_};
  for (const Person& person : people_) keys.push_back(person.key);
  for (const VerifyKey& key : keys) {
    const bool known =
        std::find(options_.known.begin(), options_.known.end(), key) != options_.known.end();
    const std::string name = text(key);
    auto& unknown = report_.unknown_keys;
    if (!known && std::find(unknown.begin(), unknown.end(), name) == unknown.end()) {
      unknown.push_back(name);
    }
  }
  if (options_.known.empty() && options_.expected_mark.empty()) {
    report_.remarks.emplace_back(
        "no mark and no known keys were given: the extract holds in itself, and that it is of the "
        "record it names is taken on trust");
  }
  if (report_.unchecked_sign_offs > 0) {
    report_.remarks.push_back(std::to_string(report_.unchecked_sign_offs) +
                              " sign-offs are in it whose key is neither in the extract nor known: "
                              "they stand in the record, and their signatures were not checked");
  }
}

ExtractReport ExtractChecker::finish(std::string_view rest) {
  if (!report_.first_bad && (!rest.empty() || lines_ == 0 || path_)) {
    report_.first_bad = lines_ + 1;
    report_.why = "the extract ends in the middle: its end was cut, or never written";
  }
  check_mark();
  if (report_.record_entries > 0) name_keys();
  report_.holds = !report_.first_bad;
  return std::move(report_);
}

Result<ExtractReport> verify_extract_file(const std::string& path, const VerifyOptions& options) {
  ExtractChecker checker(options);
  const auto rest = read_lines(
      path, {[&](std::string_view line) { return checker.line(line); },
             [] { return ExtractChecker::longest_line(); }, [&] { checker.too_long(); }});
  if (!rest) return rest.error();
  return checker.finish(*rest);
}

ExtractReport verify_extract_bytes(std::string_view bytes, const VerifyOptions& options) {
  ExtractChecker checker(options);
  while (true) {
    const std::size_t end = bytes.find('\n');
    if (end == std::string_view::npos) return checker.finish(bytes);
    if (!checker.line(bytes.substr(0, end))) return checker.finish({});
    bytes.remove_prefix(end + 1);
  }
}

Result<bool> is_extract(const std::string& path) {
  bool found = false;
  const auto rest = read_lines(path, {[&](std::string_view line) {
                                        found = line.starts_with(kExtractBegins);
                                        return false;
                                      },
                                      [] { return kLongestOpen; }, [] {}});
  if (!rest) return rest.error();
  return found || rest->starts_with(kExtractBegins);
}

}  // namespace walkdown::record
