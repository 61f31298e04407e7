// SPDX-License-Identifier: Apache-2.0
#include "reader/trainer/faults.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/trainer/small_plan.h"

namespace walkdown::trainer {
namespace {

using ::testing::HasSubstr;

constexpr std::string_view kEveryKind = R"(
[[fault]]
kind = "open"
pin = "M01/R1/P01"
[[fault]]
kind = "short"
pin = "M01/R1/P02"
[[fault]]
kind = "missing-igniter"
pin = "M01/R2/P01"
[[fault]]
kind = "extra-igniter"
pin = "M01/R2/P02"
[[fault]]
kind = "poor-joint"
pin = "M01/R1/P03"
ohm = 4.5
[[fault]]
kind = "leak"
pin = "M01/R1/P04"
ohm = 60
[[fault]]
kind = "intermittent"
pin = "M02/R1/P01"
[[fault]]
kind = "stray"
pin = "M01/R2/P03"
igniter = "type-5"
[[fault]]
kind = "wrong-lead"
pin = "M02/R1/P02"
factor = 2.0
[[fault]]
kind = "wrong-igniter"
pin = "M02/R1/P03"
[[fault]]
kind = "swapped"
pins = ["M01/R1/P01", "M01/R1/P02"]
[[fault]]
kind = "shifted"
rail = "M02/R1"
first = 1
last = 3
by = 1
[[fault]]
kind = "reversed"
rail = "M01/R1"
[[fault]]
kind = "rails-exchanged"
rails = ["M01/R1", "M01/R2"]
[[fault]]
kind = "modules-exchanged"
modules = [1, 2]
[[fault]]
kind = "tester-offset"
ohm = 0.2
[[fault]]
kind = "wire-differs"
factor = 1.6
)";

std::string fault_of(std::string_view toml) {
  const auto read = read_faults(toml, "f.toml");
  return read.ok() ? "(taken)" : read.error().sentence();
}

TEST(FaultScript, ReadsEveryKind) {
  const auto read = read_faults(kEveryKind, "f.toml");
  ASSERT_TRUE(read.ok()) << read.error().sentence();
  ASSERT_EQ(read->size(), 17U);
  for (std::size_t i = 0; i < read->size(); ++i) {
    EXPECT_EQ((*read)[i].kind, static_cast<FaultKind>(i + 1));  // the order of the enumeration
    EXPECT_EQ(fault_kind(word((*read)[i].kind)), (*read)[i].kind);
    EXPECT_GT((*read)[i].line, 0U);
  }
  EXPECT_DOUBLE_EQ((*read)[4].amount, 4.5);
  EXPECT_EQ((*read)[7].igniter, "type-5");
  EXPECT_EQ((*read)[11].rails[0], (RailId{2, 1}));
  EXPECT_EQ((*read)[11].by, 1);
}

TEST(FaultScript, CanBeMade) {
  Field field(small_plan(), exact_tester(), 1);
  const Done made = apply_faults(*read_faults(kEveryKind, "f.toml"), field);
  EXPECT_TRUE(made.ok()) << made.error().sentence();
}

TEST(FaultScript, LoadFaultsNameThePlannedPinWhateverStandsFirst) {
  Field field(small_plan(), exact_tester(), 1);
  const auto script = read_faults(
      "[[fault]]\nkind='reversed'\nrail='M01/R1'\n[[fault]]\nkind='open'\npin='M01/R1/P01'\n", "f");
  ASSERT_TRUE(script.ok());
  ASSERT_TRUE(apply_faults(*script, field));
  EXPECT_TRUE(field.read({1, 1, 4})->over);
  EXPECT_FALSE(field.read({1, 1, 1})->over);
}

TEST(FaultScript, SaysWhichLineThePlanDoesNotAllow) {
  Field field(small_plan(), exact_tester(), 1);
  const auto script = read_faults("\n[[fault]]\nkind='open'\npin='M09/R1/P01'\n", "f");
  const Done made = apply_faults(*script, field);
  ASSERT_FALSE(made.ok());
  EXPECT_THAT(made.error().sentence(), HasSubstr("line 2, open at M09/R1/P01"));
  const auto igniter =
      read_faults("[[fault]]\nkind='stray'\npin='M01/R2/P03'\nigniter='none-such'\n", "f");
  EXPECT_FALSE(apply_faults(*igniter, field).ok());
}

TEST(FaultScript, ListsEveryMistakeWithItsLine) {
  const std::string all = fault_of(
      "[[fault]]\nkind = 'gone'\n"                               // 1, 2
      "[[fault]]\nkind = 'open'\n"                               // 3: no pin
      "[[fault]]\nkind = 'open'\npin = 'P05'\n"                  // 7
      "[[fault]]\nkind = 'leak'\npin = 'M01/R1/P01'\nohm=0\n"    // 11
      "[[fault]]\nkind = 'swapped'\npins = ['M01/R1/P01']\n"     // 14
      "[[fault]]\nkind = 'modules-exchanged'\nmodules = 3\n"     // 17
      "[[fault]]\nkind = 'reversed'\nrail = 'M01/R1'\nby = 3\n"  // 21
      "[other]\nx = 1\n");
  for (const char* part : {"f.toml", "line 2, kind: ", "line 3, pin: ", "line 7, pin: ",
                           "line 11, ohm: ", "line 14, pins: ", "line 17, modules: ",
                           "line 21, 'by' says nothing", "line 22, 'other': write [[fault]]"}) {
    EXPECT_THAT(all, HasSubstr(part));
  }
}

TEST(FaultScript, RefusesWhatIsNoScript) {
  EXPECT_THAT(fault_of("[[fault]\n"), HasSubstr("line 1"));
  EXPECT_NE(fault_of("fault = 3"), "(taken)");
  EXPECT_NE(fault_of("fault = [3]"), "(taken)");
  EXPECT_NE(fault_of("[[fault]]\nkind='wire-differs'\nfactor=nan\n"), "(taken)");
  EXPECT_THAT(fault_of(std::string(kMaxScriptBytes + 1, '#')), HasSubstr("1 MiB"));
  EXPECT_EQ(fault_of(""), "(taken)");
}

plan::Plan long_plan() {
  plan::Plan plan = small_plan();
  plan.pins.clear();
  plan.layout.rails = {{1, std::vector<std::uint16_t>(20, 20)}};
  for (std::uint16_t rail = 1; rail <= 20; ++rail) {
    for (std::uint16_t pin = 1; pin <= 18; ++pin) {
      plan::PlannedPin planned;
      planned.id = {1, rail, pin};
      planned.load = {static_cast<std::uint16_t>(pin % 12), 2, plan::Join::series, 0, 5};
      plan.pins.push_back(planned);
    }
  }
  return plan;
}

TEST(RandomFaults, CanAllBeMadeAndAreAsManyAsSaid) {
  const plan::Plan plan = long_plan();
  std::size_t loads = 0;
  std::size_t moves = 0;
  for (std::uint64_t seed = 0; seed < 50; ++seed) {
    const std::vector<Fault> faults = random_faults(plan, seed);
    Field field(plan, exact_tester(), seed);
    const Done made = apply_faults(faults, field);
    EXPECT_TRUE(made.ok()) << seed << ": " << made.error().sentence();
    for (const Fault& fault : faults) (is_of_one_load(fault.kind) ? loads : moves) += 1;
  }
  // 50 fields of 360 pins: 600 and 120 expected, five standard deviations either way
  EXPECT_NEAR(static_cast<double>(loads), 600, 125);
  EXPECT_NEAR(static_cast<double>(moves), 120, 55);
}

TEST(RandomFaults, FollowTheSeedAndTakeAnEmptyPlan) {
  const plan::Plan plan = long_plan();
  const auto a = random_faults(plan, 5);
  const auto b = random_faults(plan, 5);
  ASSERT_EQ(a.size(), b.size());
  for (std::size_t i = 0; i < a.size(); ++i) EXPECT_EQ(a[i].kind, b[i].kind);
  EXPECT_TRUE(random_faults(plan::Plan{}, 5).empty());
}

}  // namespace
}  // namespace walkdown::trainer
