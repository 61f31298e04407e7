// SPDX-License-Identifier: Apache-2.0
// The day from a terminal: each command a program of its own, all on one record.
#include <fcntl.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/file.h>
#include <unistd.h>

#include <nlohmann/json.hpp>

#include "tests/cli/program.h"

namespace walkdown::cli {
namespace {

using testing::HasSubstr;
using testing::Not;

constexpr const char* kPlan =
    "cue,position,module,rail,pin,igniter,count,wire,lead_m\n"
    "1,A,1,1,1,standard,1,AWG24,5\n";

// Nothing in it that a terminal cannot answer in a second or two.
constexpr const char* kChecklist = R"(
name = "short"
source = "a test"
show_length = "5m"
release_second = ["safety"]
[[key]]
name = "arming key"
starts = "lock box"
firing = "firing position"
[[stage]]
id = "clear"
title = "Clear"
[[stage.item]]
id = "field"
question = "Who is out there?"
kind = "headcount"
[[stage.item]]
id = "edge"
question = "What is inside the line?"
kind = "confirm"
by = ["safety"]
choices = ["nobody", "a person"]
good = ["nobody"]
broken_by = ["hold", "restart"]
[[stage.item]]
id = "key"
question = "Who has the key?"
kind = "custody"
key = "arming key"
places = ["role:lead", "firing position"]
)";

class DayProgram : public testing::Test {
 protected:
  DayProgram() {
    for (const char* name : {"Mara Linde", "Jon Weir"}) {
      EXPECT_EQ(run({"crew", "add", name, "--dir", crew, "--passphrase-file", secret}).status, 0);
    }
    EXPECT_EQ(day({"open", "--plan", folder.put("plan.csv", kPlan), "--checklist",
                   folder.put("short.toml", kChecklist)})
                  .status,
              0);
    day({"enrol", "Mara Linde", "lead", "--dir", crew});
    day({"enrol", "Jon Weir", "safety", "--dir", crew});
  }

  static Said run(const std::vector<std::string>& arguments, const std::string& input = "") {
    return run_walkdown(arguments, input);
  }
  Said day(std::vector<std::string> arguments, const std::string& input = "") {
    arguments.insert(arguments.begin(), "day");
    for (const std::string& each :
         {std::string("--record"), record, std::string("--key"), folder / "station.key"}) {
      arguments.push_back(each);
    }
    return run(arguments, input);
  }
  Said sign(const char* who, std::vector<std::string> arguments, const std::string& input = "") {
    for (const std::string& each : {std::string("--as"), std::string(who), std::string("--dir"),
                                    crew, std::string("--passphrase-file"), secret}) {
      arguments.push_back(each);
    }
    return day(std::move(arguments), input);
  }
  nlohmann::json status() {
    return nlohmann::json::parse(run({"day", "status", "--record", record, "--json"}).out);
  }

