// SPDX-License-Identifier: Apache-2.0
// The TOML files beside a plan, and what is said of a plan that is allowed but looks wrong.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "reader/plan/columns.h"
#include "reader/plan/igniter_file.h"
#include "reader/plan/import.h"
#include "reader/plan/modules_file.h"
#include "reader/spelling.h"

namespace walkdown::plan {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

std::string mistakes(const Result<Catalogue>& got) {
  return got ? std::string() : got.error().sentence();
}

TEST(IgniterFile, TakesAllThatItsFormatNames) {
  const auto got = read_igniters(R"(
[igniter."slow"]
bridge_ohm = [2.1, 2.6]
source = "sheet"
all_fire_a = 0.55
no_fire_a = 0.2
test_max_a = 0.025
fitted_lead_ohm = 0.08
colour = "kept by nobody, refused by nobody"
[wire.steel]
ohm_per_km = [900, 950]
alpha_per_k = 0.005
[wiring]
lead_tol_pct = 3
contact_ohm = [0.01, 0.2]
temp_c = -5
temp_tol_k = 4
)",
                                 "i.toml");
  ASSERT_TRUE(got) << mistakes(got);
  const Igniter& slow = got->igniters.at(0);
  EXPECT_EQ(slow.name, "slow");
  EXPECT_EQ(slow.bridge_ohm, (Interval{2.1, 2.6}));
  EXPECT_EQ(slow.no_fire_a, 0.2);
  EXPECT_EQ(slow.fitted_lead_ohm, (Interval{0.08, 0.08}));
  EXPECT_EQ(got->wires.at(0).ohm_per_km, (Interval{900, 950}));
  EXPECT_EQ(got->wires.at(0).alpha_per_k, 0.005);
  EXPECT_EQ(got->wiring.lead_tol_pct, 3);
  EXPECT_EQ(got->wiring.contact_ohm, (Interval{0.01, 0.2}));
  EXPECT_EQ(got->wiring.temp_c, -5);
}

TEST(IgniterFile, CurrentsAreNeverAssumed) {
  const auto got = read_igniters("[igniter.a]\nbridge_ohm = [1, 2]\n", "i.toml");
  ASSERT_TRUE(got);
  EXPECT_FALSE(got->igniters.at(0).no_fire_a);
  EXPECT_FALSE(got->igniters.at(0).all_fire_a);
  EXPECT_FALSE(got->igniters.at(0).test_max_a);
}

TEST(IgniterFile, AMistypedLimitIsNoMissingLimit) {
  const auto text =
      mistakes(read_igniters("[igniter.a]\nbridge_ohm = [1, 2]\nno_fire = 0.2\n", "i.toml"));
  EXPECT_THAT(text, HasSubstr("line 3, no_fire: this is no key; did you mean no_fire_a?"));
}

TEST(IgniterFile, ListsEveryMistakeWithItsLine) {
  const auto text = mistakes(read_igniters(
      "[igniter.a]\nbridge_ohm = [2, 1]\nno_fire_a = 0.5\nall_fire_a = 0.4\n[igniter.b]\n"
      "source = 3\n[wire.w]\nohm_per_km = \"x\"\n",
      "i.toml"));
  EXPECT_THAT(text, HasSubstr("line 2, bridge_ohm"));
  EXPECT_THAT(text, HasSubstr("no_fire_a is above all_fire_a"));
  EXPECT_THAT(text, HasSubstr("line 5, b: give bridge_ohm"));
  EXPECT_THAT(text, HasSubstr("line 6, source"));
  EXPECT_THAT(text, HasSubstr("line 8, ohm_per_km"));
  EXPECT_THAT(mistakes(read_igniters("[igniter", "i.toml")), HasSubstr("line 1"));
}

TEST(IgniterFile, RefusesValuesThatAreNoNumbers) {
  for (const char* value : {"nan", "inf", "-1", "\"1\"", "true", "[1, 2, 3]", "1e9"}) {
    const auto text =
        mistakes(read_igniters(std::string("[igniter.a]\nbridge_ohm = ") + value + "\n", "i.toml"));
    EXPECT_THAT(text, HasSubstr("bridge_ohm")) << value;
  }
}

TEST(ModulesFile, DefaultAndExceptions) {
  const auto got = read_modules("[default]\nrails=[16,16]\n[module.7]\nrails=[18]\n", "m.toml");
  ASSERT_TRUE(got) << got.error().sentence();
  EXPECT_THAT(*got->rails(7), ElementsAre(18));
  EXPECT_THAT(*got->rails(8), ElementsAre(16, 16));
  const auto bare = read_modules("[module.M07]\nrails=[18]\n", "m.toml");
  ASSERT_TRUE(bare);
  EXPECT_NE(bare->rails(7), nullptr);
  EXPECT_EQ(bare->rails(8), nullptr);
}

