// SPDX-License-Identifier: Apache-2.0
#include "checklist/check/stamp_beside.h"

#include <algorithm>
#include <variant>

#include "checklist/record/checkpoint.h"
#include "checklist/record/line.h"
#include "checklist/record/line_source.h"
#include "checklist/record/timestamp.h"

namespace walkdown::check {
namespace {

// The note of the checkpoint line that this is the hash of; empty where there is none.
Result<std::string> note_of(const std::string& path, const record::Bytes& hash) {
  std::string found;
  const auto look = [&](std::string_view line) {
    if (!line.starts_with("{\"checkpoint\"")) return true;
    auto parsed = record::parse_line(line);
    auto* const mark = parsed ? std::get_if<record::CheckpointLine>(&*parsed) : nullptr;
    if (mark == nullptr) return true;
    const record::Hash of = record::sha256(mark->note);
    if (!std::equal(of.begin(), of.end(), hash.begin(), hash.end())) return true;
    found = std::move(mark->note);
    return false;
  };
  const auto rest = record::read_lines(path, {look, [] { return record::kLongestOpen; }, [] {}});
  if (!rest) return rest.error();
  return found;
}

}  // namespace

Result<record::StampFound> stamp_beside(const std::string& path, const record::Bytes& response,
                                        const std::string& authorities) {
  // Where there is no such hash, check_time_stamp() says what is wrong with the answer.
  const auto note = note_of(path, record::stamped_hash(response).value_or(record::Bytes()));
  if (!note) return note.error();
  const auto stamp = record::check_time_stamp(*note, nullptr, response);
  if (!stamp && note->empty() && stamp.error().code == Code::forged) {
    return Error{Code::forged, "the time-stamp is over no head of this record", "",
                 "give the answer that belongs to it"};
  }
  if (!stamp) return stamp.error();
  const auto parsed = record::parse_note(*note);
  const auto head =
      parsed ? record::parse_checkpoint(parsed->text) : Result<record::Checkpoint>(parsed.error());
  if (!head) return head.error();
  const bool vouched = !authorities.empty() && !record::not_vouched(response, authorities);
  return record::StampFound{0, head->size, stamp->at_ms, stamp->authority, vouched};
}

}  // namespace walkdown::check
