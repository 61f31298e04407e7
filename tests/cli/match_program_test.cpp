// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "tests/cli/program.h"

namespace walkdown::cli {
namespace {

using nlohmann::json;
using testing::ContainsRegex;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

// Pins far apart in resistance, so that nothing hides: 1, 2, 3 and 5 igniters in series.
constexpr const char* kPlan =
    "cue,position,module,rail,pin,igniter,count,wire,lead_m\n"
    "1,A,1,1,1,standard,1,AWG24,5\n"
    "2,A,1,1,2,standard,2,AWG24,5\n"
    "3,A,1,1,3,standard,3,AWG24,5\n"
    "4,A,1,1,4,standard,5,AWG24,5\n";
constexpr const char* kSound =
    "M01,R1,P01,2.55,ohm\nM01,R1,P02,4.25,ohm\nM01,R1,P03,5.95,ohm\nM01,R1,P04,9.35,ohm\n";

json match(const Folder& folder, const char* lines, int status) {
  const auto said = run_walkdown(
      {"match", folder.put("plan.csv", kPlan), folder.put("sweep.txt", lines), "--json"});
  EXPECT_EQ(said.status, status) << said.err;
  return json::parse(said.out);
}

TEST(MatchProgram, ASoundSweepIsNothingToActOn) {
  const Folder folder;
  const json got = match(folder, kSound, 0);
  ASSERT_EQ(got["pins"].size(), 4U);
  const json& pin = got["pins"][0];
  EXPECT_EQ(pin["pin"], "M01/R1/P01");
  EXPECT_EQ(pin["verdict"], "fits");
  EXPECT_NEAR(pin["ohm"].get<double>(), 2.55, 1e-9);
  EXPECT_LT(pin["low"].get<double>(), 2.55);
  EXPECT_GT(pin["high"].get<double>(), 2.55);
  EXPECT_EQ(pin["readings"], 1);
  EXPECT_TRUE(got["findings"].empty());
  EXPECT_TRUE(got["alike"].empty());
  EXPECT_TRUE(got["rejected"].empty());
}

TEST(MatchProgram, SaysWhatHappenedAndWhatWasRejected) {
  const Folder folder;
  const json got = match(folder,
                         "M01,R1,P01,4.25,ohm\nM01,R1,P02,2.55,ohm\nnoise\n"
                         "M01,R1,P03,5.95,ohm\nM01,R1,P04,OL,ohm\n",
                         1);
  ASSERT_EQ(got["findings"].size(), 2U);
  const json& swapped = got["findings"][0];
  EXPECT_EQ(swapped["kind"], "swapped");
  EXPECT_EQ(swapped["pins"], json({"M01/R1/P01", "M01/R1/P02"}));
  EXPECT_GT(swapped["confidence"].get<double>(), 0.5);
  EXPECT_THAT(swapped["say"].get<std::string>(), HasSubstr("module 1"));
  EXPECT_EQ(got["findings"][1]["kind"], "open");
  EXPECT_EQ(got["pins"][3]["verdict"], "open");
  EXPECT_TRUE(got["pins"][3]["ohm"].is_null());
  ASSERT_EQ(got["rejected"].size(), 1U);
  EXPECT_EQ(got["rejected"][0]["line"], 3);
  EXPECT_EQ(got["rejected"][0]["text"], "noise");
  EXPECT_FALSE(got["rejected"][0]["why"].get<std::string>().empty());
}

TEST(MatchProgram, NoReadingsAtAllIsNothingGood) {
  const Folder folder;
  const json got = match(folder, "", 1);
  for (const auto& pin : got["pins"]) EXPECT_EQ(pin["verdict"], "unread");
  EXPECT_TRUE(got["findings"].empty());
}

TEST(MatchProgram, AfterTheShowAnOpenPinProvesNothingAndALoadIsAMisfire) {
  const Folder folder;
  const std::string plan = folder.put("plan.csv", kPlan);
  const std::string before = folder.put("before.txt", kSound);
  const std::string after =
      folder.put("after.txt", "M01,R1,P01,OL,ohm\nM01,R1,P02,4.25,ohm\nM01,R1,P03,OL,ohm\n");
  const auto said = run_walkdown({"match", plan, after, "--after", "--before", before, "--json"});
  EXPECT_EQ(said.status, 1) << said.err;
  const json got = json::parse(said.out);
  EXPECT_EQ(got["pins"][0]["word"], "open");
  EXPECT_EQ(got["pins"][1]["word"], "did-not-fire");
  EXPECT_EQ(got["pins"][2]["word"], "open-series");
  EXPECT_EQ(got["pins"][3]["word"], "unread");
  EXPECT_EQ(got["possible_misfires"], json({"M01/R1/P02", "M01/R1/P03", "M01/R1/P04"}));
  const auto text = run_walkdown({"match", plan, after, "--after", "--before", before});
  EXPECT_THAT(text.out, HasSubstr("waiting time"));
  EXPECT_EQ(text.out.find("fired"), std::string::npos) << "nothing is ever called fired";
  EXPECT_EQ(run_walkdown({"match", plan, after, "--before", before}).status, 2);
}

TEST(MatchProgram, ReadsStandardInput) {
  const Folder folder;
  const auto said = run_walkdown({"match", folder.put("plan.csv", kPlan), "-", "--json"}, kSound);
  EXPECT_EQ(said.status, 0) << said.err;
}

TEST(MatchProgram, EveryMistakeOfAPlanIsASentenceAndNothingIsDone) {
  const Folder folder;
  const auto said = run_walkdown(
      {"match", folder.put("plan.csv", "cue,module,rail,pin,igniter\n1,0,1,1,standard\n,1,1,x,?\n"),
       folder.put("sweep.txt", kSound)});
  EXPECT_EQ(said.status, 2);
  EXPECT_THAT(said.out, IsEmpty());
  EXPECT_THAT(said.err, HasSubstr("row 2, column module, '0'"));
  EXPECT_THAT(said.err, HasSubstr("row 3, column cue"));
  EXPECT_THAT(said.err, HasSubstr("row 3, column pin, 'x'"));
  EXPECT_THAT(said.err, HasSubstr("row 3, column igniter, '?'"));
}

TEST(MatchProgram, WhatIsNotThereIsNamed) {
  const auto said = run_walkdown({"match", "/no/such/plan.csv", "-"});
  EXPECT_EQ(said.status, 2);
  EXPECT_THAT(said.err, HasSubstr("/no/such/plan.csv"));
}

TEST(Program, EveryCommandShowsAnExample) {
  for (const char* command : {"demo", "plan", "match", "read", "simulate", "verify", "extract"}) {
    const auto said = run_walkdown({command, "--help"});
    EXPECT_EQ(said.status, 0) << command;
    EXPECT_THAT(said.out, ContainsRegex(std::string("Example(: |s:\n  )walkdown ") + command));
  }
}

TEST(Program, UsageMistakesEndWithTwo) {
  EXPECT_EQ(run_walkdown({}).status, 2);
  EXPECT_EQ(run_walkdown({"no-such-command"}).status, 2);
  EXPECT_EQ(run_walkdown({"match"}).status, 2);
}

constexpr const char* kSupplied =
    "[igniter.standard]\nbridge_ohm = [1.4, 1.9]\nsource = \"invented\"\nall_fire_a = 0.5\n"
    "[supply]\nvolt = [4, 5]\nsource_ohm = 0.5\nsource = \"invented\"\n";

TEST(MatchProgram, JudgesTheFiringCurrentByWhatWasMeasured) {
  const Folder folder;
  // By Ohm's law 4 V over 0.5 ohm and the loop: 0.75 A and more up to 4.8 ohm, 0.5 A up to 7.5 ohm.
  const auto said =
      run_walkdown({"match", folder.put("plan.csv", kPlan),
                    folder.put("sweep.txt",
                               "M01,R1,P01,OL,ohm\nM01,R1,P02,4.25,ohm\nM01,R1,P03,5.95,ohm\n"
                               "M01,R1,P04,9.35,ohm\n"),
                    "--igniters", folder.put("igniters.toml", kSupplied), "--json"});
  EXPECT_EQ(said.status, 1);
  const json current = json::parse(said.out)["current"];
  EXPECT_EQ(current["ok"], 1);
  EXPECT_EQ(current["thin"], 1);
  EXPECT_EQ(current["short"], 1);
  EXPECT_EQ(current["unmeasured"], 1) << "an open loop gets no current, whatever was planned";
  ASSERT_EQ(current["pins"].size(), 2U);
  EXPECT_EQ(current["pins"][0]["pin"], "M01/R1/P03");
  EXPECT_NEAR(current["pins"][0]["least_a"], 4 / (0.5 + 5.95), 0.02);
}

TEST(MatchProgram, SaysThatTheFiringCurrentCannotBeJudged) {
  const Folder folder;
  const json current = match(folder, kSound, 0)["current"];
  EXPECT_EQ(current["cannot_be_told"], 4);
  EXPECT_THAT(current["say"].get<std::string>(), HasSubstr("cannot be judged"));
}

TEST(MatchProgram, PutsTheFindingsInWalkingOrder) {
  const Folder folder;
  // Degrees as text: std::to_string would follow the locale that the tests are run under.
  const auto point = [](const char* name, const char* east) {
    return std::string(R"({"type":"Feature","properties":{"role":"position","name":")") + name +
           R"("},"geometry":{"type":"Point","coordinates":[)" + east + ",45]}}";
  };
  const std::string site = R"({"type":"FeatureCollection","features":[)" + point("far", "0.003") +
                           "," + point("near", "0.001") + "," + point("start", "0") + "]}";
  const auto said =
      run_walkdown({"match",
                    folder.put("plan.csv",
                               "cue,position,module,rail,pin,igniter,count,wire,lead_m\n"
                               "1,far,1,1,1,standard,1,AWG24,5\n2,near,2,1,1,standard,2,AWG24,5\n"),
                    folder.put("sweep.txt", "M01,R1,P01,OL,ohm\nM02,R1,P01,OL,ohm\n"), "--site",
                    folder.put("site.geojson", site), "--from", "start", "--json"});
  ASSERT_EQ(said.status, 1) << said.err;
  const json walk = json::parse(said.out)["walk"];
  ASSERT_EQ(walk["order"].size(), 2U);
  EXPECT_EQ(walk["order"][0]["place"], "near");
  EXPECT_EQ(walk["order"][0]["findings"], json::array({1}));
  EXPECT_EQ(walk["order"][1]["place"], "far");
  // 0.003 degrees of longitude at 45 degrees north, on a sphere of 6,371,008.8 m: 235.9 m.
  EXPECT_NEAR(walk["metres"], 235.9, 0.5);
}

