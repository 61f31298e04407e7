// SPDX-License-Identifier: Apache-2.0
#include <bit>

#include "checklist/record/merkle.h"

namespace walkdown::record {

namespace {

// The largest power of two below n. Precondition: n > 1.
std::uint64_t split(std::uint64_t n) { return std::bit_floor(n - 1); }

std::uint64_t lowest_zero_bits(std::uint64_t n) {
  return static_cast<std::uint64_t>(std::countr_zero(n));
}

}  // namespace

std::vector<Hash> inclusion_path(std::span<const Hash> leaves, std::uint64_t index) {
  std::vector<Hash> path;
  while (leaves.size() > 1) {
    const std::uint64_t k = split(leaves.size());
    const bool left = index < k;
    path.push_back(tree_root(left ? leaves.subspan(k) : leaves.first(k)));
    leaves = left ? leaves.first(k) : leaves.subspan(k);
    if (!left) index -= k;
  }
  return {path.rbegin(), path.rend()};
}

std::vector<Hash> consistency_path(std::span<const Hash> leaves, std::uint64_t old_size) {
  std::vector<Hash> path;
  bool whole = true;  // the old tree is a whole subtree, whose root the other side knows
  while (old_size != leaves.size()) {
    const std::uint64_t k = split(leaves.size());
    const bool left = old_size <= k;
    path.push_back(tree_root(left ? leaves.subspan(k) : leaves.first(k)));
    leaves = left ? leaves.first(k) : leaves.subspan(k);
    if (!left) {
      old_size -= k;
      whole = false;
    }
  }
  if (!whole) path.push_back(tree_root(leaves));
  return {path.rbegin(), path.rend()};
}

std::optional<Hash> root_of_inclusion(const Hash& leaf, std::uint64_t index, std::uint64_t size,
                                      std::span<const Hash> path) {
  if (index >= size) return std::nullopt;
  Hash hash = leaf;
  std::uint64_t last = size - 1;
  for (const Hash& sibling : path) {
    if (last == 0) return std::nullopt;
    if ((index & 1U) != 0 || index == last) {
      hash = node_hash(sibling, hash);
      // At the right edge a node without a sibling moves up unchanged.
      while ((index & 1U) == 0 && index != 0) {
        index >>= 1U;
        last >>= 1U;
      }
    } else {
      hash = node_hash(hash, sibling);
    }
    index >>= 1U;
    last >>= 1U;
  }
  if (last != 0) return std::nullopt;
  return hash;
}

bool holds_inclusion(const Hash& leaf, std::uint64_t index, std::uint64_t size,
                     std::span<const Hash> path, const Hash& root) {
  return root_of_inclusion(leaf, index, size, path) == root;
}

bool holds_consistency(std::uint64_t old_size, const Hash& old_root, std::uint64_t new_size,
                       const Hash& new_root, std::span<const Hash> path) {
  if (old_size == 0 || old_size > new_size) return false;
  if (old_size == new_size) return path.empty() && old_root == new_root;
  // Where the old tree is a whole subtree its own root begins the path, and is not sent.
  const bool whole = std::has_single_bit(old_size);
  if (!whole && path.empty()) return false;
  Hash old_hash = whole ? old_root : path.front();
  Hash new_hash = old_hash;
  std::uint64_t old_last = old_size - 1;
  std::uint64_t new_last = new_size - 1;
  const std::uint64_t skip = lowest_zero_bits(old_size);
  old_last >>= skip;
  new_last >>= skip;
  for (const Hash& sibling : path.subspan(whole ? 0 : 1)) {
    if (new_last == 0) return false;
    if ((old_last & 1U) != 0 || old_last == new_last) {
      old_hash = node_hash(sibling, old_hash);
      new_hash = node_hash(sibling, new_hash);
      while ((old_last & 1U) == 0 && old_last != 0) {
        old_last >>= 1U;
        new_last >>= 1U;
      }
    } else {
      new_hash = node_hash(new_hash, sibling);
    }
    old_last >>= 1U;
    new_last >>= 1U;
  }
  return new_last == 0 && old_hash == old_root && new_hash == new_root;
}

}  // namespace walkdown::record
