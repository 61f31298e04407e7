// SPDX-License-Identifier: Apache-2.0
// The demo's crew hand does what a finding says and no more, and what a trainee types is done.
#include "checklist/cli/crew_hand.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "checklist/cli/trainee.h"
#include "reader/plan/import.h"

namespace walkdown::cli {
namespace {

using match::Finding;
using match::Kind;
using plan::PinId;
using testing::ElementsAre;
using testing::HasSubstr;
using trainer::FaultKind;

plan::Plan small_plan() {
  plan::Catalogue catalogue;
  catalogue.igniters.emplace_back().name = "std";
  catalogue.igniters[0].bridge_ohm = {1.4, 2.0};
  std::string rows = "cue,module,rail,pin,igniter,count\n";
  for (int module = 1; module <= 2; ++module) {
    for (int pin = 1; pin <= 4; ++pin) {
      rows += "1," + std::to_string(module) + ",1," + std::to_string(pin) + ",std," +
              std::to_string(pin + 4 * (module - 1)) + "\n";
    }
  }
  return *plan::import_plan(rows, "s.csv", catalogue).plan;
}

struct World {
  plan::Plan plan = small_plan();
  trainer::Field field{plan, tester::Model{}, 5};
  [[nodiscard]] bool at_home() const {
    for (const auto pin : field.pins()) {
      const auto* hung = field.hangs_on(pin);
      if (hung == nullptr || hung->home != pin || hung->fault != FaultKind::none) return false;
    }
    return true;
  }
};

Finding finding(Kind kind, std::vector<PinId> pins, int by = 0) {
  Finding out;
  out.kind = kind;
  out.pins = std::move(pins);
  out.by = by;
  return out;
}

TEST(CrewHand, PutsBackEachMove) {
  World world;
  ASSERT_TRUE(world.field.reverse({1, 1}));
  const auto turned = act_on(finding(Kind::reversed, {{1, 1, 1}, {1, 1, 4}}), world.field, "Ida");
  ASSERT_TRUE(turned);
  EXPECT_TRUE(world.at_home());
  EXPECT_THAT(turned->read_again,
              ElementsAre(PinId{1, 1, 1}, PinId{1, 1, 2}, PinId{1, 1, 3}, PinId{1, 1, 4}));
  EXPECT_EQ(turned->rehooks.at(0).module, 1);
  EXPECT_EQ(turned->rehooks.at(0).rail, 1);

  ASSERT_TRUE(world.field.swap_loads({1, 1, 1}, {1, 1, 3}));
  ASSERT_TRUE(act_on(finding(Kind::swapped, {{1, 1, 1}, {1, 1, 3}}), world.field, "Ida"));
  EXPECT_TRUE(world.at_home());

  ASSERT_TRUE(world.field.shift({1, 1}, 1, 2, 1));
  ASSERT_TRUE(act_on(finding(Kind::shifted, {{1, 1, 1}, {1, 1, 2}}, 1), world.field, "Ida"));
  EXPECT_TRUE(world.at_home());

  ASSERT_TRUE(world.field.exchange_modules(1, 2));
  ASSERT_TRUE(act_on(finding(Kind::modules_exchanged, {{1, 1, 1}, {2, 1, 1}}), world.field, "Ida"));
  EXPECT_TRUE(world.at_home());

  ASSERT_TRUE(world.field.exchange_rails({1, 1}, {2, 1}));
  ASSERT_TRUE(act_on(finding(Kind::rails_exchanged, {{1, 1, 1}, {2, 1, 1}}), world.field, "Ida"));
  EXPECT_TRUE(world.at_home());
}

TEST(CrewHand, MendsThePinThatIsNamedAndNoOther) {
  World world;
  ASSERT_TRUE(world.field.set_fault({1, 1, 2}, FaultKind::open));
  ASSERT_TRUE(world.field.set_fault({2, 1, 2}, FaultKind::open));
  ASSERT_TRUE(act_on(finding(Kind::open, {{1, 1, 2}}), world.field, "Ida"));
  EXPECT_EQ(world.field.hangs_on({1, 1, 2})->fault, FaultKind::none);
  EXPECT_EQ(world.field.hangs_on({2, 1, 2})->fault, FaultKind::open);
}

TEST(CrewHand, AWrongFindingMendsNothing) {
  World world;
  ASSERT_TRUE(world.field.reverse({1, 1}));
  ASSERT_TRUE(act_on(finding(Kind::open, {{1, 1, 2}}), world.field, "Ida"));
  EXPECT_FALSE(world.at_home());
  EXPECT_FALSE(act_on(finding(Kind::tester_offset, {}), world.field, "Ida"));
}

TEST(Trainee, DoesWhatIsTyped) {
  World world;
  auto tester = trainer::TesterPty::open();
  ASSERT_TRUE(tester) << tester.error().sentence();
  Trainee trainee(world.field, **tester);
  ASSERT_TRUE(world.field.reverse({1, 1}));
  EXPECT_TRUE(trainee.act("turn M01/R1"));
  EXPECT_TRUE(world.at_home());
  ASSERT_TRUE(world.field.swap_loads({1, 1, 1}, {2, 1, 3}));
  EXPECT_TRUE(trainee.act("exchange M01/R1/P01 M02/R1/P03"));
  EXPECT_TRUE(world.at_home());
  EXPECT_TRUE(trainee.act("exchange M01 M02"));
  EXPECT_TRUE(trainee.act("exchange M01/R1 M02/R1"));
  EXPECT_TRUE(world.at_home());
  ASSERT_TRUE(world.field.set_fault({1, 1, 2}, FaultKind::open));
  EXPECT_TRUE(trainee.act("mend M01/R1/P02"));
  EXPECT_TRUE(trainee.act(""));
  EXPECT_TRUE(world.at_home());
  const auto wrong = trainee.act("fire M01/R1/P02");
  ASSERT_FALSE(wrong);
  EXPECT_THAT(wrong.error().sentence(), HasSubstr("rehook M01/R1/P05"));
  EXPECT_FALSE(trainee.act("rehook M09/R1/P02"));
}

}  // namespace
}  // namespace walkdown::cli
