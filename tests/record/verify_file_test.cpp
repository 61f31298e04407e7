// SPDX-License-Identifier: Apache-2.0
// A file is read by several threads in blocks: what it says must be what the bytes say line by
// line.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <random>

#include "checklist/record/verify.h"
#include "tests/record/sample.h"
#include "tests/record/scratch.h"

namespace walkdown::record::test {
namespace {

constexpr int kReadings = 6'000;  // some fifteen blocks

// An opening longer than a block, and commits of many sizes.
const std::string& long_record() {
  static const std::string record = [] {
    std::vector<std::vector<std::string>> commits(1);
    const Draft opening{"open",
                        {{"format", 1},
                         {"origin", "long/1"},
                         {"show", {{"plan", std::string(300'000, 'x')}}},
                         {"station", text(station().verify_key())}}};
    commits[0].push_back(*entry_line({0, 1'783'191'731'123, 0, "open", opening.body}));
    std::mt19937 random(7);
    for (int i = 1; i <= kReadings; ++i) {
      if (i == 1 || random() % 40 == 0) commits.emplace_back();
      const bool note = random() % 100 == 0;
      const Draft draft = note ? Draft{"note", {{"text", std::string(random() % 900, 'n')}}}
                               : some_reading(i % 72 + 1);
      commits.back().push_back(*entry_line(
          {static_cast<std::uint64_t>(i), 1'783'191'731'123 + i, i, draft.kind, draft.body}));
    }
    return resealed(commits, "long/1", station());
  }();
  return record;
}

void expect_same(const std::string& bytes, const std::string& path, bool hash_only) {
  VerifyOptions options;
  options.hash_only = hash_only;
  write_file(path, bytes);
  const Report whole = verify_bytes(bytes, options);
  const auto file = verify_file(path, options);
  ASSERT_TRUE(file.ok());
  EXPECT_EQ(file->holds, whole.holds);
  EXPECT_EQ(file->first_bad, whole.first_bad);
  EXPECT_EQ(file->why, whole.why);
  EXPECT_EQ(file->entries, whole.entries);
  EXPECT_EQ(file->mark, whole.mark);
  EXPECT_EQ(file->sealed.bytes, whole.sealed.bytes);
  EXPECT_EQ(file->sealed.lines, whole.sealed.lines);
}

class VerifyFile : public testing::TestWithParam<bool> {
 protected:
  Scratch scratch_;
  std::string path_ = scratch_.path("long");
};

TEST_P(VerifyFile, Holds) {
  ASSERT_TRUE(verify_bytes(long_record()).holds);
  expect_same(long_record(), path_, GetParam());
}

TEST_P(VerifyFile, NamesTheSameLineForAFlippedBit) {
  std::mt19937 random(11);
  for (int i = 0; i < 40; ++i) {
    std::string forged = long_record();
    forged[random() % forged.size()] ^= static_cast<char>(1U << random() % 8);
    SCOPED_TRACE(i);
    expect_same(forged, path_, GetParam());
    EXPECT_FALSE(verify_bytes(forged).holds);
  }
}

TEST_P(VerifyFile, SaysTheSameOfACutEnd) {
  std::mt19937 random(13);
  for (int i = 0; i < 40; ++i) {
    SCOPED_TRACE(i);
    expect_same(long_record().substr(0, random() % long_record().size()), path_, GetParam());
  }
  expect_same("", path_, GetParam());
  expect_same("\n", path_, GetParam());
}

TEST_P(VerifyFile, StopsAtALineThatNeverEnds) {
  write_file(path_, long_record() + std::string(kLongestLine + 70'000, 'a'));
  VerifyOptions options;
  options.hash_only = GetParam();
  const auto file = verify_file(path_, options);
  ASSERT_TRUE(file.ok());
  EXPECT_EQ(file->why, "the line is longer than a record allows");
  EXPECT_EQ(file->first_bad, lines_of(long_record()).size() + 1);
}

INSTANTIATE_TEST_SUITE_P(HashOnly, VerifyFile, testing::Bool());

}  // namespace
}  // namespace walkdown::record::test
