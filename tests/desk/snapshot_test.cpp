// SPDX-License-Identifier: Apache-2.0
// A desk that begins from a snapshot stands where one that folds everything stands.
#include "checklist/desk/snapshot.h"

#include <gtest/gtest.h>

#include <filesystem>

#include "checklist/audit/drafts.h"
#include "checklist/desk/copy.h"
#include "tests/desk/evening.h"

namespace walkdown::desk::test {
namespace {

class Long : public testing::Test {
 protected:
  // Long enough that a snapshot is worth its time.
  Long() {
    evening.ready();
    for (int i = 0; i < 2'500; ++i) {
      const char* line = fitting_line(i % 6);
      const auto parsed = evening.desk->parser().parse(line);
      const auto& reading = std::get<tester::Reading>(parsed);
      EXPECT_TRUE(
          evening.desk->writer().append({"reading", audit::reading_body(reading, line)}).ok());
    }
    fine(hold(*evening.desk, "Edda", "smoke"));
    evening.desk.reset();
  }
  std::string beside() { return snapshot_path(evening.path); }
  void expect_as_folded_anew() {
    const auto copy = Copy::open(evening.path);
    ASSERT_TRUE(copy.ok());
    EXPECT_EQ(to_json(copy->state(evening.desk->now())).dump(), evening.state_json());
    EXPECT_EQ(copy->folded().counts().readings, evening.desk->counts().readings);
    EXPECT_EQ(copy->folded().counts().last_reading, evening.desk->counts().last_reading);
    EXPECT_EQ(copy->folded().field().samples().size(), evening.desk->samples().size());
    EXPECT_EQ(copy->folded().told(500).size(), evening.desk->told(500).size());
    EXPECT_EQ(copy->folded().told(500).front().say, evening.desk->told(500).front().say);
  }

  Evening evening;
};

TEST_F(Long, TheNextDeskBeginsFromIt) {
  ASSERT_TRUE(std::filesystem::exists(beside()));
  evening.reopen();
  EXPECT_GT(evening.desk->from_snapshot(), 2'500U);
  expect_as_folded_anew();
  fine(lift(*evening.desk, evening.mara, "gone"));
  evening.read(fitting_line(2));
  expect_as_folded_anew();
}

TEST_F(Long, EntriesBehindItAreFolded) {
  const std::string kept = record::test::read_file(beside());
  evening.reopen();
  fine(lift(*evening.desk, evening.mara, "gone"));
  fine(go_in(*evening.desk, "Edda", {"South"}));
  evening.desk.reset();
  record::test::write_file(beside(), kept);
  evening.reopen();
  EXPECT_GT(evening.desk->from_snapshot(), 2'500U);
  expect_as_folded_anew();
}

TEST_F(Long, OneThatDoesNotFitIsIgnored) {
  const std::string kept = record::test::read_file(beside());
  for (const std::size_t at :
       {std::size_t{3}, std::size_t{20}, std::size_t{40}, kept.size() / 2, kept.size() - 1}) {
    std::string bytes = kept;
    bytes[at] = static_cast<char>(bytes[at] ^ 1);
    record::test::write_file(beside(), bytes);
    evening.reopen();
    EXPECT_EQ(evening.desk->from_snapshot(), 0U) << at;
    expect_as_folded_anew();
    evening.desk.reset();
  }
  record::test::write_file(beside(), kept.substr(0, kept.size() / 2));
  evening.reopen();
  EXPECT_EQ(evening.desk->from_snapshot(), 0U);
}

TEST_F(Long, OneOfAnotherRecordIsIgnored) {
  const std::string kept = record::test::read_file(beside());
  Evening other;
  other.ready();
  other.desk.reset();
  record::test::write_file(snapshot_path(other.path), kept);
  other.reopen();
  EXPECT_EQ(other.desk->from_snapshot(), 0U);
  EXPECT_FALSE(other.desk->state().hold.has_value());
}

TEST_F(Long, OneByAnotherStationIsIgnored) {
  const auto kept = load_snapshot(beside(), record::test::station());
  ASSERT_TRUE(kept.has_value());
  EXPECT_FALSE(load_snapshot(beside(), record::test::lead()).has_value());
  ASSERT_TRUE(save_snapshot(beside(), *kept, record::test::lead()).ok());
  evening.reopen();
  EXPECT_EQ(evening.desk->from_snapshot(), 0U);
}

}  // namespace
}  // namespace walkdown::desk::test
