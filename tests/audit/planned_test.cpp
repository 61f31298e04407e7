// SPDX-License-Identifier: Apache-2.0
#include "checklist/audit/planned.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "templates/embedded.h"
#include "tests/audit/small_field.h"

namespace walkdown::audit {
namespace {

using testing::HasSubstr;
using testing::SizeIs;

TEST(Planned, CompletesWithTheTemplates) {
  const show::Show show = complete(small_show());
  ASSERT_NE(show.find(show::Role::igniters), nullptr);
  EXPECT_EQ(show.find(show::Role::igniters)->text, *templates::text("igniters/generic.toml"));
  EXPECT_NE(show.find(show::Role::tester), nullptr);
  EXPECT_EQ(show.find(show::Role::modules), nullptr);
}

TEST(Planned, ImportsAWholeShow) {
  const auto outcome = import(small_show());
  ASSERT_TRUE(outcome.planned.has_value()) << outcome.errors.front();
  EXPECT_THAT(outcome.planned->plan.pins, SizeIs(6));
}

TEST(Planned, TheDaysTemperatureCounts) {
  auto show = small_show();
  show.temp_milli_degc = -5500;
  EXPECT_DOUBLE_EQ(import(show).planned->plan.catalogue.wiring.temp_c, -5.5);
}

TEST(Planned, EveryErrorIsListedWithItsFile) {
  auto show = small_show();
  show.put({show::Role::plan, "broken.csv",
            "cue,module,rail,pin,igniter\n1,0,1,1,standard\n2,1,1,x,nothing\n"});
  const auto outcome = import(show);
  EXPECT_FALSE(outcome.planned.has_value());
  EXPECT_THAT(outcome.errors, SizeIs(3));
  for (const auto& error : outcome.errors) EXPECT_THAT(error, HasSubstr("broken.csv"));
}

TEST(Planned, ABrokenPartIsNamedAndNothingIsGuessed) {
  auto show = small_show();
  show.put(
      {show::Role::igniters, "igniters.toml", "[igniter.\"standard\"]\nbridge_ohm = [2, 1]\n"});
  const auto outcome = import(show);
  EXPECT_FALSE(outcome.planned.has_value());
  EXPECT_THAT(outcome.errors.front(), HasSubstr("igniters.toml"));
}

}  // namespace
}  // namespace walkdown::audit
