// SPDX-License-Identifier: Apache-2.0
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "checklist/record/extract_check.h"
#include "tests/record/sample.h"

namespace walkdown::record {
namespace {

using ::testing::HasSubstr;
using ::testing::IsEmpty;

std::vector<Hash> some_leaves(std::size_t count) {
  std::vector<Hash> leaves;
  for (std::size_t i = 0; i < count; ++i) leaves.push_back(leaf_hash(std::to_string(i)));
  return leaves;
}

// proof_test.cpp holds tree_root() and inclusion_path() against RFC 6962.
TEST(WholeTreeTest, GivesThePathsOfTheSlowWay) {
  for (std::size_t size = 1; size <= 130; ++size) {
    const auto leaves = some_leaves(size);
    const WholeTree tree(leaves);
    ASSERT_EQ(tree.root(), tree_root(leaves)) << size;
    for (std::size_t i = 0; i < size; ++i) {
      ASSERT_EQ(tree.inclusion_path(i), inclusion_path(leaves, i)) << i << " of " << size;
    }
  }
  EXPECT_EQ(WholeTree({}).root(), tree_root({}));
}

// An extract of the sample record: the entries asked for, and those withheld.
struct Made {
  std::string text;
  ExtractHead head;
};
Made extract_of(const std::vector<std::uint64_t>& given, const std::vector<std::uint64_t>& hidden) {
  std::vector<std::string> entries;
  std::string note;
  for (const std::string& line : test::lines_of(test::sample_record())) {
    const auto parsed = parse_line(line);
    if (const auto* seal = std::get_if<CheckpointLine>(&*parsed)) {
      note = seal->note;
    } else {
      entries.push_back(line);
    }
  }
  std::vector<Hash> leaves;
  for (const auto& line : entries) leaves.push_back(leaf_hash(line));
  Chosen chosen;
  for (const auto n : given) chosen[n] = entries[n];
  for (const auto n : hidden) chosen[n] = std::nullopt;
  ExtractHead head{note, test::station().verify_key()};
  return {extract_text(head, WholeTree(leaves), chosen), head};
}
std::uint64_t of_kind(const char* kind) {
  std::uint64_t n = 0;
  for (const std::string& line : test::lines_of(test::sample_record())) {
    const auto parsed = parse_line(line);
    const auto* view = std::get_if<EntryView>(&*parsed);
    if (view == nullptr) continue;
    if (view->kind == kind) return view->n;
    ++n;
  }
  ADD_FAILURE() << kind;
  return n;
}

TEST(ExtractTest, HoldsWithGivenAndWithheldEntries) {
  const auto made = extract_of({1, 3, 4}, {2});
  const auto report = verify_extract_bytes(made.text);
  EXPECT_TRUE(report.holds) << report.why;
  EXPECT_EQ(report.entries, 3U);
  EXPECT_EQ(report.withheld, 1U);
  EXPECT_EQ(report.mark, verify_bytes(test::sample_record()).mark);
  EXPECT_EQ(report.unknown_keys.size(), 2U) << "the station, and the lead who is enrolled in it";
}

TEST(ExtractTest, TheOpeningMayBeInIt) {
  EXPECT_TRUE(verify_extract_bytes(extract_of({0}, {}).text).holds);
}

TEST(ExtractTest, AMarkOnPaperIsComparedAndKnownKeysAreKnown) {
  const auto made = extract_of({3}, {});
  VerifyOptions options;
  options.expected_mark = verify_bytes(test::sample_record()).mark;
  options.known = {test::station().verify_key()};
  const auto report = verify_extract_bytes(made.text, options);
  EXPECT_TRUE(report.holds);
  EXPECT_THAT(report.unknown_keys, IsEmpty());
  EXPECT_THAT(report.remarks, IsEmpty());
  options.expected_mark = "0000 0000 0000 0000";
  EXPECT_THAT(verify_extract_bytes(made.text, options).why, HasSubstr("that was written down"));
}

TEST(ExtractTest, ASignOffIsCheckedWhereItsKeyIsThere) {
  const std::uint64_t signed_n = of_kind("signoff");
  EXPECT_EQ(verify_extract_bytes(extract_of({signed_n}, {}).text).unchecked_sign_offs, 1U);
  EXPECT_EQ(verify_extract_bytes(extract_of({1, signed_n}, {}).text).unchecked_sign_offs, 0U);
  VerifyOptions options;
  options.known = {test::lead_person().key};
  EXPECT_EQ(verify_extract_bytes(extract_of({signed_n}, {}).text, options).unchecked_sign_offs, 0U);
}

// Whoever holds the station's key can seal a false sign-off; with the lead's key at hand it shows.
TEST(ExtractTest, AForgedSignOffOfAStationIsFound) {
  const Head before{"walkdown/forged", 1, {}, 0, 0};
  SignOff said = test::field_clear(before, 1'000);
  auto note = make_sign_off(said, test::station());
  ASSERT_TRUE(note);
  auto parsed = parse_note(*note);
  parsed->signatures.front().name = test::lead_person().key.name;
  parsed->signatures.front().id = key_id(test::lead_person().key);
  const auto line = entry_line({1, 1'000, 1'000, "signoff", {{"signoff", text(*parsed)}}});
  ASSERT_TRUE(line);
  const std::vector<Hash> leaves{leaf_hash("anything"), leaf_hash(*line)};
  const auto seal =
      sign_note(text(Checkpoint{"walkdown/forged", 2, tree_root(leaves)}), test::station());
  const std::string extract =
      extract_text({text(seal), test::station().verify_key()}, WholeTree(leaves), {{1, *line}});
  EXPECT_TRUE(verify_extract_bytes(extract).holds) << "nobody knows the lead's key there";
  VerifyOptions options;
  options.known = {test::lead_person().key};
  EXPECT_THAT(verify_extract_bytes(extract, options).why,
              HasSubstr("the signature is not that of"));
}

TEST(ExtractTest, AnotherStationsKeyIsRefused) {
  auto made = extract_of({3}, {});
  made.head.station = test::lead_person().key;
  const std::string text = extract_head_line(made.head) + made.text.substr(made.text.find('\n'));
  EXPECT_THAT(verify_extract_bytes(text).why, HasSubstr("not signed by the station"));
}

TEST(ExtractTest, NoBitIsFree) {
  const std::string whole = extract_of({1, 3}, {2}).text;
  for (std::size_t bit = 0; bit < whole.size() * 8; ++bit) {
    std::string forged = whole;
    forged[bit / 8] = static_cast<char>(forged[bit / 8] ^ (1 << (bit % 8)));
    ASSERT_FALSE(verify_extract_bytes(forged).holds) << "bit " << bit;
  }
}

// What is left of a cut extract may well hold: pairs are independent. It never crashes, and holds
// only where whole pairs are left.
TEST(ExtractTest, ACutHoldsOnlyBetweenPairs) {
  const std::string whole = extract_of({1, 3}, {2}).text;
  int holding = 0;
  for (std::size_t size = 0; size < whole.size(); ++size) {
    holding += verify_extract_bytes(whole.substr(0, size)).holds ? 1 : 0;
  }
  EXPECT_EQ(holding, 3) << "after the head, and after each pair but the last";
}

TEST(ExtractTest, EntriesRiseAndComeOnce) {
  const auto lines = test::lines_of(extract_of({1, 3}, {}).text);
  const auto report =
      verify_extract_bytes(test::text_of({lines[0], lines[3], lines[4], lines[1], lines[2]}));
  EXPECT_THAT(report.why, HasSubstr("rise"));
  EXPECT_EQ(report.first_bad, 5U);
  EXPECT_THAT(
      verify_extract_bytes(test::text_of({lines[0], lines[1], lines[2], lines[1], lines[2]})).why,
      HasSubstr("rise"));
  EXPECT_FALSE(verify_extract_bytes(test::text_of({lines[0], lines[1], lines[4]})).holds);
}

}  // namespace
}  // namespace walkdown::record
