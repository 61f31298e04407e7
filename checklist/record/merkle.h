// SPDX-License-Identifier: Apache-2.0
// The Merkle tree of RFC 6962 section 2.1 (the same in RFC 9162) over SHA-256.
//   leaf  = SHA-256(0x00 || bytes of the entry line, without LF)
//   node  = SHA-256(0x01 || left || right)
//   empty = SHA-256("")
// A tree of n leaves splits at the largest power of two below n.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "checklist/record/sha256.h"

namespace walkdown::record {

inline constexpr char kLeafPrefix = 0;

[[nodiscard]] Hash leaf_hash(std::string_view line);
[[nodiscard]] Hash node_hash(const Hash& left, const Hash& right);

// A growing tree, kept as the roots of its full subtrees: one for each bit set in size(), the
// largest first. State and root() are O(log n); add() is O(1) on the average.
class Tree {
 public:
  void add(const Hash& leaf);
  // The same for many, in order; quicker than one by one.
  void add(std::span<const Hash> leaves);
  [[nodiscard]] std::uint64_t size() const { return size_; }
  [[nodiscard]] Hash root() const;
  [[nodiscard]] const std::vector<Hash>& subtrees() const { return subtrees_; }

 private:
  std::uint64_t size_ = 0;
  std::vector<Hash> subtrees_;
};

[[nodiscard]] Hash tree_root(std::span<const Hash> leaves);

// RFC 6962 section 2.1.1: the path from leaf `index` up, in the tree over all of `leaves`.
// Precondition: index < leaves.size().
[[nodiscard]] std::vector<Hash> inclusion_path(std::span<const Hash> leaves, std::uint64_t index);

// RFC 6962 section 2.1.2: from the tree over the first `old_size` leaves to the tree over all.
// Precondition: 0 < old_size <= leaves.size(). Empty where both are equal.
[[nodiscard]] std::vector<Hash> consistency_path(std::span<const Hash> leaves,
                                                 std::uint64_t old_size);

// RFC 9162 section 2.1.3.2. Nothing where the path has another length than this place needs.
[[nodiscard]] std::optional<Hash> root_of_inclusion(const Hash& leaf, std::uint64_t index,
                                                    std::uint64_t size, std::span<const Hash> path);
[[nodiscard]] bool holds_inclusion(const Hash& leaf, std::uint64_t index, std::uint64_t size,
                                   std::span<const Hash> path, const Hash& root);

// RFC 9162 section 2.1.4.2. From an empty tree there is nothing to prove: old_size 0 is refused.
[[nodiscard]] bool holds_consistency(std::uint64_t old_size, const Hash& old_root,
                                     std::uint64_t new_size, const Hash& new_root,
                                     std::span<const Hash> path);

// The first 16 hex digits of a root in groups of four, to be written on paper: "1a2b 3c4d 5e6f
// 7081".
[[nodiscard]] std::string mark(const Hash& root);
// Whether two marks are the same, however they were written: spaces, dashes, capitals.
[[nodiscard]] bool same_mark(std::string_view a, std::string_view b);

}  // namespace walkdown::record
