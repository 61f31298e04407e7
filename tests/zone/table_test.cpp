// SPDX-License-Identifier: Apache-2.0
#include "checklist/zone/table.h"

#include <gmock/gmock.h>

#include <string>

#include "templates/embedded.h"

namespace walkdown::zone {
namespace {

using testing::HasSubstr;
using testing::SizeIs;

Table shipped() {
  auto read = read_table(templates::text("distances/radius-70ft-per-inch.toml").value(), "t.toml");
  EXPECT_THAT(read.mistakes, SizeIs(0));
  return read.table;
}

struct Published {
  double inch;
  double metres;
};

// NFPA 1123, 70 ft an inch, in metres to a tenth: 3 in 64.0, 5 in 106.7, 8 in 170.7 (a published
// calculator's page), the others computed independently.
TEST(Table, ThePublishedRadii) {
  const Table table = shipped();
  const Published rows[] = {{1, 21.3},  {2, 42.7},  {3, 64.0},  {4, 85.3},   {5, 106.7},
                            {6, 128.0}, {7, 149.4}, {8, 170.7}, {10, 213.4}, {12, 256.0}};
  for (const Published& row : rows) {
    const auto least = table.least_m(row.inch * 25.4, Role::audience);
    ASSERT_TRUE(least) << row.inch;
    EXPECT_NEAR(*least, row.metres, 0.051) << row.inch;
    EXPECT_EQ(table.least_m(row.inch * 25.4, Role::structure), least);
  }
  EXPECT_THAT(table.name, HasSubstr("70 ft"));
  EXPECT_THAT(table.source, HasSubstr("NFPA 1123"));
}

TEST(Table, BetweenTwoRowsTheLargerApplies) {
  EXPECT_DOUBLE_EQ(*shipped().least_m(75, Role::audience), 64.008);
  EXPECT_DOUBLE_EQ(*shipped().least_m(77, Role::audience), 85.344);
}

TEST(Table, OverTheLastRowItDoesNotSay) { EXPECT_FALSE(shipped().least_m(305, Role::audience)); }

TEST(Table, LargestCalibreOfADistance) {
  const Table table = shipped();
  EXPECT_DOUBLE_EQ(*table.largest_mm(64.008, Role::audience), 76.2);
  EXPECT_DOUBLE_EQ(*table.largest_mm(64.007, Role::audience), 50.8);
  EXPECT_FALSE(table.largest_mm(21, Role::audience));
}

const std::string kHead = "name = \"a\"\nsource = \"b\"\nedition = \"c\"\n";

TEST(Table, MistakesNameTheirLine) {
  const auto read = read_table(kHead +
                                   "[[row]]\nup_to_mm = 50\naudience_m = -3\n"
                                   "[[row]]\nup_to_mm = 40\naudience_m = 10\nstructure = 3\n",
                               "t.toml");
  ASSERT_GE(read.mistakes.size(), 2U);
  EXPECT_THAT(read.mistakes[0].sentence(), HasSubstr("t.toml, line 6"));
  EXPECT_THAT(read.mistakes.back().sentence(), HasSubstr("line 10"));
}

TEST(Table, RowsMustRise) {
  const auto read = read_table(kHead +
                                   "[[row]]\nup_to_mm = 50\naudience_m = 40\n"
                                   "[[row]]\nup_to_mm = 60\naudience_m = 30\n",
                               "t.toml");
  ASSERT_THAT(read.mistakes, SizeIs(1));
  EXPECT_THAT(read.mistakes[0].sentence(), HasSubstr("do not rise"));
}

TEST(Table, NameSourceAndEditionAreAsked) {
  EXPECT_THAT(read_table("", "t.toml").mistakes, SizeIs(4));
  EXPECT_THAT(read_table("= 3", "t.toml").mistakes, SizeIs(1));
  EXPECT_THAT(read_table(kHead + "row = [1]", "t.toml").mistakes, SizeIs(2));
}

TEST(Table, NotANumberIsNoDistance) {
  EXPECT_FALSE(
      read_table(kHead + "[[row]]\nup_to_mm = nan\naudience_m = inf\n", "t").mistakes.empty());
}

}  // namespace
}  // namespace walkdown::zone
