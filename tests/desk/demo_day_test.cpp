// SPDX-License-Identifier: Apache-2.0
// The invented day on a sound simulated field: every act is one that the rules take.
#include "checklist/cli/demo_day.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "checklist/cli/intake.h"
#include "checklist/desk/copy.h"
#include "checklist/desk/prepared.h"
#include "checklist/record/verify.h"
#include "reader/trainer/field.h"
#include "reader/trainer/sweep.h"
#include "templates/embedded.h"
#include "tests/record/scratch.h"

namespace walkdown::cli {
namespace {

using testing::Contains;
using testing::HasSubstr;

show::Show demo_show() {
  show::Show show;
  const auto put = [&](show::Role role, const char* name) {
    show.put({role, "file", std::string(templates::text(name).value())});
  };
  put(show::Role::plan, "demo/plan.csv");
  put(show::Role::igniters, "demo/igniters.toml");
  put(show::Role::modules, "demo/modules.toml");
  put(show::Role::site, "demo/site.geojson");
  put(show::Role::checklist, "checklists/evening-show.toml");
  return show;
}

record::SigningKey station() {
  record::Seed seed{};
  seed.fill(5);
  return {"demo", seed};
}

class DemoDayTest : public testing::Test {
 protected:
  DemoDayTest() {
    auto opened = desk::Desk::open(path, demo_show(), station(), clock);
    if (opened) desk.emplace(std::move(opened).value());
  }

  void read_all() {
    trainer::Field field(desk->prepared().planned.plan, desk->prepared().planned.tester.model, 3);
    Intake intake(desk->parser(), std::nullopt, desk->writer());
    trainer::SweepForm form;
    form.times = 2;
    for (const std::string& line : trainer::sweep(field, field.pins(), form)) {
      ASSERT_TRUE(intake.feed(line + "\n").ok());
    }
    ASSERT_TRUE(desk->writer().flush().ok());
  }

  void expect(const Done& done) { EXPECT_TRUE(done.ok()) << done.error().sentence(); }

  record::test::Scratch scratch;
  DemoClock clock{kDemoStart_at_ms};
  std::string path = scratch.path("demo.record");
  std::optional<desk::Desk> desk;
  std::vector<std::string> said;
};

TEST_F(DemoDayTest, EveryActIsTakenAndTheRecordHolds) {
  ASSERT_TRUE(desk.has_value());
  auto day = DemoDay::begin(*desk, clock, scratch.path("crew"),
                            [&](const std::string& line) { said.push_back(line); });
  ASSERT_TRUE(day.ok()) << day.error().sentence();
  expect(day->morning());
  read_all();
  expect(day->evening());
  EXPECT_EQ(desk->state().word, "released");
  expect(day->show());
  expect(day->after([] { return Result<std::size_t>(std::size_t{2}); }));
  const day::State state = desk->state();
  EXPECT_EQ(state.ignored_count, 0U) << state.ignored.back().why;
  EXPECT_EQ(state.word, "after");
  EXPECT_EQ(state.keys.at(0).holder, "lock box");
  EXPECT_TRUE(state.in_field.empty());
  EXPECT_TRUE(state.waiting.empty());
  for (const auto& item : state.items) {
    EXPECT_FALSE(item.fast) << item.id << " was answered without a look";
  }
  EXPECT_THAT(said, Contains(HasSubstr("released by Mara Linde and Jon Weir")));
  EXPECT_THAT(said, Contains(HasSubstr("sweep is refused")));
  expect(desk->close("the end of the demonstration"));
  std::string second_entry;
  record::VerifyOptions options;
  options.visitor = [&](const record::EntryView& entry) -> std::optional<std::string> {
    if (entry.n == 1) second_entry = entry.body;
    return std::nullopt;
  };
  const auto copy = desk::Copy::open(path, options);
  ASSERT_TRUE(copy.ok());
  EXPECT_TRUE(copy->report().holds) << copy->report().why;
  EXPECT_THAT(second_entry, HasSubstr("This is a demonstration"));
}

TEST_F(DemoDayTest, WithoutAProvedFieldThereIsNoRelease) {
  auto day = DemoDay::begin(*desk, clock, scratch.path("crew"), [](const std::string&) {});
  ASSERT_TRUE(day.ok());
  expect(day->morning());
  const Done evening = day->evening();
  ASSERT_FALSE(evening.ok());
  EXPECT_THAT(evening.error().sentence(), HasSubstr("continuity"));
}

}  // namespace
}  // namespace walkdown::cli