TEST(ModulesFile, RefusesWhatIsNoSize) {
  for (const char* text :
       {"[default]\nrails=[]\n", "[default]\nrails=[0]\n", "[default]\nrails=[10000]\n",
        "[module.0]\nrails=[1]\n", "[module.x]\nrails=[1]\n", "[default]\nrails=16\n",
        "default=3\n", "[module.7]\nrails=[1]\n[module.07]\nrails=[1]\n"}) {
    EXPECT_FALSE(read_modules(text, "m.toml")) << text;
  }
}

TEST(Columns, MapHeadersAndConstants) {
  const auto map = read_columns(
      "[header]\nmodule=\"Box\"\npin=\"Terminal No\"\n[constant]\nrail=1\nigniter=\"std\"\n",
      "c.toml");
  ASSERT_TRUE(map) << map.error().sentence();
  Catalogue catalogue;
  catalogue.igniters.emplace_back().name = "std";
  catalogue.igniters[0].bridge_ohm = {1, 2};
  const auto got = import_plan("cue;Box;terminal no\nA;3;4\n", "s.csv", catalogue, nullptr, &*map);
  ASSERT_TRUE(got.plan) << got.errors.at(0).sentence();
  EXPECT_EQ(got.plan->pins.at(0).id, (PinId{3, 1, 4}));
  const auto missing = import_plan("cue;pin\nA;4\n", "s.csv", catalogue, nullptr, &*map);
  ASSERT_FALSE(missing.plan);
  EXPECT_THAT(missing.errors.at(0).sentence(), HasSubstr("'Box'"));
}

TEST(Columns, RefusesAColumnWithTwoOrigins) {
  const auto both = read_columns("[header]\nrail=\"Row\"\n[constant]\nrail=1\n", "c.toml");
  ASSERT_FALSE(both);
  EXPECT_THAT(both.error().sentence(), HasSubstr("keep one"));
  EXPECT_FALSE(read_columns("[header]\ncolour=\"x\"\n", "c.toml"));
}

Catalogue one_igniter() {
  Catalogue catalogue;
  catalogue.igniters.emplace_back().name = "std";
  catalogue.igniters[0].bridge_ohm = {1, 2};
  return catalogue;
}

std::vector<std::string> warnings(const std::string& rows) {
  const auto got = import_plan("cue,position,module,rail,pin,igniter,count,wire,lead_m\n" + rows,
                               "s.csv", one_igniter());
  std::vector<std::string> out;
  for (const auto& warning : got.warnings) out.push_back(warning.sentence());
  return out;
}

TEST(Lint, SaysWhatLooksLikeAnOversight) {
  EXPECT_THAT(warnings("1,A,1,1,1,std,1,AWG24,3\n"), IsEmpty());
  EXPECT_THAT(warnings("1,A,1,1,1,std,0,,\n2,A,1,1,2,std,1,,4\n3,A,1,1,3,std,1,AWG24,\n"
                       "4,,1,1,4,std,1,,\n"),
              ElementsAre(HasSubstr("row 2, column count"), HasSubstr("row 3, column wire"),
                          HasSubstr("row 4, column lead_m"), HasSubstr("row 5, column position")));
  EXPECT_THAT(warnings("1,,1,1,1,std,1,,\n2,,1,1,2,std,1,,\n"),
              ElementsAre(HasSubstr("no cue has a position")));
}

TEST(Plan, ASizeFileBoundsTheLayout) {
  const auto sizes = read_modules("[default]\nrails=[4]\n", "m.toml");
  const auto got =
      import_plan("cue,module,rail,pin,igniter\n1,1,1,5,std\n1,1,2,1,std\n1,2,1,4,std\n", "s.csv",
                  one_igniter(), &*sizes);
  ASSERT_EQ(got.errors.size(), 2U);
  EXPECT_THAT(got.errors[0].sentence(), HasSubstr("row 2, column pin, '5'"));
  EXPECT_THAT(got.errors[1].sentence(), HasSubstr("row 3, column rail, '2'"));
}

TEST(Spelling, NearIsAMistakeAndFarIsANote) {
  const std::string_view known[] = {"baud", "no_fire_a"};
  EXPECT_EQ(meant_key("no_fire", known), "no_fire_a");
  EXPECT_EQ(meant_key("baut", known), "baud");
  EXPECT_EQ(meant_key("band2", known), "");
  EXPECT_EQ(meant_key("colour", known), "");
  EXPECT_EQ(meant_key("baud", known), "");
}

}  // namespace
}  // namespace walkdown::plan
