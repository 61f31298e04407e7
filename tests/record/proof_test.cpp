// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include "checklist/record/merkle.h"

namespace walkdown::record {
namespace {

std::vector<Hash> some_leaves(std::size_t count) {
  std::vector<Hash> leaves;
  for (std::size_t i = 0; i < count; ++i) leaves.push_back(leaf_hash(std::to_string(i)));
  return leaves;
}

// RFC 6962 2.1 by its recursive definition, to hold the growing tree against.
Hash recursive_root(std::span<const Hash> leaves) {
  if (leaves.size() == 1) return leaves.front();
  std::size_t k = 1;
  while (k * 2 < leaves.size()) k *= 2;
  return node_hash(recursive_root(leaves.first(k)), recursive_root(leaves.subspan(k)));
}

TEST(ProofTest, AllTreesUpToForty) {
  const auto all = some_leaves(40);
  for (std::size_t size = 1; size <= all.size(); ++size) {
    const std::span<const Hash> leaves = std::span(all).first(size);
    const Hash root = tree_root(leaves);
    ASSERT_EQ(root, recursive_root(leaves));
    for (std::size_t index = 0; index < size; ++index) {
      ASSERT_TRUE(holds_inclusion(leaves[index], index, size, inclusion_path(leaves, index), root));
    }
    for (std::size_t old_size = 1; old_size <= size; ++old_size) {
      ASSERT_TRUE(holds_consistency(old_size, tree_root(leaves.first(old_size)), size, root,
                                    consistency_path(leaves, old_size)))
          << old_size << " of " << size;
    }
  }
}

TEST(ProofTest, NothingIsProvedFromAnEmptyTree) {
  const auto leaves = some_leaves(3);
  EXPECT_FALSE(holds_consistency(0, tree_root({}), 3, tree_root(leaves), {}));
  EXPECT_FALSE(holds_consistency(4, tree_root(leaves), 3, tree_root(leaves), {}));
  EXPECT_FALSE(holds_inclusion(leaves[0], 0, 0, {}, leaves[0]));
}

RC_GTEST_PROP(ProofProperty, InclusionHoldsForItsPlaceAlone, ()) {
  const auto size = *rc::gen::inRange<std::size_t>(2, 200);
  const auto index = *rc::gen::inRange<std::size_t>(0, size);
  const auto other = *rc::gen::inRange<std::size_t>(0, size);
  const auto leaves = some_leaves(size);
  const Hash root = tree_root(leaves);
  auto path = inclusion_path(leaves, index);
  RC_ASSERT(holds_inclusion(leaves[index], index, size, path, root));
  RC_ASSERT(holds_inclusion(leaves[index], other, size, path, root) == (index == other));
  RC_ASSERT(holds_inclusion(leaves[other], index, size, path, root) == (index == other));
  path.push_back(root);
  RC_ASSERT(!holds_inclusion(leaves[index], index, size, path, root));
  path.resize(path.size() - 2);
  RC_ASSERT(!holds_inclusion(leaves[index], index, size, path, root));
}

RC_GTEST_PROP(ProofProperty, ConsistencyFailsForAnyOtherTree, ()) {
  const auto size = *rc::gen::inRange<std::size_t>(2, 200);
  const auto old_size = *rc::gen::inRange<std::size_t>(1, size);
  const auto changed = *rc::gen::inRange<std::size_t>(0, old_size);
  auto leaves = some_leaves(size);
  const Hash root = tree_root(leaves);
  auto path = consistency_path(leaves, old_size);
  const Hash old_root = tree_root(std::span(leaves).first(old_size));
  RC_ASSERT(holds_consistency(old_size, old_root, size, root, path));
  leaves[changed] = leaf_hash("changed");
  const Hash other = tree_root(std::span(leaves).first(old_size));
  RC_ASSERT(!holds_consistency(old_size, other, size, root, path));
  RC_ASSERT(!holds_consistency(old_size, old_root, size, tree_root(leaves), path));
  const auto bit = *rc::gen::inRange<std::size_t>(0, path.size() * 256);
  path[bit / 256][bit % 256 / 8] ^= static_cast<std::uint8_t>(1U << (bit % 8));
  RC_ASSERT(!holds_consistency(old_size, old_root, size, root, path));
}

}  // namespace
}  // namespace walkdown::record