TEST(MatchProgram, SaysThatTheTesterJumps) {
  const Folder folder;
  const auto said = [&](int hundredths) {
    std::string plan = "cue,position,module,rail,pin,igniter,count,wire,lead_m\n";
    std::string lines;
    for (int pin = 1; pin <= 60; ++pin) {
      plan += fmt::format("{0},A,1,1,{0},standard,1,AWG24,5\n", pin);
      for (int reading = 0; reading < 3; ++reading) {
        const int off = (pin + reading) % 3 - 1;
        lines += fmt::format("M01,R1,P{:02},2.{},ohm\n", pin, 55 + off * hundredths);
      }
    }
    return run_walkdown({"match", folder.put("plan.csv", plan), folder.put("sweep.txt", lines)})
        .out;
  };
  EXPECT_THAT(said(8), HasSubstr("The tester jumps"));
  EXPECT_THAT(said(1), Not(HasSubstr("The tester jumps")));
}

// Module 1 has a free pin where module 2 has a load, and one load more is open: all that shows of
// the exchange is one number on the free pin and one pin over range.
TEST(MatchProgram, AnExchangeThatOnePairOfPinsShows) {
  const Folder folder;
  std::string plan = "cue,position,module,rail,pin,igniter,count,wire,lead_m\n";
  std::string lines;
  for (int module = 1; module <= 3; ++module) {
    for (int pin = 1; pin <= 10; ++pin) {
      const bool is_free = (module == 1 && pin == 3) || (module == 3 && pin == 7);
      if (!is_free) plan += fmt::format("{0},A,{1},1,{2},standard,1,AWG24,5\n", pin, module, pin);
      const bool over =
          (module == 2 && pin == 3) || (module == 3 && pin == 7) || (module == 1 && pin == 9);
      for (int reading = 0; reading < 2; ++reading) {
        lines += fmt::format("M{:02},R1,P{:02},{},ohm\n", module, pin, over ? "OL" : "2.55");
      }
    }
  }
  const auto said = run_walkdown(
      {"match", folder.put("plan.csv", plan), folder.put("sweep.txt", lines), "--json"});
  ASSERT_EQ(said.status, 1) << said.err;
  const json findings = json::parse(said.out)["findings"];
  ASSERT_EQ(findings.size(), 2U) << findings;
  EXPECT_EQ(findings[0]["kind"], "modules-exchanged");
  EXPECT_EQ(findings[1]["kind"], "open");
  EXPECT_EQ(findings[1]["pins"], json::array({"M01/R1/P09"}));
}

TEST(MatchProgram, WithoutASiteTheWalkHasNoLength) {
  const Folder folder;
  const json walk =
      match(folder, "M01,R1,P01,OL,ohm\nM01,R1,P02,4.25,ohm\nM01,R1,P03,5.95,ohm\n", 1)["walk"];
  EXPECT_TRUE(walk["metres"].is_null());
  EXPECT_EQ(walk["order"][0]["place"], "A");
}

}  // namespace
}  // namespace walkdown::cli
