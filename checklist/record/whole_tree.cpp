// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/whole_tree.h"

#include <utility>

namespace walkdown::record {

WholeTree::WholeTree(std::vector<Hash> leaves) {
  levels_.push_back(std::move(leaves));
  while (levels_.back().size() > 1) {
    const std::vector<Hash>& below = levels_.back();
    std::vector<Hash> level;
    level.reserve((below.size() + 1) / 2);
    for (std::size_t i = 0; i + 1 < below.size(); i += 2) {
      level.push_back(node_hash(below[i], below[i + 1]));
    }
    if (below.size() % 2 == 1) level.push_back(below.back());
    levels_.push_back(std::move(level));
  }
}

Hash WholeTree::root() const {
  return levels_.back().empty() ? tree_root({}) : levels_.back().front();
}

std::vector<Hash> WholeTree::inclusion_path(std::uint64_t index) const {
  std::vector<Hash> path;
  for (const std::vector<Hash>& level : levels_) {
    const std::uint64_t sibling = index ^ 1U;
    if (sibling < level.size()) path.push_back(level[sibling]);
    index >>= 1U;
  }
  return path;
}

}  // namespace walkdown::record
