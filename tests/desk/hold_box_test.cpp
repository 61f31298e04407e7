// SPDX-License-Identifier: Apache-2.0
// A hold called while another program has the record open.
#include "checklist/desk/hold_box.h"

#include <gmock/gmock.h>

#include <filesystem>
#include <thread>

#include "checklist/desk/ask_hold.h"
#include "checklist/desk/copy.h"
#include "tests/desk/evening.h"

namespace walkdown::desk::test {
namespace {

using testing::HasSubstr;
namespace fs = std::filesystem;
constexpr auto kSoon = std::chrono::seconds(20);  // a loaded machine is slow, never wrong

HoldAsk ask(const Evening& evening, const std::string& by, const std::string& reason) {
  return {evening.path, by, reason, kSoon, {}};
}

// Until the holds that stand are so many, or time is up.
std::vector<day::HoldLog> holds_of(const Evening& evening, std::size_t count) {
  const auto end = std::chrono::steady_clock::now() + kSoon;
  auto holds = evening.desk->state().holds;
  while (holds.size() < count && std::chrono::steady_clock::now() < end) {
    std::this_thread::sleep_for(std::chrono::milliseconds(5));
    holds = evening.desk->state().holds;
  }
  return holds;
}

bool is_gone(const std::string& path) {
  for (int i = 0; i < 4'000 && fs::exists(fs::symlink_status(path)); ++i) {
    std::this_thread::sleep_for(std::chrono::milliseconds(5));
  }
  return !fs::exists(fs::symlink_status(path));
}

TEST(HoldBox, TheDeskThatHasTheRecordEntersIt) {
  Evening evening;
  evening.ready();
  evening.release();
  const auto n = fine(ask_for_hold(ask(evening, "Edda", "a child at the fence")));
  const auto state = evening.desk->state();
  ASSERT_EQ(state.holds.size(), 1U);
  EXPECT_EQ(state.holds[0].n, n);
  EXPECT_EQ(state.holds[0].by, "Edda");
  EXPECT_EQ(state.holds[0].reason, "a child at the fence");
  EXPECT_EQ(state.release.word, day::ReleaseWord::fallen);
  EXPECT_TRUE(is_gone(hold_box_path(evening.path)));
  fine(lift(*evening.desk, evening.mara, "she is with her mother", n));
  const auto copy = Copy::open(evening.path);
  ASSERT_TRUE(copy.ok());
  EXPECT_TRUE(copy->report().holds) << copy->report().why;
}

TEST(HoldBox, EachOfManyCallersGetsAnEntryOfHisOwn) {
  Evening evening;
  evening.enrol_all();
  constexpr std::size_t kCallers = 8;
  std::array<std::uint64_t, kCallers> entries{};
  std::vector<std::thread> callers;
  for (std::size_t i = 0; i < kCallers; ++i) {
    callers.emplace_back([&, i] {
      const auto n = ask_for_hold(ask(evening, "caller " + std::to_string(i), ""));
      if (n) entries[i] = *n;
    });
  }
  for (auto& each : callers) each.join();
  const auto holds = evening.desk->state().holds;
  EXPECT_EQ(holds.size(), kCallers);
  for (const auto& hold : holds) {
    const std::size_t who = std::stoul(hold.by.substr(7));
    EXPECT_EQ(entries[who], hold.n) << hold.by;
  }
}

struct Lying {
  const char* what;
  std::string bytes;
  const char* by;
};

class WhatLiesThere : public testing::TestWithParam<Lying> {};

TEST_P(WhatLiesThere, IsAHold) {
  Evening evening;
  evening.enrol_all();
  record::test::write_file(hold_box_path(evening.path), GetParam().bytes);
  const auto holds = holds_of(evening, 1);
  ASSERT_EQ(holds.size(), 1U);
  EXPECT_EQ(holds[0].by, GetParam().by);
  EXPECT_TRUE(is_gone(hold_box_path(evening.path)));
  EXPECT_EQ(evening.desk->disagrees(), std::nullopt);
  evening.reopen();
  EXPECT_EQ(evening.desk->state().holds.size(), 1U);
}

INSTANTIATE_TEST_SUITE_P(
    HoldBox, WhatLiesThere,
    testing::Values(Lying{"nothing, by touch", "", ""}, Lying{"no JSON", "stop!", ""},
                    Lying{"a list", "[1,2]", ""}, Lying{"a number for a name", R"({"by":3})", ""},
                    Lying{"no UTF-8", "{\"by\":\"\xff\"}", ""},
                    Lying{"more than a call", R"({"by":")" + std::string(9'000, 'x') + "\"}", ""},
                    Lying{"a name alone", R"({"by":"Edda"})", "Edda"},
                    Lying{"depth", std::string(4'000, '['), ""}),
    [](const auto& each) { return "Case" + std::to_string(each.index); });

TEST(HoldBox, WhatIsNoPlainFileIsLeftAlone) {
  Evening evening;
  evening.enrol_all();
  const std::string path = hold_box_path(evening.path);
  fs::create_directory(path);
  fine(note(*evening.desk, "meanwhile"));
  evening.reopen();
  EXPECT_TRUE(evening.desk->state().holds.empty());
  fs::remove(path);
  fs::create_symlink(evening.path, path);
  evening.reopen();
  EXPECT_TRUE(evening.desk->state().holds.empty());
  EXPECT_TRUE(fs::is_symlink(path));
}

TEST(HoldBox, OneLeftBehindIsTakenUpBeforeTheNextDeskIsHandedOut) {
  Evening evening;
  evening.ready();
  evening.desk.reset();
  const auto call = new_hold_call("Edda", "smoke");
  ASSERT_TRUE(call.ok());
  ASSERT_TRUE(put_hold_call(evening.path, *call).ok());
  evening.reopen();
  ASSERT_EQ(evening.desk->state().holds.size(), 1U);
  const auto entry = hold_entry(evening.path, call->request);
  ASSERT_TRUE(entry.ok() && *entry);
  EXPECT_EQ(**entry, evening.desk->state().holds[0].n);
  EXPECT_FALSE(fs::exists(hold_box_path(evening.path)));
}

// The program that entered it died before it took the file away.
TEST(HoldBox, OneThatIsInTheRecordIsNotEnteredTwice) {
  Evening evening;
  evening.enrol_all();
  const auto call = new_hold_call("Edda", "smoke");
  ASSERT_TRUE(put_hold_call(evening.path, *call).ok());
  ASSERT_EQ(holds_of(evening, 1).size(), 1U);
  fine(lift(*evening.desk, evening.mara, "it was a barbecue"));
  evening.desk.reset();
  ASSERT_TRUE(put_hold_call(evening.path, *call).ok());
  evening.reopen();
  EXPECT_TRUE(evening.desk->state().holds.empty());
  EXPECT_FALSE(fs::exists(hold_box_path(evening.path)));
}

TEST(HoldBox, WhereNobodyTakesItUpItIsSaidAndTakenBack) {
  Evening evening;
  evening.desk.reset();
  HoldAsk asked = ask(evening, "Edda", "smoke");
  asked.patience = std::chrono::milliseconds(200);
  EXPECT_THAT(refusal(ask_for_hold(asked)), HasSubstr("the hold is NOT recorded"));
  EXPECT_FALSE(fs::exists(hold_box_path(evening.path)));
  asked.record = evening.scratch.path("no-such-folder/x.record");
  EXPECT_THAT(refusal(ask_for_hold(asked)), HasSubstr("shout"));
}

TEST(HoldBox, ARecordThatDiedWithItsProgramIsOpenedByTheCaller) {
  Evening evening;
  evening.enrol_all();
  evening.desk.reset();
  HoldAsk asked = ask(evening, "Edda", "smoke");
  asked.open = [&] {
    evening.reopen();
    evening.desk.reset();
  };
  const auto n = fine(ask_for_hold(asked));
  evening.reopen();
  ASSERT_EQ(evening.desk->state().holds.size(), 1U);
  EXPECT_EQ(evening.desk->state().holds[0].n, n);
}

TEST(HoldBox, AClosedRecordTakesNone) {
  Evening evening;
  evening.enrol_all();
  ASSERT_TRUE(evening.desk->close("the end").ok());
  HoldAsk asked = ask(evening, "Edda", "smoke");
  asked.patience = std::chrono::milliseconds(300);
  EXPECT_THAT(refusal(ask_for_hold(asked)), HasSubstr("NOT recorded"));
}

TEST(HoldBox, ACallThatNobodyCouldReadIsNotLaid) {
  EXPECT_EQ(new_hold_call("Edda", std::string(5'000, 'x')).error().code, Code::bad_input);
  EXPECT_EQ(new_hold_call("\xff", "").error().code, Code::bad_input);
}

}  // namespace
}  // namespace walkdown::desk::test
