// SPDX-License-Identifier: Apache-2.0
// A whole evening by a script of `walkdown day` commands, with everything that must be refused on
// the way: a small club show of two pins, from the opening to the close.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <chrono>
#include <ctime>
#include <nlohmann/json.hpp>
#include <thread>

#include "checklist/desk/crew.h"
#include "tests/cli/program.h"

namespace walkdown::cli {
namespace {

using testing::HasSubstr;

constexpr const char* kPlan =
    "cue,position,module,rail,pin,igniter,count,wire,lead_m,calibre_mm\n"
    "1,A,1,1,1,standard,1,AWG24,5,50\n"
    "2,A,1,1,2,standard,2,AWG24,5,50\n";
constexpr const char* kSite = R"({"type":"FeatureCollection","features":[
{"type":"Feature","properties":{"role":"position","name":"A"},
 "geometry":{"type":"Point","coordinates":[-35.2,44.601]}},
{"type":"Feature","properties":{"role":"audience","name":"Lawn"},
 "geometry":{"type":"LineString","coordinates":[[-35.201,44.598],[-35.199,44.598]]}}]})";
constexpr const char* kWord = "kiln-and-copper";

// Two hours from now, as it is typed.
std::string show_time() {
  const std::time_t at = std::time(nullptr) + 2 * 3600;
  std::tm parts{};
  gmtime_r(&at, &parts);
  std::array<char, 32> text{};
  std::strftime(text.data(), text.size(), "%Y-%m-%dT%H:%M:00+00:00", &parts);
  return text.data();
}

// One line of the script.
struct Step {
  const char* who;  // who signs; empty: nobody
  std::vector<std::string> words;
  std::string typed = {};  // at the question
  int status = 0;
  const char* says = "";  // on standard output, or on standard error where it is refused
};

class EveningScript : public testing::Test {
 protected:
  EveningScript() {
    const desk::Crew crew(crew_folder);
    for (const char* name : {"Mara Linde", "Jon Weir", "Edda Horn"}) {
      EXPECT_TRUE(crew.add(name, kWord, record::Cost::interactive).ok());
    }
    play({{"", {"open", "--plan", plan, "--site", site, "--checklist", "club-show"}, "", 0, "open"},
          {"", {"enrol", "Mara Linde", "lead", "--dir", crew_folder}, "", 0, "enrolled as lead"},
          {"", {"enrol", "Jon Weir", "safety", "--dir", crew_folder}},
          {"", {"enrol", "Edda Horn", "crew", "--dir", crew_folder}}});
  }

  void play(const std::vector<Step>& script) {
    for (const Step& step : script) {
      std::vector<std::string> words = {"day"};
      words.insert(words.end(), step.words.begin(), step.words.end());
      words.insert(words.end(), {"--record", record, "--key", station});
      if (*step.who != '\0') {
        words.insert(words.end(),
                     {"--as", step.who, "--dir", crew_folder, "--passphrase-file", secret});
      }
      const Said said = run_walkdown(words, step.typed);
      const std::string all = step.words[0] + " " + (step.words.size() > 1 ? step.words[1] : "");
      EXPECT_EQ(said.status, step.status) << all << ": " << said.out << said.err;
      EXPECT_THAT(step.status == 2 ? said.err : said.out, HasSubstr(step.says)) << all;
      if (step.status == 2) {
        EXPECT_THAT(said.err, HasSubstr("; ")) << all << " says no way on";
      }
    }
  }

  // The tester is walked once along every pin.
  void read_the_field() {
    const std::string told = folder / "tester";
    const Background tester({"simulate", plan, "--rate", "200", "--sweeps", "3"}, told);
    for (int i = 0; i < 1'000 && whole_file(told).find('\n') == std::string::npos; ++i) {
      std::this_thread::sleep_for(std::chrono::milliseconds(10));
    }
    const std::string port = whole_file(told).substr(0, whole_file(told).find('\n'));
    const auto read = run_walkdown(
        {"read", "--port", port, "--plan", plan, "--record", record, "--key", station, "--once"});
    EXPECT_EQ(read.status, 0) << read.out << read.err;
  }

  std::string word() {
    const auto said = run_walkdown({"day", "status", "--record", record, "--json"});
    return nlohmann::json::parse(said.out).at("word");
  }

  Folder folder;
  std::string plan = folder.put("plan.csv", kPlan);
  std::string site = folder.put("site.geojson", kSite);
  std::string secret = folder.put("secret", std::string(kWord) + "\n");
  std::string crew_folder = folder / "crew";
  std::string station = folder / "station.key";
  std::string record = folder / "tonight.record";
};

constexpr const char* kMara = "Mara Linde";
constexpr const char* kJon = "Jon Weir";
constexpr const char* kEdda = "Edda Horn";

