// SPDX-License-Identifier: Apache-2.0
// Two programs, one pseudo-terminal: the simulated tester and the one that reads it.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <chrono>
#include <csignal>
#include <nlohmann/json.hpp>
#include <thread>

#include "tests/cli/program.h"

namespace walkdown::cli {
namespace {

using testing::HasSubstr;

constexpr const char* kPlan =
    "cue,position,module,rail,pin,igniter,count,wire,lead_m\n"
    "1,A,1,1,1,standard,1,AWG24,5\n"
    "2,A,1,1,2,standard,2,AWG24,5\n"
    "3,A,1,1,3,standard,3,AWG24,5\n"
    "4,A,1,1,4,standard,5,AWG24,5\n";
constexpr const char* kFaults = "[[fault]]\nkind = \"open\"\npin = \"M01/R1/P03\"\n";

std::string first_line_of(const std::string& path) {
  for (int i = 0; i < 500; ++i) {
    const std::string text = whole_file(path);
    const auto end = text.find('\n');
    if (end != std::string::npos) return text.substr(0, end);
    std::this_thread::sleep_for(std::chrono::milliseconds(10));
  }
  return "";
}

struct Session {
  Folder folder;
  std::string plan = folder.put("plan.csv", kPlan);
  std::string record = folder / "today.record";
  std::vector<std::string> read_arguments(const std::string& port) {
    return {"read",     "--port", port,    "--plan", plan, "--key", folder / "station.key",
            "--record", record,   "--once"};
  }
};

TEST(ReadProgram, ASimulatedTesterIsReadDiagnosedAndKept) {
  Session session;
  const std::string told = session.folder / "told";
  Background tester({"simulate", session.plan, "--faults", session.folder.put("f.toml", kFaults),
                     "--rate", "500", "--sweeps", "3"},
                    told);
  const std::string port = first_line_of(told);
  ASSERT_FALSE(port.empty());
  const auto said = run_walkdown(session.read_arguments(port));
  EXPECT_EQ(said.status, 1) << said.err;
  EXPECT_THAT(said.out, HasSubstr("open, 9"));
  EXPECT_EQ(tester.wait(), 0);

  const auto verified = run_walkdown({"verify", session.record, "--json"});
  EXPECT_EQ(verified.status, 0) << verified.out;
  const auto report = nlohmann::json::parse(verified.out);
  EXPECT_EQ(report["holds"], true);
  EXPECT_TRUE(report["first_bad"].is_null());
  EXPECT_TRUE(report["why"].is_null());
  EXPECT_FALSE(report["mark"].get<std::string>().empty());
  // opening, 12 readings, a claim
  EXPECT_GE(report["entries"].get<int>(), 14);
}

TEST(ReadProgram, AnInterruptSealsTheRecordAndItIsContinuedLater) {
  Session session;
  const std::string told = session.folder / "told";
  Background tester({"simulate", session.plan, "--rate", "200"}, told);
  const std::string port = first_line_of(told);
  ASSERT_FALSE(port.empty());
  for (int round = 0; round < 2; ++round) {
    const std::string out = session.folder / ("read" + std::to_string(round));
    Background reading(session.read_arguments(port), out);
    for (int i = 0; i < 500 && whole_file(out).find("4 of 4") == std::string::npos; ++i) {
      std::this_thread::sleep_for(std::chrono::milliseconds(10));
    }
    reading.signal(SIGINT);
    EXPECT_EQ(reading.wait(), 0) << whole_file(out) << whole_file(out + ".err");
    EXPECT_EQ(run_walkdown({"verify", session.record}).status, 0);
  }
  EXPECT_THAT(whole_file(session.record), HasSubstr("\"resumed\""));
}

TEST(ReadProgram, AnotherPlanIsRefusedInASentence) {
  Session session;
  const std::string told = session.folder / "told";
  Background tester({"simulate", session.plan, "--rate", "40"}, told);
  const std::string port = first_line_of(told);
  auto arguments = session.read_arguments(port);
  arguments.insert(arguments.end(), {"--seconds", "1"});
  const auto first = run_walkdown(arguments);
  EXPECT_EQ(first.status, 0) << first.out << first.err;
  session.folder.put("plan.csv", std::string(kPlan) + "5,A,1,1,5,standard,1,AWG24,5\n");
  const auto said = run_walkdown(arguments);
  EXPECT_EQ(said.status, 2);
  EXPECT_THAT(said.err, HasSubstr("opened with another"));
}

TEST(ReadProgram, APortThatIsNotThereIsNamed) {
  Session session;
  const auto said = run_walkdown(session.read_arguments("/dev/no-such-port"));
  EXPECT_EQ(said.status, 2);
  EXPECT_THAT(said.err, HasSubstr("/dev/no-such-port"));
}

}  // namespace
}  // namespace walkdown::cli
