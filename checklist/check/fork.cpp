// SPDX-License-Identifier: Apache-2.0
#include "checklist/check/fork.h"

#include <fmt/format.h>

#include <fstream>
#include <variant>

#include "checklist/record/checkpoint.h"
#include "checklist/record/line.h"
#include "checklist/record/merkle.h"

namespace walkdown::check {
namespace {

Error unreadable(const std::string& path) {
  return {Code::io, "the record cannot be read", path, "check the name"};
}

void note_checkpoint(const std::string& line, Fork& fork) {
  if (!line.starts_with("{\"checkpoint\"")) return;
  const auto parsed = record::parse_line(line);
  if (!parsed || !std::holds_alternative<record::CheckpointLine>(*parsed)) return;
  const auto note = record::parse_note(std::get<record::CheckpointLine>(*parsed).note);
  if (!note) return;
  const auto checkpoint = record::parse_checkpoint(note->text);
  if (!checkpoint) return;
  fork.entries = checkpoint->size;
  fork.mark = record::mark(checkpoint->root);
}

Relation relation_of(bool has_a, bool has_b, std::uint64_t line) {
  if (line == 1) return Relation::other_record;
  if (!has_b) return Relation::a_goes_on;
  return has_a ? Relation::part : Relation::b_goes_on;
}

}  // namespace

Result<Fork> compare(const std::string& a, const std::string& b) {
  std::ifstream file_a(a, std::ios::binary), file_b(b, std::ios::binary);
  if (!file_a) return unreadable(a);
  if (!file_b) return unreadable(b);
  Fork fork;
  std::string line_a, line_b;
  for (std::uint64_t number = 1;; ++number) {
    const bool has_a = static_cast<bool>(std::getline(file_a, line_a));
    const bool has_b = static_cast<bool>(std::getline(file_b, line_b));
    if (file_a.bad()) return unreadable(a);
    if (file_b.bad()) return unreadable(b);
    if (!has_a && !has_b) return fork;
    if (has_a && has_b && line_a == line_b) {
      note_checkpoint(line_a, fork);
      continue;
    }
    fork.line = number;
    fork.relation = relation_of(has_a, has_b, number);
    return fork;
  }
}

std::string Fork::sentence() const {
  switch (relation) {
    case Relation::same:
      return "Both files are the same, byte for byte.";
    case Relation::a_goes_on:
      return fmt::format("The second is the beginning of the first: {} entries, mark {}.", entries,
                         mark);
    case Relation::b_goes_on:
      return fmt::format("The first is the beginning of the second: {} entries, mark {}.", entries,
                         mark);
    case Relation::part:
      return fmt::format(
          "The two share {} entries, up to mark {}, and differ from line {} on: one record has two "
          "histories. The mark on paper says which one is the day's.",
          entries, mark.empty() ? "(none)" : mark, line);
    case Relation::other_record:
      return "The two do not share their first line: they are two records, not two states of one.";
  }
  return "";
}

}  // namespace walkdown::check
