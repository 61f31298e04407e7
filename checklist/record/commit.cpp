// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/commit.h"

#include <bit>

#include "checklist/record/sha256_many.h"

namespace walkdown::record {

namespace {

constexpr std::size_t kMostTries = 8'000'000;

// What stands beside the way from one leaf up to the root.
struct Sibling {
  Hash hash;
  bool left;
};

class Siblings {
 public:
  Siblings(const Tree& before, const std::vector<Hash>& leaves)
      : before_(before), leaves_(leaves) {}

  // Root of the entries [begin, end). A range wholly before the commit is one of the tree's full
  // subtrees, since every larger aligned range reaches into the commit.
  [[nodiscard]] Hash root(std::uint64_t begin, std::uint64_t end) const {
    if (end <= before_.size()) return subtree(begin);
    if (end - begin == 1) return leaves_[begin - before_.size()];
    const std::uint64_t middle = begin + std::bit_floor(end - begin - 1);
    return node_hash(root(begin, middle), root(middle, end));
  }

  // From the leaf upwards.
  [[nodiscard]] std::vector<Sibling> beside(std::uint64_t entry) const {
    std::vector<Sibling> path;
    std::uint64_t begin = 0, end = before_.size() + leaves_.size();
    while (end - begin > 1) {
      const std::uint64_t middle = begin + std::bit_floor(end - begin - 1);
      const bool left = entry >= middle;
      path.push_back({left ? root(begin, middle) : root(middle, end), left});
      (left ? begin : end) = middle;
    }
    return {path.rbegin(), path.rend()};
  }

 private:
  [[nodiscard]] Hash subtree(std::uint64_t begin) const {
    std::uint64_t at = 0;
    std::uint64_t bits = before_.size();
    for (const Hash& hash : before_.subtrees()) {
      if (at == begin) return hash;
      at += std::bit_floor(bits);
      bits -= std::bit_floor(bits);
    }
    return {};
  }

  const Tree& before_;
  const std::vector<Hash>& leaves_;
};

Hash climb(Hash hash, const std::vector<Sibling>& path) {
  for (const Sibling& sibling : path) {
    hash = sibling.left ? node_hash(sibling.hash, hash) : node_hash(hash, sibling.hash);
  }
  return hash;
}

}  // namespace

void Commit::add(std::uint64_t number, std::string_view line, const EntryView& view,
                 const Hash* leaf) {
  if (leaf != nullptr) leaves_.push_back(*leaf);
  const auto offset = [line](std::string_view part) {
    return static_cast<std::size_t>(part.data() - line.data());
  };
  const std::size_t begin = text_.size(), size = line.size() + 1;
  held_.push_back({number, begin + 1, line.size(), offset(view.kind), view.kind.size(),
                   offset(view.body), view.body.size(), view});
  text_ += kLeafPrefix;
  text_ += line;
  text_.resize(begin + padded_size(size));
  pad(text_.data() + begin, size);
  bytes_ += line.size();
}

void Commit::add_hashed(std::uint64_t number, std::size_t size, const EntryView& view,
                        const Hash& leaf) {
  held_.push_back({number, 0, size, 0, 0, 0, 0, view});
  leaves_.push_back(leaf);
  has_text_ = false;
  bytes_ += size;
}

void Commit::clear() {
  text_.clear();
  bytes_ = 0;
  has_text_ = true;
  held_.clear();
  leaves_.clear();
}

const std::vector<Hash>& Commit::leaves() const {
  if (leaves_.size() == held_.size()) return leaves_;
  std::vector<Padded> messages;
  messages.reserve(held_.size());
  for (const Held& held : held_) messages.push_back({text_.data() + held.begin - 1, held.size + 1});
  leaves_.resize(held_.size());
  sha256_many(messages, leaves_);
  return leaves_;
}

std::string_view Commit::line(std::size_t i) const {
  return std::string_view(text_).substr(held_[i].begin, held_[i].size);
}

EntryView Commit::view(std::size_t i) const {
  const Held& held = held_[i];
  EntryView view = held.view;
  if (held.kind_size == 0) return view;
  view.kind = line(i).substr(held.kind, held.kind_size);
  view.body = line(i).substr(held.body, held.body_size);
  return view;
}

std::optional<std::size_t> find_flipped_bit(const Commit& commit, const Tree& before,
                                            const Hash& root) {
  if (commit.size() == 1) return 0;
  if (commit.bytes() * 8 > kMostTries || !commit.has_text()) return std::nullopt;
  const Siblings siblings(before, commit.leaves());
  for (std::size_t i = 0; i < commit.size(); ++i) {
    const std::vector<Sibling> path = siblings.beside(before.size() + i);
    std::string line(commit.line(i));
    for (std::size_t bit = 0; bit < line.size() * 8; ++bit) {
      const auto mask = static_cast<char>(1U << (bit % 8));
      line[bit / 8] = static_cast<char>(line[bit / 8] ^ mask);
      if (climb(leaf_hash(line), path) == root) return i;
      line[bit / 8] = static_cast<char>(line[bit / 8] ^ mask);
    }
  }
  return std::nullopt;
}

}  // namespace walkdown::record
