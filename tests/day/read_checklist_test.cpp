// SPDX-License-Identifier: Apache-2.0
#include "checklist/day/read_checklist.h"

#include <gmock/gmock.h>

#include <string>

namespace walkdown::day {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

const std::string kHead =
    "name = \"n\"\n"
    "source = \"s\"\n"
    "release_second = [\"safety\"]\n"
    "[[key]]\n"
    "name = \"arming key\"\n"
    "starts = \"box\"\n"
    "firing = \"desk\"\n"
    "[[stage]]\n"
    "id = \"a\"\n"
    "title = \"A\"\n";

std::string item(const std::string& lines) { return "[[stage.item]]\n" + lines + "\n"; }

const std::string kEdge =
    "id = \"edge\"\nquestion = \"What do you see?\"\nkind = \"confirm\"\nby = [\"safety\"]\n"
    "choices = [\"nobody\", \"a person\"]\ngood = [\"nobody\"]\n";

std::vector<std::string> mistakes(const std::string& toml) {
  std::vector<std::string> all;
  for (const Error& each : read_checklist(toml, "c.toml").mistakes) all.push_back(each.sentence());
  return all;
}

TEST(ReadChecklist, ReadsWhatIsWritten) {
  const auto read = read_checklist(
      kHead +
          item(kEdge + "valid_for = \"20m\"\nsource = \"x\"\ndue = \"-10m\"\ntakes = \"2m\"\n"
                       "broken_by = [\"entered\", \"show-time\"]") +
          item("id = \"wind\"\nquestion = \"Wind?\"\nkind = \"wind\"\nby = [\"lead\"]\n"
               "gust_max_m_per_s = 11.1\nsource = \"x\"\nneeds = [\"edge\"]\nperiod = \"2m\""),
      "c.toml");
  ASSERT_THAT(read.mistakes, IsEmpty());
  ASSERT_THAT(read.checklist.items, SizeIs(2));
  const Item& edge = read.checklist.items[0];
  EXPECT_EQ(edge.valid_for_ms, 1'200'000);
  EXPECT_EQ(edge.due_ms, -600'000);
  EXPECT_TRUE(edge.breaks(Event::entered));
  EXPECT_TRUE(edge.breaks(Event::show_time));
  EXPECT_FALSE(edge.breaks(Event::hold));
  const Item& wind = read.checklist.items[1];
  EXPECT_EQ(wind.gust_max_mm_per_s, 11'100);
  EXPECT_EQ(wind.period_ms, 120'000);
  EXPECT_THAT(wind.needs, ElementsAre(0U));
  EXPECT_THAT(read.checklist.keys[0].places, ElementsAre("box", "desk"));
  EXPECT_THAT(read.checklist.lead, ElementsAre("lead"));
}

TEST(ReadChecklist, EveryMistakeIsListedWithItsLine) {
  const auto all = mistakes(kHead + item("id = \"x\"\nkind = \"vote\"\nby = 3\nvalid_for = \"1\""));
  EXPECT_THAT(all, testing::Contains(HasSubstr("question is missing: c.toml, line 11")));
  EXPECT_THAT(all, testing::Contains(HasSubstr("vote is no kind of item: c.toml, line 13")));
  EXPECT_THAT(all, testing::Contains(HasSubstr("by is not a list of words: c.toml, line 14")));
  EXPECT_THAT(all, testing::Contains(HasSubstr("valid_for is not a span")));
}

struct Bad {
  const char* lines;
  const char* why;
};

class BadItem : public testing::TestWithParam<Bad> {};

TEST_P(BadItem, IsRefused) {
  EXPECT_THAT(mistakes(kHead + item(kEdge) + item(GetParam().lines)),
              testing::Contains(HasSubstr(GetParam().why)));
}

INSTANTIATE_TEST_SUITE_P(
    ReadChecklist, BadItem,
    testing::Values(
        Bad{"id = \"edge\"\nquestion = \"q\"\nkind = \"headcount\"", "used twice"},
        Bad{"id = \"b\"\nquestion = \"q\"\nkind = \"text\"", "nobody may answer"},
        Bad{"id = \"b\"\nquestion = \"q\"\nkind = \"text\"\nby = [\"a\"]\nchoices = [\"u\", \"v\"]",
            "has no choices"},
        Bad{"id = \"b\"\nquestion = \"q\"\nkind = \"headcount\"\nsecond = [\"a\"]", "no first"},
        Bad{"id = \"b\"\nquestion = \"q\"\nkind = \"confirm\"\nby = [\"a\"]\n"
            "choices = [\"open\", \"N/A\"]\ngood = [\"open\"]",
            "does not say what was seen"},
        Bad{"id = \"b\"\nquestion = \"q\"\nkind = \"confirm\"\nby = [\"a\"]\nchoices = [\"open\"]\n"
            "good = [\"open\"]",
            "nothing to choose"},
        Bad{"id = \"b\"\nquestion = \"q\"\nkind = \"confirm\"\nby = [\"a\"]\n"
            "choices = [\"open\", \"shut\"]\ngood = [\"open\", \"shut\"]",
            "no choice would refuse"},
        Bad{"id = \"b\"\nquestion = \"q\"\nkind = \"confirm\"\nby = [\"a\"]\n"
            "choices = [\"open\", \"shut\"]\ngood = [\"ajar\"]",
            "cannot be chosen"},
        Bad{"id = \"b\"\nquestion = \"q\"\nkind = \"number\"\nby = [\"a\"]\nmin = 2", "unit"},
        Bad{"id = \"b\"\nquestion = \"q\"\nkind = \"number\"\nby = [\"a\"]\nunit = \"l\"\nmin = 2",
            "limit without a source"},
        Bad{"id = \"b\"\nquestion = \"q\"\nkind = \"number\"\nby = [\"a\"]\nunit = \"l\"\nmin = 2\n"
            "max = 1\nsource = \"s\"",
            "min is above max"},
        Bad{"id = \"b\"\nquestion = \"q\"\nkind = \"number\"\nby = [\"a\"]\nunit = \"l\"\n"
            "min = nan\nsource = \"s\"",
            "not a number"},
        Bad{"id = \"b\"\nquestion = \"q\"\nkind = \"wind\"\nby = [\"a\"]", "needs a limit"},
        Bad{"id = \"b\"\nquestion = \"q\"\nkind = \"wind\"\nby = [\"a\"]\nperiod = \"5m\"\n"
            "mean_max_m_per_s = 3\nsource = \"s\"",
            "10 min or 2 min"},
        Bad{"id = \"b\"\nquestion = \"q\"\nkind = \"thunder\"", "how long to wait"},
        Bad{"id = \"b\"\nquestion = \"q\"\nkind = \"wait\"\nwait = \"5m\"\nsource = \"s\"",
            "counts from nothing"},
        Bad{"id = \"b\"\nquestion = \"q\"\nkind = \"headcount\"\nneeds = [\"b\"]",
            "does not come before"},
        Bad{"id = \"b\"\nquestion = \"q\"\nkind = \"headcount\"\nneeds = [\"c\"]", "no item"},
        Bad{"id = \"b\"\nquestion = \"q\"\nkind = \"custody\"\nkey = \"car\"", "no key"},
        Bad{"id = \"b\"\nquestion = \"q\"\nkind = \"custody\"\nkey = \"arming key\"\n"
            "places = [\"shed\"]",
            "no place"},
        Bad{"id = \"b\"\nquestion = \"q\"\nkind = \"headcount\"\nbroken_by = [\"rain\"]",
            "no event"},
        Bad{"id = \"b\"\nquestion = \"q\"\nkind = \"headcount\"\nbroken_by = [\"hold\"]",
            "no event breaks it"},
        Bad{"id = \"b\"\nquestion = \"q\"\nkind = \"zone\"\nvalid_for = \"2h\"\n"
            "source = \"s\"",
            "does not grow old"},
        Bad{"id = \"b\"\nquestion = \"q\"\nkind = \"wind\"\nby = [\"a\"]\n"
            "second = [\"b\"]\nmean_max_m_per_s = 3\nsource = \"s\"",
            "no second signature"},
        Bad{"id = \"b\"\nquestion = \"q\"\nkind = \"text\"\nby = [\"a\"]\nalike = true",
            "not a confirm"},
        Bad{"id = \"b\"\nquestion = \"q\"\nkind = \"text\"\nby = [\"a\"]\n"
            "valid_for = \"0s\"\nsource = \"s\"",
            "no release could cover the show"},
        Bad{"id = \"b\"\nquestion = \"q\"\nkind = \"headcount\"\nvalidfor = \"3m\"",
            "means nothing"}));

TEST(ReadChecklist, AKillerItemIsAskedAgainLate) {
  const std::string later = "[[stage]]\nid = \"z\"\ntitle = \"Z\"\n";
  const std::string count = item("id = \"c\"\nquestion = \"q\"\nkind = \"headcount\"");
  EXPECT_THAT(mistakes(kHead + item(kEdge + "killer = true") + later + count),
              ElementsAre(HasSubstr("not asked again")));
  const std::string again =
      "id = \"e2\"\nquestion = \"q\"\nkind = \"headcount\"\nrepeats = \"edge\"";
  EXPECT_THAT(mistakes(kHead + item(kEdge + "killer = true") + later + item(again)), IsEmpty());
}

TEST(ReadChecklist, AReleaseNeedsStagesAndTwoSigners) {
  EXPECT_THAT(mistakes("name = \"n\"\nsource = \"s\""),
              testing::UnorderedElementsAre(HasSubstr("no stage"), HasSubstr("countersigns")));
}

TEST(ReadChecklist, AKeyDoesNotStartWhereItArms) {
  EXPECT_THAT(mistakes("[[key]]\nname = \"k\"\nstarts = \"p\"\nfiring = \"p\""),
              testing::Contains(HasSubstr("where it arms")));
}

TEST(ReadChecklist, BrokenTomlIsOneMistakeWithItsLine) {
  EXPECT_THAT(mistakes("name = \"n\"\n= 3"), ElementsAre(HasSubstr("c.toml, line 2")));
  EXPECT_THAT(mistakes("stage = 3\nkey = [1]"), testing::Contains(HasSubstr("list of tables")));
}

TEST(ReadChecklist, EveryCutOfAFileEndsWell) {
  const std::string whole = kHead + item(kEdge);
  for (std::size_t length = 0; length < whole.size(); ++length) {
    (void)read_checklist(whole.substr(0, length), "c.toml");
  }
}

TEST(Words, WhatSaysNothing) {
  for (const char* word : {"", "OK", " ok. ", "N/A", "Not applicable", "checked", "Yes"}) {
    EXPECT_TRUE(says_nothing(word)) << word;
  }
  EXPECT_FALSE(says_nothing("nobody"));
  EXPECT_FALSE(says_nothing("okra"));
}

}  // namespace
}  // namespace walkdown::day