TEST_F(EveningScript, FromTheOpeningToTheClose) {
  play({
      // Nothing is there yet, and each of these says so.
      {kMara, {"release"}, "", 2, "the gate is shut"},
      {kJon, {"second"}, "", 2, "nothing waits for a second signature"},
      {"", {"withdraw", "rain"}, "", 2, "nothing is released"},
      {kMara, {"lift", "over"}, "", 2, "no hold is on"},
      {kMara, {"pause", "set"}, "", 2, "is open"},
      {kMara, {"answer", "last-shot", "22:31"}, "", 2, "nothing was released yet"},
      {kJon, {"key", "take"}, "", 2, "may not do this as safety; let a lead do it"},
      {kJon, {"show-time", show_time()}, "", 2, "let a lead do it"},
      {kMara, {"show-time", show_time()}, "", 0, "set the show for"},
      // Into the field: the key stays where it is.
      {"", {"tag", "hang", kEdda}, "", 0, "Edda Horn hung a tag"},
      {"", {"in", kEdda}, "", 0, "Edda Horn is in the field"},
      {kMara, {"key", "take"}, "", 2, "the tag of Edda Horn is not back; let its owner"},
  });
  read_the_field();
  play({
      {kEdda, {"answer", "alike"}, "1\n", 0, "alike holds"},
      {kMara, {"out", kEdda}, "", 2, "only the owner can do this alone; give a reason"},
      {kEdda, {"out"}, "", 0, "Edda Horn is out of the field"},
      {kMara, {"tag", "back", kEdda}, "", 2, "only the owner"},
      {kEdda, {"tag", "back"}, "", 0, "the tag of Edda Horn is back"},
      {kMara, {"answer", "distances"}, "1\n", 0, "distances holds"},
      {kEdda, {"answer", "water", "12"}, "", 0, "water is refused: 12 l is below 20 l"},
      {kEdda, {"answer", "water", "plenty"}, "", 2, "write"},
      {kEdda, {"answer", "water", "30"}, "", 0, "water holds: 30 l"},
      {kMara, {"pause", "set"}, "", 0, "closed the pause after set"},
      {kMara, {"pause", "set"}, "", 2, "Mara Linde has closed this pause already"},
      // Clear.
      {kJon, {"answer", "edge"}, "2\n", 0, "edge is refused: was found: a person"},
      {kJon, {"answer", "edge"}, "1\n", 0, "edge holds: nobody"},
      {kJon, {"wind", "--mean", "6", "--gust", "5", "--period", "2m"}, "", 2, "no lower than it"},
      {kJon, {"wind", "--mean", "9.5", "--gust", "12", "--period", "2m"}, "", 0, "above 8.9 m/s"},
      {kJon, {"wind", "--mean", "4.2", "--gust", "6.1", "--period", "2m"}, "", 0, "wind holds"},
      {kMara, {"key", "take"}, "", 0, "key holds"},
  });
  EXPECT_EQ(word(), "ready");
  play({
      {kMara, {"release"}, "", 0, "release signed by Mara Linde"},
      {kMara, {"second"}, "", 2, "one person cannot sign twice"},
      {kEdda, {"second"}, "", 2, "Edda Horn may not do this as crew"},
      {kJon, {"second"}, "", 0, "released by Mara Linde and Jon Weir"},
      {kMara, {"key", "put", "firing position"}, "", 0, "went from Mara Linde to the firing"},
      // A hold brings it down, and everything under it is asked anew.
      {"", {"hold", "a boat", "--by", kEdda}, "", 0, "the release fell: Edda Horn called a hold"},
      {kMara, {"release"}, "", 2, "the gate is shut: Edda Horn called a hold: a boat"},
      {kJon, {"lift", "it has gone"}, "", 2, "let a lead do it"},
      {kMara, {"lift", "it has gone"}, "", 0, "the hold was lifted"},
      {kMara, {"release"}, "", 2, "edge is broken: a hold was called"},
      {kJon, {"answer", "edge"}, "1\n", 0, "edge holds"},
      {kMara, {"release"}, "", 0, "release signed"},
      {kJon, {"second"}, "", 0, "released by"},
  });
  EXPECT_EQ(word(), "released");
  play({
      {kMara, {"answer", "last-shot", "22:31, cue 2"}, "", 0, "last-shot holds"},
      {kEdda, {"answer", "sweep"}, "1\n", 2, "sweep rests on misfire-wait, which is open: wait"},
      {kJon, {"key", "take"}, "", 2, "let a lead do it"},
      {kMara, {"key", "take"}, "", 0, "from the firing position to Mara Linde"},
      {kMara, {"key", "put", "pocket"}, "", 2, "choose one of these: lock box, firing position"},
      {kMara, {"key", "put", "lock box"}, "", 0, "to the lock box"},
      {"", {"close", "--reason", "field handed back"}, "", 0, "The record is closed"},
      {"", {"hold"}, "", 2, "The hold is NOT recorded: shout."},
      {"", {"note", "late"}, "", 2, "the record was closed"},
  });
  EXPECT_EQ(run_walkdown({"verify", record}).status, 0);
  EXPECT_EQ(run_walkdown({"report", record, "-o", folder / "tonight.html"}).status, 0);
  EXPECT_THAT(whole_file(folder / "tonight.html"), HasSubstr("Edda Horn called a hold: a boat"));
}

}  // namespace
}  // namespace walkdown::cli
