// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/merkle.h"

#include <algorithm>
#include <array>
#include <cstring>

#include "checklist/record/sha256_many.h"

namespace walkdown::record {

namespace {

constexpr std::string_view kLeaf{&kLeafPrefix, 1};
constexpr std::string_view kNode{"\1", 1};

Sha256& digest() {
  thread_local Sha256 each_thread_its_own;
  return each_thread_its_own;
}

// A node to be hashed, with its padding.
struct NodeMessage {
  std::array<char, padded_size(1 + 2 * sizeof(Hash))> bytes;
};

// The parents of each two neighbours. Precondition: an even number.
std::vector<Hash> nodes_above(const std::vector<Hash>& level) {
  thread_local std::vector<NodeMessage> texts;
  std::vector<Padded> messages(level.size() / 2);
  texts.resize(std::max(texts.size(), messages.size()));
  for (std::size_t i = 0; i < messages.size(); ++i) {
    char* const bytes = texts[i].bytes.data();
    bytes[0] = kNode[0];
    std::memcpy(bytes + 1, level[2 * i].data(), 2 * sizeof(Hash));
    pad(bytes, 1 + 2 * sizeof(Hash));
    messages[i] = {bytes, 1 + 2 * sizeof(Hash)};
  }
  std::vector<Hash> above(messages.size());
  sha256_many(messages, above);
  return above;
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

// Level by level: what the tree has left over at a level joins the new nodes there on their left;
// an odd node out is left over in its turn.
void Tree::add(std::span<const Hash> leaves) {
  std::vector<Hash> level(leaves.begin(), leaves.end()), left_over;
  for (std::uint64_t bits = size_; !level.empty(); bits >>= 1U) {
    if ((bits & 1U) != 0) {
      level.insert(level.begin(), subtrees_.back());
      subtrees_.pop_back();
    }
    if (level.size() % 2 != 0) {
      left_over.push_back(level.back());
      level.pop_back();
    } else {
      left_over.emplace_back();  // nothing of this size; taken out below
    }
    level = nodes_above(level);
  }
  size_ += leaves.size();
  for (std::size_t i = left_over.size(); i > 0; --i) {
    if ((size_ >> (i - 1) & 1U) != 0) subtrees_.push_back(left_over[i - 1]);
  }
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
  tree.add(leaves);
  return tree.root();
}

std::string mark(const Hash& root) {
  const std::string digits = hex(root.data(), 8);
  return digits.substr(0, 4) + ' ' + digits.substr(4, 4) + ' ' + digits.substr(8, 4) + ' ' +
         digits.substr(12, 4);
}

bool same_mark(std::string_view a, std::string_view b) {
  const auto digits_of = [](std::string_view mark) {
    std::string digits;
    for (const char c : mark) {
      if (c == ' ' || c == '-') continue;
      digits += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
    return digits;
  };
  return digits_of(a) == digits_of(b);
}

}  // namespace walkdown::record
