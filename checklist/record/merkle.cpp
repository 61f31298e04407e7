// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/merkle.h"

namespace walkdown::record {

namespace {

constexpr std::string_view kLeaf{"\0", 1};
constexpr std::string_view kNode{"\1", 1};

Sha256& digest() {
  thread_local Sha256 each_thread_its_own;
  return each_thread_its_own;
}

}  // namespace

Hash leaf_hash(std::string_view line) { return digest()(kLeaf, line); }

Hash node_hash(const Hash& left, const Hash& right) {
  return digest()(kNode, view(left), view(right));
}

void Tree::add(const Hash& leaf) {
  Hash carry = leaf;
  // Like adding one to a binary number: each trailing one-bit is a full subtree that merges.
  for (std::uint64_t bits = size_; (bits & 1U) != 0; bits >>= 1U) {
    carry = node_hash(subtrees_.back(), carry);
    subtrees_.pop_back();
  }
  subtrees_.push_back(carry);
  ++size_;
}

Hash Tree::root() const {
  if (subtrees_.empty()) return sha256({});
  Hash root = subtrees_.back();
  for (auto left = subtrees_.rbegin() + 1; left != subtrees_.rend(); ++left) {
    root = node_hash(*left, root);
  }
  return root;
}

Hash tree_root(std::span<const Hash> leaves) {
  Tree tree;
  for (const Hash& leaf : leaves) tree.add(leaf);
  return tree.root();
}

std::string mark(const Hash& root) {
  const std::string digits = hex(root.data(), 8);
  return digits.substr(0, 4) + ' ' + digits.substr(4, 4) + ' ' + digits.substr(8, 4) + ' ' +
         digits.substr(12, 4);
}

}  // namespace walkdown::record
