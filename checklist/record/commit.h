// SPDX-License-Identifier: Apache-2.0
// The entries between two checkpoints, as the verifier holds them until the second one came.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "checklist/record/line.h"
#include "checklist/record/merkle.h"

namespace walkdown::record {

class Commit {
 public:
  // `view` is of `line`; the line is copied. `number` is its place in the file, from 1. `leaf`: its
  // hash where that is known, of all entries of a commit or of none.
  void add(std::uint64_t number, std::string_view line, const EntryView& view,
           const Hash* leaf = nullptr);
  // A plain entry (line.h) of which nothing is kept but its leaf; `size` of its line. The view's
  // kind must live on; its body is not kept.
  void add_hashed(std::uint64_t number, std::size_t size, const EntryView& view, const Hash& leaf);
  void clear();

  [[nodiscard]] bool empty() const { return held_.empty(); }
  [[nodiscard]] std::size_t size() const { return held_.size(); }
  [[nodiscard]] std::size_t bytes() const { return bytes_; }
  // Whether the lines are still here.
  [[nodiscard]] bool has_text() const { return has_text_; }
  [[nodiscard]] std::uint64_t line_number(std::size_t i) const { return held_[i].number; }
  // Hashed when first asked for, all together.
  [[nodiscard]] const std::vector<Hash>& leaves() const;
  [[nodiscard]] std::string_view line(std::size_t i) const;
  // Lives until the next add() or clear().
  [[nodiscard]] EntryView view(std::size_t i) const;

 private:
  struct Held {
    std::uint64_t number;
    std::size_t begin, size;
    std::size_t kind, kind_size, body, body_size;
    EntryView view;  // its text parts are not used: they point into a line that is gone
  };

  std::string text_;  // of each line what is hashed: 0x00, the line, the padding of SHA-256
  std::size_t bytes_ = 0;
  bool has_text_ = true;
  std::vector<Held> held_;
  mutable std::vector<Hash> leaves_;  // of the first so many of held_
};

// Which of the commit's lines becomes right by turning one single bit, so that the tree `before`
// and the commit have this root. A root alone says only that some line was changed; a flipped bit
// is what a bad disk or cable does, and then the line can be named. Gives up beyond some million
// tries.
[[nodiscard]] std::optional<std::size_t> find_flipped_bit(const Commit& commit, const Tree& before,
                                                          const Hash& root);

}  // namespace walkdown::record
