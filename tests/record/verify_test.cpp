// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/verify.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "checklist/record/checkpoint.h"
#include "tests/record/sample.h"

namespace walkdown::record {
namespace {

using testing::Contains;
using testing::HasSubstr;
using testing::Not;
using testing::SizeIs;

const std::string& sample() {
  static const std::string record = test::sample_record();
  return record;
}

std::size_t line_at(std::size_t byte) {
  return 1 + static_cast<std::size_t>(std::count(
                 sample().begin(), sample().begin() + static_cast<std::ptrdiff_t>(byte), '\n'));
}

TEST(VerifyTest, SampleHolds) {
  const Report report = verify_bytes(sample());
  EXPECT_TRUE(report.holds) << report.why << sample();
  EXPECT_EQ(report.entries, 9U);
  EXPECT_TRUE(report.closed);
  EXPECT_EQ(report.first_bad, std::nullopt);
}

// Every bit of the file, each alone: found, and its line named.
TEST(VerifyTest, AnyFlippedBitIsFoundInItsLine) {
  std::string forged = sample();
  for (std::size_t byte = 0; byte < forged.size(); ++byte) {
    for (unsigned bit = 0; bit < 8; ++bit) {
      const char was = forged[byte];
      forged[byte] = static_cast<char>(was ^ static_cast<char>(1U << bit));
      const Report report = verify_bytes(forged);
      ASSERT_FALSE(report.holds) << "byte " << byte << " bit " << bit;
      ASSERT_EQ(report.first_bad, line_at(byte)) << "byte " << byte << " bit " << bit << report.why;
      forged[byte] = was;
    }
  }
}

// A cut shows, but for one between two commits: that is what the mark on paper is for.
TEST(VerifyTest, TruncationAtEveryByte) {
  const std::string full_mark = verify_bytes(sample()).mark;
  std::size_t undetected = 0;
  for (std::size_t size = 0; size < sample().size(); ++size) {
    const std::string cut = sample().substr(0, size);
    const Report report = verify_bytes(cut);
    if (report.holds) {
      ++undetected;
      EXPECT_FALSE(report.closed);
      EXPECT_EQ(cut.back(), '\n');
      EXPECT_TRUE(test::lines_of(cut).back().starts_with("{\"checkpoint\"")) << size;
      VerifyOptions options;
      options.expected_mark = full_mark;
      EXPECT_FALSE(verify_bytes(cut, options).holds);
    } else {
      ASSERT_TRUE(report.first_bad.has_value());
      EXPECT_LE(*report.first_bad, line_at(size));
    }
  }
  EXPECT_EQ(undetected, 5U);  // six commits
}

TEST(VerifyTest, HashOnlyFindsChangedEntries) {
  VerifyOptions options;
  options.hash_only = true;
  EXPECT_TRUE(verify_bytes(sample(), options).holds);
  std::string forged = sample();
  forged[forged.find("2.31")] = '3';
  EXPECT_FALSE(verify_bytes(forged, options).holds);
}

TEST(VerifyTest, HashOnlyChecksTheLastSignature) {
  VerifyOptions options;
  options.hash_only = true;
  const std::string forged = test::resealed(test::commits_of(sample()), "origin/1", test::lead());
  const Report report = verify_bytes(forged, options);
  EXPECT_FALSE(report.holds);
  EXPECT_THAT(report.why, HasSubstr("not signed by a station"));
}

TEST(VerifyTest, MarkIsReadAsPeopleWriteIt) {
  VerifyOptions options;
  options.expected_mark = verify_bytes(sample()).mark;
  EXPECT_TRUE(verify_bytes(sample(), options).holds);
  for (char& c : options.expected_mark) c = static_cast<char>(c == ' ' ? '-' : std::toupper(c));
  EXPECT_TRUE(verify_bytes(sample(), options).holds);
  options.expected_mark = "0000 0000 0000 0000";
  EXPECT_THAT(verify_bytes(sample(), options).why, HasSubstr("that was written down"));
}

// A permit is signed before the show, and the record goes on: its mark is that of an earlier state,
// and shows nothing of what came after.
TEST(VerifyTest, AMarkOfAnEarlierMomentIsFoundAndSaidToBeOne) {
  const auto commits = test::commits_of(sample());
  ASSERT_GT(commits.size(), 2U);
  const auto before = std::vector(commits.begin(), commits.end() - 2);
  const Report then = verify_bytes(test::resealed(before, "origin/1", test::station()));
  ASSERT_TRUE(then.holds) << then.why;
  VerifyOptions options;
  options.expected_mark = then.mark;
  for (const bool hash_only : {false, true}) {
    options.hash_only = hash_only;
    const Report now = verify_bytes(sample(), options);
    EXPECT_TRUE(now.holds) << now.why;
    EXPECT_NE(now.mark, then.mark);
    EXPECT_THAT(now.remarks,
                Contains(HasSubstr("first " + std::to_string(then.entries) + " entries, as they")));
  }
  // Of the whole record it says nothing more than that it is the mark.
  options.expected_mark = verify_bytes(sample(), options).mark;
  EXPECT_THAT(verify_bytes(sample(), options).remarks, Not(Contains(HasSubstr("written down"))));
}

TEST(VerifyTest, ARecordThatDoesNotHoldIsNotSaidToHoldInItself) {
  const Report cut = verify_bytes(sample().substr(0, sample().size() - 5));
  EXPECT_THAT(cut.remarks, Contains(HasSubstr("taken on trust")));
  EXPECT_THAT(cut.remarks, Not(Contains(HasSubstr("holds in itself"))));
  EXPECT_TRUE(verify_bytes("cue,position\n").remarks.empty());
  EXPECT_THAT(verify_bytes("{\"extract\":1}\n").why, HasSubstr("an extract"));
}

TEST(VerifyTest, KeysThatAreNotKnownAreNamed) {
  VerifyOptions options;
  options.known = {test::station().verify_key()};
  const Report report = verify_bytes(sample(), options);
  EXPECT_TRUE(report.holds);
  EXPECT_THAT(report.unknown_keys, SizeIs(2));
  EXPECT_THAT(report.unknown_keys, Contains(text(test::lead().verify_key())));
}

TEST(VerifyTest, WithoutKnownKeysTrustIsSaidToBeOnFirstUse) {
  EXPECT_THAT(verify_bytes(sample()).remarks, Contains(HasSubstr("on trust")));
}

TEST(VerifyTest, EmptyFileDoesNotHold) { EXPECT_EQ(verify_bytes("").first_bad, 1U); }

TEST(VerifyTest, VisitorSeesEachEntryAndCanObject) {
  VerifyOptions options;
  std::uint64_t seen = 0;
  options.visitor = [&](const EntryView& entry) -> std::optional<std::string> {
    EXPECT_EQ(entry.n, seen++);
    if (entry.kind == "rejected") return "the line is a reading after all";
    return std::nullopt;
  };
  const Report report = verify_bytes(sample(), options);
  EXPECT_EQ(report.first_bad, 8U);
  EXPECT_EQ(report.why, "the line is a reading after all");
}

// --- forgeries by somebody who has the station's key ---------------------------------------------

TEST(ForgeryTest, UnchangedCommitsSealedAgainAreTheSameRecord) {
  EXPECT_EQ(test::resealed(test::commits_of(sample()), "origin/1", test::station()), sample());
}

Report forged(std::size_t commit, std::size_t entry, const std::string& from,
              const std::string& to) {
  auto commits = test::commits_of(sample());
  std::string& line = commits[commit][entry];
  const std::size_t at = line.find(from);
  EXPECT_NE(at, std::string::npos) << line;
  line.replace(at, from.size(), to);
  return verify_bytes(test::resealed(commits, "origin/1", test::station()));
}

TEST(ForgeryTest, DroppedReadingBreaksTheNumbers) {
  auto commits = test::commits_of(sample());
  commits[2].erase(commits[2].begin());
  const Report report = verify_bytes(test::resealed(commits, "origin/1", test::station()));
  EXPECT_THAT(report.why, HasSubstr("entry 3 should stand here"));
}

TEST(ForgeryTest, ChangedReadingBreaksTheSignOffBehindIt) {
  const Report report = forged(2, 0, "2310001", "2310002");
  EXPECT_EQ(report.first_bad, 10U);
  EXPECT_THAT(report.why, HasSubstr("names a state that this record was not in"));
}

TEST(ForgeryTest, ChangedSignOffIsNotSigned) {
  EXPECT_THAT(forged(3, 0, "nobody is left", "somebody is left").why,
              HasSubstr("signature is not that of"));
  EXPECT_THAT(forged(3, 0, "My role is lead", "My role is crew").why, HasSubstr("is not enrolled"));
}

TEST(ForgeryTest, ChangedNameBreaksTheSignOff) {
  EXPECT_THAT(forged(1, 0, "Mara Linde", "Mara Lende").why, HasSubstr("is not enrolled"));
}

TEST(ForgeryTest, SignOffOfALaterMomentIsTold) {
  auto commits = test::commits_of(sample());
  // The same note once more: it says nothing new.
  std::string again = commits[3][0];
  again.replace(again.find("\"n\":6"), 5, "\"n\":7");
  commits[4] = {again};
  commits.pop_back();
  const Report report = verify_bytes(test::resealed(commits, "origin/1", test::station()));
  EXPECT_THAT(report.why, HasSubstr("used before"));
}

TEST(ForgeryTest, TimeBackwardsIsTold) {
  EXPECT_THAT(forged(2, 1, "19:02:12.123", "19:02:11.122").why, HasSubstr("the time went back"));
}

TEST(ForgeryTest, BootClockBackwardsIsTold) {
  EXPECT_THAT(forged(2, 1, "\"up_ms\":82234", "\"up_ms\":81000").why,
              HasSubstr("boot clock went back"));
}

TEST(ForgeryTest, EntryBehindTheCloseIsTold) {
  auto commits = test::commits_of(sample());
  std::string late = commits.back()[0];
  late.replace(late.find("\"n\":8"), 5, "\"n\":9");
  late.replace(late.find("\"close\""), 7, "\"reads\"");
  commits.push_back({late});
  const Report report = verify_bytes(test::resealed(commits, "origin/1", test::station()));
  EXPECT_THAT(report.why, HasSubstr("was closed"));
  EXPECT_EQ(report.first_bad, 16U);
}

TEST(ForgeryTest, CheckpointOfAnotherRecordIsTold) {
  const Report report =
      verify_bytes(test::resealed(test::commits_of(sample()), "origin/2", test::station()));
  EXPECT_THAT(report.why, HasSubstr("of another record"));
}

TEST(ForgeryTest, SecondCheckpointWithNothingToSealIsTold) {
  auto lines = test::lines_of(sample());
  lines.insert(lines.begin() + 1, lines[1]);
  EXPECT_EQ(verify_bytes(test::text_of(lines)).first_bad, 3U);
}

TEST(ForgeryTest, SwappedEntriesAreTold) {
  auto lines = test::lines_of(sample());
  std::swap(lines[5], lines[6]);
  EXPECT_EQ(verify_bytes(test::text_of(lines)).first_bad, 6U);
}

TEST(ForgeryTest, ChangeOfMoreThanABitNamesTheCommit) {
  auto lines = test::lines_of(sample());
  lines[5].replace(lines[5].find("2.31"), 4, "9.99");
  const Report report = verify_bytes(test::text_of(lines));
  EXPECT_EQ(report.first_bad, 6U);
  EXPECT_THAT(report.why, HasSubstr("one of the lines 6 to 8"));
}

TEST(KnownKeysTest, RowsAndComments) {
  const std::string vkey = text(test::lead().verify_key());
  const auto keys = parse_known_keys("# crew\n\n" + vkey + "\r\n");
  ASSERT_TRUE(keys.ok());
  EXPECT_EQ(keys->front(), test::lead().verify_key());
  const auto bad = parse_known_keys(vkey + "\nmara+00000000+AAAA\n");
  ASSERT_FALSE(bad.ok());
  EXPECT_THAT(bad.error().sentence(), HasSubstr("row 2"));
}

}  // namespace
}  // namespace walkdown::record
