// SPDX-License-Identifier: Apache-2.0
// The tree of merkle.h with every node kept, for whoever needs many proofs of one record:
// inclusion_path() of merkle.h hashes the whole tree for each, this looks them up.
// Memory: 64 bytes an entry.
#pragma once

#include <cstdint>
#include <vector>

#include "checklist/record/merkle.h"

namespace walkdown::record {

class WholeTree {
 public:
  explicit WholeTree(std::vector<Hash> leaves);

  [[nodiscard]] std::uint64_t size() const { return levels_.front().size(); }
  [[nodiscard]] Hash root() const;
  [[nodiscard]] const Hash& leaf(std::uint64_t index) const { return levels_.front()[index]; }
  // As record::inclusion_path(). Precondition: index < size().
  [[nodiscard]] std::vector<Hash> inclusion_path(std::uint64_t index) const;

 private:
  // Each level half as wide as the one below; a last node without a sibling moves up unchanged,
  // which gives the tree that RFC 6962 splits at powers of two.
  std::vector<std::vector<Hash>> levels_;
};

}  // namespace walkdown::record
