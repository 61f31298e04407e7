// SPDX-License-Identifier: Apache-2.0
// A piece of a record's file: its lines found, parsed and hashed by one thread, to be judged in
// order by another.
#pragma once

#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "checklist/record/line.h"
#include "checklist/record/merkle.h"
#include "checklist/record/record_file.h"
#include "reader/result.h"

namespace walkdown::record {

// What goes from one core's cache to another's costs more than parsing it. So a block goes back to
// the thread that filled it before, its lines are small, and where only hashes are asked for the
// judging thread does not look at the text of plain entries at all.
class LineBlock {
 public:
  struct Line {
    std::size_t begin;
    std::uint32_t size;                              // up to kLongestOpen
    std::uint32_t kind, kind_size, body, body_size;  // of an entry: from the line's begin
    std::uint64_t n;
    std::int64_t at_ms, up_ms;
    bool entry;  // else the next of others()
  };

  // Takes what the file has next: at least one line, unless it ends or no end of the line comes
  // within `longest` bytes. `rest` is what was read behind the last LF before; it becomes that
  // behind the last LF of this block.
  void fill(const RecordFile& file, std::size_t longest, std::string& rest);
  void parse(Bodies bodies);
  // The leaves of the entries, in order (merkle.h).
  void hash();
  void clear();

  [[nodiscard]] const std::vector<Line>& lines() const { return lines_; }
  [[nodiscard]] const std::vector<Result<LineView>>& others() const { return others_; }
  [[nodiscard]] const std::vector<Hash>& leaves() const { return leaves_; }
  [[nodiscard]] std::string_view view(const Line& line) const {
    return {text_.get() + line.begin, line.size};
  }
  [[nodiscard]] EntryView entry(const Line& line) const;
  // The line behind these is longer than allowed.
  [[nodiscard]] bool too_long() const { return too_long_; }
  // Where these were the last: what stands behind the last LF, or why no more can be read.
  [[nodiscard]] const std::optional<Result<std::string>>& over() const { return over_; }

 private:
  void make_room(std::size_t size);
  // From `from` on; returns where the last line ends, with its LF.
  std::size_t find_lines(std::size_t from);
  void note(Line& line, Result<LineView> parsed);

  std::unique_ptr<char[]> text_;  // NOLINT: never set to zero, which a vector would do
  std::size_t room_ = 0, size_ = 0;
  std::vector<Line> lines_;
  std::vector<Result<LineView>> others_;  // checkpoints, and what is no line
  std::vector<Hash> leaves_;
  bool too_long_ = false;
  std::optional<Result<std::string>> over_;
};

}  // namespace walkdown::record