  Folder folder;
  std::string crew = folder / "crew";
  std::string secret = folder.put("secret", "kiln-and-copper\n");
  std::string record = folder / "today.record";
};

TEST_F(DayProgram, ADayToItsReleaseAndClose) {
  EXPECT_EQ(sign("Mara Linde", {"key", "take"}).status, 0);
  const auto asked = sign("Jon Weir", {"answer", "edge"}, "1\n");
  EXPECT_EQ(asked.status, 0) << asked.err;
  EXPECT_THAT(asked.out, HasSubstr("What is inside the line?"));
  EXPECT_THAT(asked.out, HasSubstr("edge holds: nobody"));
  EXPECT_EQ(status()["word"], "ready");
  EXPECT_EQ(sign("Mara Linde", {"release"}).status, 0);
  EXPECT_EQ(run({"day", "status", "--record", record}).status, 1) << "a signature is missing";
  const auto released = sign("Jon Weir", {"second"});
  EXPECT_THAT(released.out, HasSubstr("released by Mara Linde and Jon Weir"));
  EXPECT_EQ(run({"day", "status", "--record", record}).status, 0);

  const auto held = day({"hold", "somebody at the edge"});
  EXPECT_EQ(held.status, 0);
  EXPECT_THAT(held.out, HasSubstr("the release fell: somebody called a hold"));
  EXPECT_EQ(day({"close", "--reason", "the end"}).status, 0);
  EXPECT_EQ(day({"note", "late"}).status, 2);
  EXPECT_EQ(run({"verify", record}).status, 0);
}

TEST_F(DayProgram, WhatIsRefusedIsSaidAndNotWritten) {
  const auto entries = status()["entries"];
  const auto refused = sign("Jon Weir", {"release"});
  EXPECT_EQ(refused.status, 2);
  EXPECT_THAT(refused.err, HasSubstr("the gate is shut: edge is open"));
  const auto stranger = sign("Edda Horn", {"release"});
  EXPECT_EQ(stranger.status, 2);
  EXPECT_THAT(stranger.err, HasSubstr("nobody of this name is enrolled: Edda Horn"));
  EXPECT_EQ(status()["entries"], entries.get<int>() + 1)
      << "the program came once: a stranger is refused before the record is opened";
}

TEST_F(DayProgram, AnAnswerWithoutTheQuestionIsFlagged) {
  sign("Jon Weir", {"answer", "edge", "nobody"});
  EXPECT_EQ(status()["items"][1]["standing"], "holds");
  EXPECT_EQ(status()["items"][1]["fast"], true);
}

TEST_F(DayProgram, AWrongPassphraseSignsNothing) {
  const auto wrong = day({"release", "--as", "Mara Linde", "--dir", crew, "--passphrase-file",
                          folder.put("wrong", "kiln-and-coppar")});
  EXPECT_EQ(wrong.status, 2);
  EXPECT_THAT(wrong.err, HasSubstr("the passphrase is wrong"));
}

TEST_F(DayProgram, AWitnessSignsTheHeadElsewhere) {
  EXPECT_EQ(run({"crew", "add", "Olga Brandt", "--dir", crew, "--passphrase-file", secret}).status,
            0);
  day({"enrol", "Olga Brandt", "witness", "--dir", crew});
  const std::string head = folder / "head.note";
  const std::string signed_note = folder / "signed.note";
  ASSERT_EQ(run({"day", "witness", "head", "--record", record, "-o", head}).status, 0);
  ASSERT_EQ(run({"day", "witness", "sign", head, "--as", "Olga Brandt", "--dir", crew,
                 "--passphrase-file", secret, "-o", signed_note})
                .status,
            0);
  day({"note", "the record goes on meanwhile"});
  const auto added = day({"witness", "add", signed_note});
  EXPECT_EQ(added.status, 0) << added.err;
  EXPECT_EQ(run({"verify", record}).status, 0);
  EXPECT_THAT(day({"witness", "add", secret}).status, 2);
}

TEST_F(DayProgram, ASecondWriterIsToldWhatToDo) {
  const int other = ::open(record.c_str(), O_RDONLY | O_CLOEXEC);
  ASSERT_EQ(::flock(other, LOCK_EX | LOCK_NB), 0);
  const auto refused = day({"thunder"});
  EXPECT_EQ(refused.status, 2);
  EXPECT_THAT(refused.err, HasSubstr("act in that program, or end it first"));
  EXPECT_EQ(run({"day", "status", "--record", record}).status, 1) << "but anybody may look";
  ::close(other);
  EXPECT_EQ(day({"thunder"}).status, 0);
}

TEST_F(DayProgram, ARefusalNamesWhatThereIs) {
  for (const std::vector<std::string>& words :
       {std::vector<std::string>{"day", "nonsense"}, {"day"}}) {
    const auto said = run(words);
    EXPECT_EQ(said.status, 2);
    for (const char* each : {"status", "hold", "release", "key", "wind"}) {
      EXPECT_THAT(said.err, HasSubstr(each)) << words.back();
    }
  }
  EXPECT_THAT(run({"day", "nonsense"}).err,
              HasSubstr("walkdown day has no command \"nonsense\"; choose one of"));
  EXPECT_THAT(run({"day", "key", "eat"}).err,
              HasSubstr("walkdown day key has no command \"eat\"; choose one of: take, offer"));
  EXPECT_THAT(run({"daze"}).err, HasSubstr("walkdown has no command \"daze\"; choose one of"));
  EXPECT_THAT(sign("Jon Weir", {"answer", "nothing", "nobody"}).err,
              HasSubstr("choose one of these: field, edge, key"));
  EXPECT_THAT(sign("Jon Weir", {"answer", "edge", "a dog"}).err,
              HasSubstr("choose what was seen: nobody, a person"));
  EXPECT_THAT(sign("Mara Linde", {"pause", "tidy"}).err, HasSubstr("choose one of these: clear"));
  EXPECT_THAT(sign("Mara Linde", {"second", "7"}).err, HasSubstr("let the first person sign"));
}

TEST_F(DayProgram, NothingIsTakenBackThatWasNotReleased) {
  const auto entries = whole_file(record).size();
  const auto said = day({"withdraw", "rain"});
  EXPECT_EQ(said.status, 2);
  EXPECT_THAT(said.err, HasSubstr("nothing is released"));
  EXPECT_EQ(whole_file(record).find("withdraw", entries), std::string::npos);
}

TEST_F(DayProgram, NoRecordIsNoDay) {
  EXPECT_THAT(run({"day", "hold", "--record", folder / "none"}).err,
              HasSubstr("there is no such record"));
}

// What a reader of a record may hand over in its place, each told in one sentence.
TEST_F(DayProgram, WhatIsNoRecordIsSaidToBeNone) {
  EXPECT_THAT(run({"verify", folder / "."}).err, HasSubstr("it is a folder, name a file in it"));
  const std::string part = folder / "part.extract";
  ASSERT_EQ(run({"extract", record, "--where", "kind=enrol", "-o", part}).status, 0);
  for (const std::vector<std::string>& words :
       {std::vector<std::string>{"report", part, "-o", folder / "r.html"},
        {"export", part, "--readings", folder / "r.csv"},
        {"extract", part, "--where", "kind=enrol", "-o", folder / "again"},
        {"day", "status", "--record", part}}) {
    const auto said = run(words);
    EXPECT_EQ(said.status, 2) << words.front();
    EXPECT_THAT(said.err, HasSubstr("this is an extract of a record")) << words.front();
  }
  EXPECT_THAT(run({"verify", record, "--keys", folder.put("k.txt", "Jon Weir\n")}).err,
              HasSubstr("k.txt, row 1"));
  EXPECT_THAT(run({"report", record, "-o", folder / "none/r.html"}).err,
              Not(HasSubstr("r.html.part")));
}

// The mark for the permit is shown while the day goes on, and is found again when it has.
TEST_F(DayProgram, TheMarkOfAMomentIsShownAndFoundAgain) {
  const std::string status = run({"day", "status", "--record", record}).out;
  const auto at = status.find("for the permit: ");
  ASSERT_NE(at, std::string::npos) << status;
  const std::string mark = status.substr(at + 16, 19);
  ASSERT_EQ(day({"note", "the gates are open"}).status, 0);
  const auto later = run({"verify", record, "--mark", mark});
  EXPECT_EQ(later.status, 0) << later.out;
  EXPECT_THAT(later.out, HasSubstr("it shows nothing of what came after"));
  EXPECT_EQ(run({"verify", record, "--mark", "0000 0000 0000 0000"}).status, 1);
}

TEST(ShowProgram, PackCheckUnpack) {
  const Folder folder;
  const std::string plan = folder.put("plan.csv", kPlan);
  const std::string packed = folder / "a.show";
  ASSERT_EQ(run_walkdown({"show", "pack", "--plan", plan, "--checklist", "club-show", "-o", packed})
                .status,
            0);
  const auto checked = run_walkdown({"show", "check", packed});
  EXPECT_EQ(checked.status, 0) << checked.err;
  EXPECT_THAT(checked.out, HasSubstr("Small club show"));
  EXPECT_EQ(run_walkdown({"show", "unpack", packed, "-o", folder / "out"}).status, 0);
  EXPECT_EQ(whole_file(folder / "out/plan.csv"), kPlan);
  EXPECT_EQ(run_walkdown({"show", "unpack", packed, "-o", folder / "out"}).status, 2)
      << "nothing is written over";
  EXPECT_THAT(run_walkdown({"show", "check", "--plan", plan, "--checklist", "evening"}).err,
              HasSubstr("or one of these: evening-show, club-show"));
  const auto bad = run_walkdown(
      {"show", "check", "--plan", plan, "--checklist", folder.put("bad.toml", "name = 1\n")});
  EXPECT_EQ(bad.status, 2);
  EXPECT_THAT(bad.err, HasSubstr("bad.toml, line 1"));
}

TEST(CrewProgram, KeysAreListedAndExported) {
  const Folder folder;
  const std::string crew = folder / "crew";
  const std::string secret = folder.put("secret", "river-and-stone\n");
  ASSERT_EQ(
      run_walkdown({"crew", "add", "Jon Weir", "--dir", crew, "--passphrase-file", secret}).status,
      0);
  EXPECT_EQ(
      run_walkdown({"crew", "add", "Jon Weir", "--dir", crew, "--passphrase-file", secret}).status,
      2);
  EXPECT_THAT(run_walkdown({"crew", "list", "--dir", crew}).out, HasSubstr("Jon Weir"));
  const auto keys = run_walkdown({"crew", "export", "--dir", crew}).out;
  EXPECT_THAT(keys, HasSubstr("Jon_Weir+"));
  EXPECT_THAT(keys, Not(HasSubstr("box")));
}

}  // namespace
}  // namespace walkdown::cli
