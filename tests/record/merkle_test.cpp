// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/merkle.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace walkdown::record {
namespace {

std::string bytes_of(std::string_view hex) {
  std::string bytes;
  for (std::size_t i = 0; i < hex.size(); i += 2) {
    bytes += static_cast<char>(std::stoi(std::string(hex.substr(i, 2)), nullptr, 16));
  }
  return bytes;
}

// The eight reference leaves of RFC 6962 implementations (certificate-transparency test data).
std::vector<Hash> reference_leaves() {
  std::vector<Hash> leaves;
  for (const char* hex : {"", "00", "10", "2021", "3031", "40414243", "5051525354555657",
                          "606162636465666768696a6b6c6d6e6f"}) {
    leaves.push_back(leaf_hash(bytes_of(hex)));
  }
  return leaves;
}

// Roots of the first 1..8 reference leaves, from the same data; computed again with python hashlib.
constexpr std::array<const char*, 8> kRoots{
    "6e340b9cffb37a989ca544e6bb780a2c78901d3fb33738768511a30617afa01d",
    "fac54203e7cc696cf0dfcb42c92a1d9dbaf70ad9e621f4bd8d98662f00e3c125",
    "aeb6bcfe274b70a14fb067a5e5578264db0fa9b51af5e0ba159158f329e06e77",
    "d37ee418976dd95753c1c73862b9398fa2a2cf9b4ff0fdfe8b30cd95209614b7",
    "4e3bbb1f7b478dcfe71fb631631519a3bca12c9aefca1612bfce4c13a86264d4",
    "76e67dadbcdf1e10e1b74ddc608abd2f98dfb16fbce75277b5232a127f2087ef",
    "ddb89be403809e325750d3d263cd78929c2942b7942a34b77e122c9594a74c8c",
    "5dc9da79a70659a9ad559cb701ded9a2ab9d823aad2f4960cfe370eff4604328"};

// FIPS 180-4 examples; the empty message and a million times a: computed independently.
TEST(Sha256Test, PublishedDigests) {
  EXPECT_EQ(hex(sha256("abc")), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  EXPECT_EQ(hex(sha256("")), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
  EXPECT_EQ(hex(sha256("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq")),
            "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
  EXPECT_EQ(hex(sha256(std::string(1'000'000, 'a'))),
            "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
}

TEST(TreeTest, ReferenceRoots) {
  const auto leaves = reference_leaves();
  Tree tree;
  // RFC 6962 2.1: the empty tree is the hash of nothing.
  EXPECT_EQ(hex(tree.root()), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
  for (std::size_t i = 0; i < leaves.size(); ++i) {
    tree.add(leaves[i]);
    EXPECT_EQ(hex(tree.root()), kRoots[i]) << i + 1;
  }
}

// Two paths in the tree of seven leaves: computed independently (python hashlib).
TEST(TreeTest, ReferencePaths) {
  const auto leaves = reference_leaves();
  const std::span<const Hash> seven = std::span(leaves).first(7);
  const auto six = inclusion_path(seven, 6);
  ASSERT_EQ(six.size(), 2U);
  EXPECT_EQ(hex(six[0]), "0ebc5d3437fbe2db158b9f126a1d118e308181031d0a949f8dededebc558ef6a");
  EXPECT_EQ(hex(six[1]), kRoots[3]);
  const auto three = inclusion_path(seven, 3);
  ASSERT_EQ(three.size(), 3U);
  EXPECT_EQ(hex(three[0]), "0298d122906dcfc10892cb53a73992fc5b9f493ea4c9badb27b791b4127a7fe7");
  EXPECT_EQ(hex(three[1]), kRoots[1]);
  EXPECT_EQ(hex(three[2]), "837dbb152e9b079010717e84e865da4ebc0fa198a806d59d31bf15accef22d0e");
}

TEST(TreeTest, Mark) { EXPECT_EQ(mark(leaf_hash("")), "6e34 0b9c ffb3 7a98"); }

RC_GTEST_PROP(TreeProperty, ManyAtOnceAreAsOneByOne, ()) {
  const auto sizes =
      *rc::gen::container<std::vector<std::size_t>>(rc::gen::inRange<std::size_t>(0, 70));
  Tree single, many;
  std::uint64_t n = 0;
  for (const std::size_t size : sizes) {
    std::vector<Hash> leaves;
    for (std::size_t i = 0; i < size; ++i) leaves.push_back(leaf_hash(std::to_string(n++)));
    for (const Hash& leaf : leaves) single.add(leaf);
    many.add(leaves);
    RC_ASSERT(many.size() == single.size());
    RC_ASSERT(many.subtrees() == single.subtrees());
  }
}

}  // namespace
}  // namespace walkdown::record
