// SPDX-License-Identifier: Apache-2.0
#include "checklist/desk/witness.h"

#include <variant>

#include "checklist/record/cosign.h"
#include "checklist/record/line.h"
#include "checklist/record/line_source.h"
#include "checklist/record/merkle.h"
#include "checklist/record/stamped.h"
#include "checklist/record/verify.h"

namespace walkdown::desk {
namespace {

// Of the first `size` entries, as they stand in the file.
Result<std::vector<record::Hash>> leaves_of(const std::string& path, std::uint64_t size) {
  std::vector<record::Hash> leaves;
  const auto rest = record::read_lines(path, {[&](std::string_view line) {
                                                if (line.starts_with("{\"n\":"))
                                                  leaves.push_back(record::leaf_hash(line));
                                                return leaves.size() < size;
                                              },
                                              [] { return record::kLongestOpen; }, [] {}});
  if (!rest) return rest.error();
  if (leaves.size() == size) return leaves;
  return Error{Code::io, "the record is shorter than it was", path, ""};
}

Error not_of_this_record() {
  return {Code::refused, "what was signed is another record, or a head that this one never had", "",
          "give out the head of this record"};
}

// How the record goes on from this checkpoint to where it is now.
Result<record::HeadProof> proof_from(const Desk& desk, const record::Checkpoint& checkpoint) {
  const record::Head head = desk.head();
  const std::uint64_t size = checkpoint.size;
  if (checkpoint.origin != head.origin || size == 0 || size > head.size) {
    return not_of_this_record();
  }
  const auto leaves = leaves_of(desk.path(), head.size);
  if (!leaves) return leaves.error();
  const auto begun = std::span(*leaves).first(static_cast<std::size_t>(size));
  if (record::tree_root(begun) != checkpoint.root) return not_of_this_record();
  return record::HeadProof{head.size, record::consistency_path(*leaves, size)};
}

}  // namespace

Result<std::string> head_note(const std::string& record_path) {
  const auto report = record::verify_file(record_path);
  if (!report) return report.error();
  if (!report->holds) {
    return Error{Code::forged, "the record does not hold: " + report->why, record_path,
                 "leave the file as it is, and see what walkdown verify says"};
  }
  std::string note;
  const auto rest = record::read_lines(
      record_path, {[&](std::string_view line) {
                      auto parsed = record::parse_line(line);
                      auto* mark = parsed ? std::get_if<record::CheckpointLine>(&*parsed) : nullptr;
                      if (mark != nullptr) note = std::move(mark->note);
                      return true;
                    },
                    [] { return record::kLongestOpen; }, [] {}});
  if (!rest) return rest.error();
  return note;
}

Entry add_cosignature(Desk& desk, std::string_view note) {
  const auto cosigned = record::parse_cosigned(note);
  if (!cosigned) return cosigned.error();
  const auto proof = proof_from(desk, cosigned->checkpoint);
  if (!proof) return proof.error();
  return desk.act("cosign", record::cosign_body(note, proof->to, proof->path));
}

Entry add_time_stamp(Desk& desk, std::string_view note, const record::Bytes& request,
                     const record::Bytes& response) {
  const auto stamped =
      record::parse_stamped_body(record::stamped_body(note, request, response, {}));
  if (!stamped) return stamped.error();
  if (const auto stamp = stamped->check(); !stamp) return stamp.error();
  const auto proof = proof_from(desk, stamped->checkpoint);
  if (!proof) return proof.error();
  return desk.act("timestamp", record::stamped_body(note, request, response, *proof));
}

}  // namespace walkdown::desk
