// SPDX-License-Identifier: Apache-2.0
// A hold from a second terminal while another program has the record: the tester being read, a
// question being answered, a program that hangs, one that dies.
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>

#include <chrono>
#include <csignal>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <thread>

#include "tests/cli/program.h"

namespace walkdown::cli {
namespace {

using testing::HasSubstr;

constexpr const char* kPlan =
    "cue,position,module,rail,pin,igniter,count,wire,lead_m\n"
    "1,A,1,1,1,standard,1,AWG24,5\n"
    "2,A,1,1,2,standard,2,AWG24,5\n";

std::string wait_for(const std::string& path, const std::string& text) {
  for (int i = 0; i < 2'000; ++i) {
    const std::string found = whole_file(path);
    if (found.find(text) != std::string::npos) return found;
    std::this_thread::sleep_for(std::chrono::milliseconds(10));
  }
  return "";
}

// A tester that is read into a record for as long as this lives.
class Reading {
 public:
  Reading() {
    const std::string said = wait_for(folder / "tester", "\n");
    const std::string out = folder / "read";
    reader_.emplace(
        std::vector<std::string>{"read", "--port", said.substr(0, said.find('\n')), "--plan", plan,
                                 "--key", folder / "station.key", "--record", record},
        out);
    EXPECT_NE(wait_for(out, "2 of 2"), "") << whole_file(out + ".err");
  }

  [[nodiscard]] std::vector<std::string> hold() const {
    return {"day",  "hold",  "a child at the fence", "--by", "Edda Horn", "--record",
            record, "--key", folder / "station.key"};
  }
  [[nodiscard]] nlohmann::json status() const {
    return nlohmann::json::parse(run_walkdown({"day", "status", "--record", record, "--json"}).out);
  }
  Background& reader() { return *reader_; }

  Folder folder;
  std::string plan = folder.put("plan.csv", kPlan);
  std::string record = folder / "today.record";

 private:
  Background tester_{{"simulate", plan, "--rate", "200"}, folder / "tester"};
  std::optional<Background> reader_;
};

TEST(HoldProgram, GetsThroughWhileATesterIsRead) {
  Reading reading;
  const auto held = run_walkdown(reading.hold());
  EXPECT_EQ(held.status, 0) << held.err;
  const auto state = reading.status();
  ASSERT_EQ(state["holds"].size(), 1U);
  EXPECT_EQ(state["holds"][0]["by"], "Edda Horn");
  EXPECT_EQ(state["holds"][0]["reason"], "a child at the fence");
  EXPECT_THAT(held.out, HasSubstr("The hold is called: entry " + state["holds"][0]["n"].dump() +
                                  " is on disk."));
  reading.reader().signal(SIGINT);
  reading.reader().wait();
  EXPECT_EQ(run_walkdown({"verify", reading.record}).status, 0);
}

TEST(HoldProgram, WhereTheOtherProgramHangsItIsSaidThatNothingIsRecorded) {
  Reading reading;
  reading.reader().signal(SIGSTOP);
  const auto held = run_walkdown(reading.hold());
  EXPECT_EQ(held.status, 2);
  EXPECT_THAT(held.err, HasSubstr("the hold is NOT recorded"));
  EXPECT_THAT(held.err, HasSubstr("shout"));
  reading.reader().signal(SIGCONT);
  const auto again = run_walkdown(reading.hold());
  EXPECT_EQ(again.status, 0) << again.err;
  EXPECT_EQ(reading.status()["holds"].size(), 1U) << "the first was said not to be recorded";
}

TEST(HoldProgram, WhereTheOtherProgramDiesTheCallerEntersIt) {
  Reading reading;
  reading.reader().signal(SIGSTOP);
  Background holding(reading.hold(), reading.folder / "hold");
  EXPECT_NE(wait_for(reading.folder / "hold", "Asking it"), "");
  reading.reader().signal(SIGKILL);
  reading.reader().wait();
  EXPECT_EQ(holding.wait(), 0) << whole_file(reading.folder / "hold.err");
  EXPECT_EQ(reading.status()["holds"].size(), 1U);
  EXPECT_EQ(run_walkdown({"verify", reading.record}).status, 0);
}

TEST(HoldProgram, WhereBothDieTheNextProgramEntersIt) {
  Reading reading;
  reading.reader().signal(SIGSTOP);
  {
    Background holding(reading.hold(), reading.folder / "hold");
    EXPECT_NE(wait_for(reading.record + ".hold", "fence"), "");
  }  // killed
  reading.reader().signal(SIGKILL);
  reading.reader().wait();
  EXPECT_EQ(reading.status()["holds"].size(), 0U) << "it is nothing until it is an entry";
  EXPECT_THAT(run_walkdown({"day", "status", "--record", reading.record}).out,
              HasSubstr("a hold was called and is not yet in the record"));
  run_walkdown(
      {"day", "note", "next", "--record", reading.record, "--key", reading.folder / "station.key"});
  const auto state = reading.status();
  ASSERT_EQ(state["holds"].size(), 1U);
  EXPECT_EQ(state["holds"][0]["by"], "Edda Horn");
  EXPECT_FALSE(std::filesystem::exists(reading.record + ".hold"));
}

// Whoever types a passphrase, or thinks about an answer, keeps nobody from the record.
TEST(HoldProgram, NobodyWaitsForOneWhoTypes) {
  const Folder folder;
  const std::string record = folder / "today.record";
  const std::string crew = folder / "crew";
  const std::string secret = folder.put("secret", "kiln-and-copper\n");
  const std::string typed = folder / "typed";  // a passphrase that takes its time
  ASSERT_EQ(mkfifo(typed.c_str(), 0600), 0);
  const auto day = [&](std::vector<std::string> arguments) {
    arguments.insert(arguments.begin(), "day");
    arguments.insert(arguments.end(), {"--record", record, "--key", folder / "station.key"});
    return arguments;
  };
  ASSERT_EQ(run_walkdown({"crew", "add", "Mara Linde", "--dir", crew, "--passphrase-file", secret})
                .status,
            0);
  ASSERT_EQ(run_walkdown(
                day({"open", "--plan", folder.put("plan.csv", kPlan), "--checklist", "club-show"}))
                .status,
            0);
  run_walkdown(day({"enrol", "Mara Linde", "lead", "--dir", crew}));
  EXPECT_EQ(run_walkdown(day({"hold", "smoke", "--by", "Jon Weir"})).status, 0);
  Background lifting(
      day({"lift", "it was fog", "--as", "Mara Linde", "--dir", crew, "--passphrase-file", typed}),
      folder / "lift");
  std::ofstream typing(typed);  // returns once the other side waits for it
  const auto held = run_walkdown(day({"hold", "a child", "--by", "Edda Horn"}));
  EXPECT_EQ(held.status, 0) << held.err;
  EXPECT_THAT(held.out, HasSubstr("called a hold: a child"));
  typing << "kiln-and-copper\n" << std::flush;
  typing.close();
  EXPECT_EQ(lifting.wait(), 2) << "the lead knew of the first hold alone";
  EXPECT_THAT(whole_file(folder / "lift.err"),
              HasSubstr("another hold was called since: Edda Horn called a hold: a child"));
}

}  // namespace
}  // namespace walkdown::cli
