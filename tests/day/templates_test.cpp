// SPDX-License-Identifier: Apache-2.0
// The checklists that ship.
#include <gmock/gmock.h>

#include <algorithm>
#include <string>

#include "checklist/day/read_checklist.h"
#include "checklist/day/schedule.h"
#include "templates/embedded.h"
#include "world.h"

namespace walkdown::day {
namespace {

class Shipped : public testing::TestWithParam<const char*> {
 protected:
  static ChecklistRead read() {
    const auto text = templates::text(std::string("checklists/") + GetParam() + ".toml");
    EXPECT_TRUE(text.has_value());
    return read_checklist(text.value_or(""), GetParam());
  }
};

TEST_P(Shipped, HasNoMistake) {
  for (const Error& mistake : read().mistakes) ADD_FAILURE() << mistake.sentence();
}

// One thought each, short enough to be read aloud (common practice, no source for the figure).
TEST_P(Shipped, QuestionsAreShortQuestions) {
  for (const Item& item : read().checklist.items) {
    EXPECT_LE(item.question.size(), 75U) << item.question;
    EXPECT_EQ(std::count(item.question.begin(), item.question.end(), '?'), 1) << item.question;
    EXPECT_EQ(item.question.back(), '?');
  }
}

TEST_P(Shipped, StagesAreShort) {
  for (const Stage& stage : read().checklist.stages) EXPECT_LE(stage.count, 9U) << stage.id;
}

TEST_P(Shipped, NobodyIsToldThatItIsSafe) {
  const std::string text(
      templates::text(std::string("checklists/") + GetParam() + ".toml").value());
  EXPECT_EQ(text.find("is safe"), std::string::npos);
}

TEST_P(Shipped, TheReleaseRestsOnHeadcountCustodyWindAndThunder) {
  const Checklist checklist = read().checklist;
  for (const Kind kind : {Kind::headcount, Kind::custody, Kind::wind, Kind::thunder}) {
    EXPECT_TRUE(std::any_of(checklist.items.begin(), checklist.items.end(), [&](const Item& item) {
      return item.kind == kind && checklist.stages[item.stage].release;
    })) << word(kind);
  }
}

// Whoever begins in time and answers as planned gets a release that covers the show. With no plan
// and no site: what those items say is another matter than when they are due.
TEST_P(Shipped, AShowEightHoursAheadCanBeReleased) {
  World world(read().checklist);
  world.enrol_all();
  const std::int64_t show_at_ms = world.now.at_ms + 8 * 60 * kMinute_ms;
  world.put("show-time", propose_show_time(world.fold, world.now, kAnn, show_at_ms));
  const Schedule plan = schedule(world.fold, world.now);
  EXPECT_TRUE(plan.feasible) << plan.say;
}

INSTANTIATE_TEST_SUITE_P(Templates, Shipped,
                         testing::Values("evening-show", "club-show", "thunder-reopening"));

}  // namespace
}  // namespace walkdown::day
