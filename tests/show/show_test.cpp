// SPDX-License-Identifier: Apache-2.0
#include "checklist/show/show.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace walkdown::show {
namespace {

using testing::HasSubstr;

Show small_show() {
  Show show;
  show.put({Role::tester, "tester.toml", "baud = 9600\n"});
  show.put({Role::plan, "plan.csv", "cue,module\r\n1,\"a\nb\"\r\n"});
  show.temp_milli_degc = -3500;
  return show;
}

TEST(Show, KeepsFilesInOrderOfRole) {
  const Show show = small_show();
  ASSERT_EQ(show.files.size(), 2U);
  EXPECT_EQ(show.files[0].role, Role::plan);
  EXPECT_EQ(show.files[1].role, Role::tester);
}

TEST(Show, PutReplacesAFileOfTheSameRole) {
  Show show = small_show();
  show.put({Role::plan, "other.csv", "x"});
  EXPECT_EQ(show.files.size(), 2U);
  EXPECT_EQ(show.find(Role::plan)->name, "other.csv");
}

TEST(Show, FindGivesNullForARoleWithoutAFile) { EXPECT_EQ(small_show().find(Role::site), nullptr); }

TEST(Show, EveryRoleHasAWordAndBack) {
  for (std::uint8_t i = 0; i < kRoles; ++i) {
    const auto role = static_cast<Role>(i);
    EXPECT_EQ(role_of(word(role)), role);
  }
  EXPECT_EQ(role_of("weather"), std::nullopt);
}

TEST(Show, JsonGivesTheSameBytesBack) {
  const Show show = small_show();
  const auto json = nlohmann::json::parse(to_json(show).dump());
  const auto back = from_json(json);
  ASSERT_TRUE(back.ok());
  EXPECT_EQ(*back, show);
}

TEST(Show, JsonHoldsNoFloatingNumber) {
  EXPECT_TRUE(to_json(small_show())["temp_milli_degc"].is_number_integer());
}

TEST(Show, RefusesWhatItDidNotWrite) {
  const auto why = [](const char* text) {
    const auto show = from_json(nlohmann::json::parse(text));
    return show.ok() ? std::string("taken") : show.error().sentence();
  };
  EXPECT_THAT(why("[]"), HasSubstr("must be an object"));
  EXPECT_THAT(why(R"({"music":{"name":"a","text":"b"}})"), HasSubstr("music"));
  EXPECT_THAT(why(R"({"plan":{"name":"a"}})"), HasSubstr("plan"));
  EXPECT_THAT(why(R"({"plan":{"name":"a","text":1}})"), HasSubstr("strings"));
  EXPECT_THAT(why(R"({"plan":{"name":"a","text":"b","more":"c"}})"), HasSubstr("nothing else"));
  EXPECT_THAT(why(R"({"temp_milli_degc":2.5})"), HasSubstr("whole number"));
  EXPECT_THAT(why(R"({"temp_milli_degc":100001})"), HasSubstr("between"));
}

}  // namespace
}  // namespace walkdown::show
