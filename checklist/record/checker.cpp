// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/checker.h"

#include <algorithm>
#include <utility>

#include "checklist/record/stamp_remark.h"
#include "checklist/record/timestamp.h"

namespace walkdown::record {

namespace {

std::string range(std::uint64_t first, std::uint64_t last) {
  if (first == last) return "line " + std::to_string(first);
  return "one of the lines " + std::to_string(first) + " to " + std::to_string(last);
}

}  // namespace

bool Checker::fail(std::uint64_t number, std::string why) {
  if (!report_.first_bad) {
    report_.first_bad = number;
    report_.why = std::move(why);
  }
  return false;
}

void Checker::too_long() { fail(lines_ + 1, "the line is longer than a record allows"); }

bool Checker::count(std::string_view line) {
  ++lines_;
  bytes_ += line.size() + 1;
  if (line.size() <= (lines_ == 1 ? kLongestOpen : kLongestLine)) return true;
  return fail(lines_, "the line is longer than a record allows");
}

bool Checker::line(std::string_view line, const Result<LineView>& parsed) {
  if (parsed) {
    if (const auto* view = std::get_if<EntryView>(&*parsed)) {
      return this->line(line, *view, nullptr);
    }
  }
  if (!count(line)) return false;
  if (parsed) return checkpoint(std::get<CheckpointLine>(*parsed).note);
  unsealed_end_ = line.find('\0') != std::string_view::npos;
  if (lines_ == 1 && line.starts_with(R"({"extract":)")) {
    return fail(1, "this is an extract of a record, and no whole record");
  }
  return fail(lines_, parsed.error().what);
}

bool Checker::line(std::string_view line, const EntryView& view, const Hash* leaf) {
  return count(line) && entry(line, view, leaf);
}

// For hashing alone the text of a plain entry is of no more use.
void Checker::hold(std::string_view line, const EntryView& view, const Hash* leaf) {
  if (leaf == nullptr || !options_.hash_only || !is_plain_kind(view.kind)) {
    return commit_.add(lines_, line, view, leaf);
  }
  const EntryView plain{view.n, view.at_ms, view.up_ms, "reading", {}};
  commit_.add_hashed(lines_, line.size(), plain, *leaf);
}

bool Checker::entry(std::string_view line, const EntryView& view, const Hash* leaf) {
  const std::uint64_t expected = report_.sealed.tree.size() + commit_.size();
  if (view.n != expected) {
    return fail(lines_, "entry " + std::to_string(expected) +
                            " should stand here, and it is entry " + std::to_string(view.n));
  }
  hold(line, view, leaf);
  if (commit_.bytes() > kLongestCommit) return fail(lines_, "no checkpoint comes for too long");
  if (view.n != 0) return true;
  const auto facts = open_facts(view);
  if (!facts) return fail(lines_, facts.error().what);
  stations_ = {facts->station};
  return true;
}

bool Checker::checkpoint(const std::string& note_text) {
  if (commit_.empty()) return fail(lines_, "a checkpoint stands here with no entry before it");
  auto note = parse_note(note_text);
  if (!note) return fail(lines_, note.error().what);
  const auto checkpoint = parse_checkpoint(note->text);
  if (!checkpoint) return fail(lines_, checkpoint.error().what);
  if (note->signatures.size() != 1) return fail(lines_, "a checkpoint has one signature");
  if (options_.hash_only) {
    unchecked_ = std::move(*note);
    unchecked_line_ = lines_;
  } else if (!signature(*note)) {
    return false;
  }
  Tree grown = report_.sealed.tree;
  grown.add(commit_.leaves());
  return root(*checkpoint, grown) && seal(*checkpoint, std::move(grown));
}

bool Checker::signature(const Note& note) {
  const bool signed_by_one = std::any_of(stations_.begin(), stations_.end(),
                                         [&](const auto& key) { return is_signed_by(note, key); });
  if (signed_by_one) return true;
  return fail(lines_, "the checkpoint is not signed by a station of this record");
}

bool Checker::root(const Checkpoint& checkpoint, const Tree& grown) {
  if (checkpoint.size != grown.size()) {
    return fail(lines_, "the checkpoint seals " + std::to_string(checkpoint.size) +
                            " entries, and " + std::to_string(grown.size()) + " stand before it");
  }
  if (grown.root() == checkpoint.root) return true;
  const std::uint64_t first = commit_.line_number(0),
                      last = commit_.line_number(commit_.size() - 1);
  const auto flipped = find_flipped_bit(commit_, report_.sealed.tree, checkpoint.root);
  if (flipped) {
    const std::uint64_t number = commit_.line_number(*flipped);
    return fail(number, range(number, number) + " was changed after it was sealed");
  }
  return fail(first, range(first, last) + " was changed after it was sealed");
}

bool Checker::seal(const Checkpoint& checkpoint, Tree grown) {
  if (!entries_hold()) return false;
  if (checkpoint.origin != rules_.origin()) {
    return fail(lines_, "the checkpoint is of another record: " + checkpoint.origin);
  }
  stations_ = rules_.stations();
  const Times& times = rules_.times();
  const Head head{checkpoint.origin, checkpoint.size, checkpoint.root, times.at_ms(),
                  times.up_ms()};
  heads_.push(head);
  report_.sealed = {
      checkpoint.origin, stations_, std::move(grown), times, rules_.closed(), bytes_, lines_};
  report_.entries = checkpoint.size;
  report_.mark = mark(checkpoint.root);
  const std::string& expected = options_.expected_mark;
  if (!expected.empty() && same_mark(expected, report_.mark)) marked_ = head;
  report_.closed = rules_.closed();
  commit_.clear();
  if (options_.progress) options_.progress(bytes_);
  return true;
}

bool Checker::entries_hold() {
  for (std::size_t i = 0; i < commit_.size(); ++i) {
    const EntryView view = commit_.view(i);
    // A head of before a restart is no head "shortly before" any more: the boot clock began anew.
    if (view.kind == "resumed") heads_.clear();
    if (auto why = rules_.accept(view, heads_)) return fail(commit_.line_number(i), *why);
    if (options_.hash_only || !options_.visitor) continue;
    if (auto why = options_.visitor(view)) return fail(commit_.line_number(i), *why);
  }
  return true;
}

void Checker::check_end(std::string_view rest) {
  if (!report_.first_bad) unsealed_end_ = !rest.empty() || !commit_.empty();
  if (!rest.empty()) {
    fail(lines_ + 1, "the file ends in the middle of this line: its end was cut, or never written");
  } else if (!commit_.empty()) {
    fail(commit_.line_number(0), "no checkpoint follows " + range(commit_.line_number(0), lines_) +
                                     ": the end was cut, or never acknowledged");
  } else if (lines_ == 0) {
    fail(1, "the file is empty");
  }
}

void Checker::check_last_signature() {
  if (!unchecked_) return;
  const bool ok = std::any_of(stations_.begin(), stations_.end(),
                              [&](const auto& key) { return is_signed_by(*unchecked_, key); });
  if (!ok) fail(unchecked_line_, "the checkpoint is not signed by a station of this record");
}

void Checker::check_mark() {
  if (report_.first_bad || options_.expected_mark.empty()) return;
  if (!marked_) {
    fail(lines_, "the record's mark is " + report_.mark + ", and at no moment was it the " +
                     options_.expected_mark + " that was written down");
  } else if (marked_->size < report_.entries) {
    report_.remarks.push_back("the mark that was written down is that of the first " +
                              std::to_string(marked_->size) + " entries, as they stood at " +
                              stamp_time(marked_->at_ms) + "; it shows nothing of what came after");
  }
}

void Checker::name_unknown_keys() {
  std::vector<VerifyKey> keys = rules_.stations();
  for (const Person& person : rules_.people()) keys.push_back(person.key);
  for (const VerifyKey& key : keys) {
    const std::string name = text(key);
    const bool known =
        std::find(options_.known.begin(), options_.known.end(), key) != options_.known.end();
    auto& unknown = report_.unknown_keys;
    const bool named = std::find(unknown.begin(), unknown.end(), name) != unknown.end();
    if (!known && !named) unknown.push_back(name);
  }
  if (report_.entries == 0) return;  // there is nothing that a remark could be about
  if (options_.known.empty()) {
    report_.remarks.emplace_back(
        report_.first_bad ? "no known keys were given: its names are taken on trust"
                          : "no known keys were given: the record holds in itself, and its names "
                            "are taken on trust");
  }
  if (!report_.closed) report_.remarks.emplace_back("the record was not closed");
}

void Checker::tell_stamps() {
  for (const StampAt& each : rules_.stamps()) {
    const bool none = options_.authorities.empty();
    const auto why = none ? std::nullopt : not_vouched(each.response, options_.authorities);
    report_.stamps.push_back(
        {each.n, each.entries, each.stamp.at_ms, each.stamp.authority, !none && !why});
    report_.remarks.push_back(stamp_remark(each, none, why));
    if (auto apart = clocks_apart(each)) report_.remarks.push_back(std::move(*apart));
  }
}

Report Checker::finish(std::string_view rest) {
  check_end(rest);
  if (!report_.first_bad) check_last_signature();
  check_mark();
  name_unknown_keys();
  tell_stamps();
  report_.holds = !report_.first_bad;
  return std::move(report_);
}

}  // namespace walkdown::record
