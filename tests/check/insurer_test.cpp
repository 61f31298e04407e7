// SPDX-License-Identifier: Apache-2.0
// The insurer's exercise: a whole day, and twenty ways in which somebody with every key of the
// station, and none of the persons', might change it afterwards. Each is found by the check alone,
// or, where the forger is free to write, by the mark that stood on paper.
#include <gmock/gmock.h>

#include <algorithm>
#include <cctype>
#include <functional>

#include "checklist/audit/claim.h"
#include "checklist/check/derive.h"
#include "checklist/check/fork.h"
#include "checklist/record/checkpoint.h"
#include "checklist/record/note.h"
#include "tests/check/forge.h"
#include "tests/check/whole_day.h"
#include "tests/record/sample.h"
#include "tests/record/scratch.h"

namespace walkdown::check {
namespace {

using test::Forge;
using test::the_day;
using test::the_waived_day;

struct Alteration {
  const char* name;
  std::function<void(Forge&)> make;
  const char* why;  // what the check says; empty: the mark alone tells
};

void drop(Forge& forge, std::size_t i) {
  forge.entries.erase(forge.entries.begin() + static_cast<std::ptrdiff_t>(i));
}
record::Entry as(const record::Entry& like, const char* kind, nlohmann::json body) {
  return {0, like.at_ms, like.up_ms, kind, std::move(body)};
}
void insert(Forge& forge, std::size_t i, record::Entry entry) {
  forge.entries.insert(forge.entries.begin() + static_cast<std::ptrdiff_t>(i), std::move(entry));
}

// The authority's time stands in the answer as text: "20260704190211Z".
void change_time(nlohmann::json& body) {
  auto bytes = *record::from_base64(body["response"].get<std::string>());
  const std::string year = "20";
  const auto at = std::search(bytes.begin(), bytes.end(), year.begin(), year.end());
  ASSERT_NE(at, bytes.end());
  *(at + 3) = static_cast<std::uint8_t>('0' + (*(at + 3) - '0' + 1) % 10);
  body["response"] = record::base64(bytes);
}

std::vector<Alteration> alterations() {
  const char* const kMoved = "names a state that this record was not in";
  return {
      {"drop a bad reading", [](Forge& f) { drop(f, f.first("reading", "over", true)); },
       "claim\'s verdicts"},
      {"swap two readings",
       [](Forge& f) {
         std::swap(f.entries[f.first("reading")].body, f.entries[f.first("reading") + 1].body);
       },
       kMoved},
      {"change a value and its raw line",
       [](Forge& f) {
         auto& body = f.entries[f.first("reading", "over", true)].body;
         body = {{"pin", "M02/R1/P02"}, {"raw", "M02,R1,P02,10.17,ohm"}, {"uohm", 10'170'000}};
       },
       "claim"},
      {"change a value and not its raw line",
       [](Forge& f) { f.entries[f.last("reading")].body["uohm"] = 9'000'000; },
       "that its own line"},
      {"move a sign-off behind the next",
       [](Forge& f) {
         const std::size_t i = f.first("key-take");
         std::swap(f.entries[i].body, f.entries[i + 1].body);
         std::swap(f.entries[i].kind, f.entries[i + 1].kind);
       },
       kMoved},
      {"use a sign-off twice",
       [](Forge& f) {
         const record::Entry again = f.entries[f.first("lift")];
         insert(f, f.first("lift") + 1, again);
       },
       "used before"},
      {"change who held the key",
       [](Forge& f) { f.entries[f.first("key-give")].body["to"] = "Edda"; },
       "signed something else"},
      {"change who signed for the key",
       [](Forge& f) { f.entries[f.first("key-offer")].body["by"] = "Edda"; }, "is signed by Jon"},
      {"drop a hand-over", [](Forge& f) { drop(f, f.first("key-offer")); }, kMoved},
      {"change an answer",
       [](Forge& f) { f.entries[f.first("answer")].body["value"] = "a person"; },
       "signed something else"},
      {"drop the second signature of the release", [](Forge& f) { drop(f, f.last("second")); },
       "the stamped state is not one"},
      {"drop the second signature of the release and the time-stamp after it",
       [](Forge& f) {
         drop(f, f.last("second"));
         drop(f, f.first("timestamp"));
       },
       ""},
      {"sign a release nobody signed",
       [](Forge& f) { f.entries[f.first("release")].body.erase("signoff"); }, "has to be signed"},
      {"drop the hold and its lifting",
       [](Forge& f) {
         drop(f, f.first("hold"));
         drop(f, f.first("lift"));
       },
       kMoved},
      {"put somebody into the field at the release",
       [](Forge& f) {
         insert(f, f.first("release"),
                as(f.entries[f.first("release")], "in", {{"person", "Jon"}}));
       },
       "not possible at that moment"},
      {"enrol oneself in another's name",
       [](Forge& f) {
         const auto key = record::VerifyKey(record::test::witness().verify_key());
         f.entries[f.first("enrol", "name", "Jon")].body["vkey"] = record::text(key);
       },
       kMoved},
      {"give a claim better counts",
       [](Forge& f) {
         f.entries[f.first("claim")].body["verdicts"] = {{"fits", 6}};
       },
       "claim's verdicts"},
      {"take a finding out of a claim",
       [](Forge& f) {
         auto& body = f.entries[f.first("claim")].body;
         body["kinds"] = nlohmann::json::object();
         body["findings"] = nlohmann::json::array();
       },
       "claim's kinds"},
      {"set the release an hour back",
       [](Forge& f) {
         for (std::size_t i = f.first("release"); i < f.entries.size(); ++i) {
           f.entries[i].at_ms -= 3'600'000;
         }
       },
       "time went back"},
      {"cut the end and close again",
       [](Forge& f) {
         drop(f, f.last("reading"));
         drop(f, f.last("reading"));
       },
       ""},
      {"write the last note anew",
       [](Forge& f) { f.entries[f.last("note")].body["text"] = "the show did not begin"; }, ""},
      {"seal all of it again with other commits",
       [](Forge& f) { f.entries.back().body["reason"] = "all went well"; }, ""},
      {"move the time-stamp before the head that it is over",
       [](Forge& f) {
         const record::Entry stamp = f.entries[f.first("timestamp")];
         drop(f, f.first("timestamp"));
         insert(f, f.first("release"), as(f.entries[f.first("release")], "timestamp", stamp.body));
       },
       "not one that this record was in"},
      {"write what was stamped anew, under the same time-stamp",
       [](Forge& f) { f.entries[f.first("note")].body["text"] = "the show did not begin"; },
       "the stamped state is not one that this record was in"},
      {"put the time-stamp under a head of one's own",
       [](Forge& f) {
         auto& body = f.entries[f.first("timestamp")].body;
         const record::Checkpoint head{f.entries[0].body["origin"], 3, record::Hash{}};
         body["note"] =
             record::text(record::sign_note(record::text(head), record::test::station()));
       },
       "the stamped state is not one that this record was in"},
      {"change the time in the time-stamp",
       [](Forge& f) { change_time(f.entries[f.first("timestamp")].body); },
       "time-stamp does not hold"},
      {"drop the time-stamp", [](Forge& f) { drop(f, f.first("timestamp")); }, ""},
      {"use the time-stamp twice",
       [](Forge& f) {
         const record::Entry again = f.entries[f.first("timestamp")];
         insert(f, f.first("timestamp") + 1, again);
       },
       "same time-stamp"},
      {"waive a pin in the lead's name",
       [](Forge& f) {
         insert(f, f.first("release"),
                as(f.entries[f.first("release")], "waive-pin",
                   {{"by", "Mara"},
                    {"role", "lead"},
                    {"pin", "M02/R1/P02"},
                    {"verdict", "open"},
                    {"reason", "by eye"}}));
       },
       "has to be signed"},
      {"take a person's coming out of the field", [](Forge& f) { drop(f, f.first("out")); },
       kMoved},
      {"enrol somebody who was not there, and sign in their name",
       [](Forge& f) {
         const auto key = record::VerifyKey(record::test::witness().verify_key());
         insert(f, f.first("release"),
                as(f.entries[f.first("release")], "enrol",
                   {{"name", "Nobody"}, {"role", "safety"}, {"vkey", record::text(key)}}));
       },
       kMoved},
      {"begin the day with another plan",
       [](Forge& f) {
         auto& plan = f.entries[0].body["show"]["plan"]["text"];
         std::string text = plan;
         text.replace(text.find(",50,AWG24"), 9, ",51,AWG24");
         plan = text;
       },
       "names a state that this record was not in"},
  };
}

record::Report check(const std::string& bytes, const std::string& mark = {}) {
  const record::test::Scratch scratch;
  const std::string path = scratch.path("forged.record");
  record::test::write_file(path, bytes);
  record::VerifyOptions options;
  options.expected_mark = mark;
  auto report = check_file(path, options);
  EXPECT_TRUE(report.ok());
  return *report;
}

TEST(Insurer, TheDayItselfHolds) {
  const record::Report report = check(the_day());
  EXPECT_TRUE(report.holds) << report.why << " at line " << report.first_bad.value_or(0);
  EXPECT_TRUE(report.closed);
}

// Sealed again without a change it is the day itself: what is found below is the alteration.
TEST(Insurer, SealedAgainUnchangedItIsTheSame) { EXPECT_EQ(Forge(the_day()).sealed(), the_day()); }

class Alterations : public testing::TestWithParam<Alteration> {};

TEST_P(Alterations, AreFound) {
  const record::Report honest = check(the_day());
  Forge forge(the_day());
  GetParam().make(forge);
  const std::string forged = forge.sealed();
  ASSERT_NE(forged, the_day());
  const record::Report alone = check(forged);
  const bool needs_mark = std::string(GetParam().why).empty();
  EXPECT_EQ(alone.holds, needs_mark) << alone.why;
  EXPECT_THAT(alone.why, testing::HasSubstr(GetParam().why));
  const record::Report with_mark = check(forged, honest.mark);
  EXPECT_FALSE(with_mark.holds);
  EXPECT_TRUE(with_mark.first_bad.has_value());
}

// The bytes of the day to the first checkpoint behind entry n: all that there was then.
std::string day_until(std::uint64_t n) {
  std::string bytes;
  bool behind = false;
  for (const std::string& line : record::test::lines_of(the_day())) {
    bytes += line + '\n';
    behind = behind || line.starts_with("{\"n\":" + std::to_string(n) + ',');
    if (behind && line.starts_with("{\"checkpoint\"")) break;
  }
  return bytes;
}

// The mark on the permit is of the moment when it was signed, before the show: it finds a day that
// was written anew up to there, and says that it shows nothing of what came after.
TEST(Insurer, TheMarkOnThePermitIsOfTheDayUpToThere) {
  const auto released = [](const Forge& f) { return f.last("second"); };
  const std::string permit = check(day_until(released(Forge(the_day())))).mark;
  ASSERT_NE(permit, check(the_day()).mark);
  const auto with_permit = [&](const std::function<void(Forge&)>& make) {
    Forge forge(the_day());
    make(forge);
    return check(forge.sealed(), permit);
  };
  const record::Report honest = with_permit([](Forge&) {});
  EXPECT_TRUE(honest.holds) << honest.why;
  EXPECT_THAT(honest.remarks, testing::Contains(testing::HasSubstr("nothing of what came after")));
  const record::Report before = with_permit([&](Forge& f) {
    drop(f, released(f));
    drop(f, f.first("timestamp"));
  });
  EXPECT_FALSE(before.holds);
  EXPECT_THAT(before.why, testing::HasSubstr("at no moment"));
  const record::Report after = with_permit(
      [](Forge& f) { f.entries[f.last("note")].body["text"] = "the show did not begin"; });
  EXPECT_TRUE(after.holds) << "only the mark of the whole day finds this";
}

// A waiver that nobody shall see any more: it cannot be taken out, weakened, or given to another.
TEST(Insurer, AWaiverStaysInItsDay) {
  EXPECT_TRUE(check(the_waived_day()).holds) << check(the_waived_day()).why;
  const auto found = [](const std::function<void(Forge&)>& make) {
    Forge forge(the_waived_day());
    make(forge);
    return check(forge.sealed()).why;
  };
  const auto waiver = [](Forge& f) -> nlohmann::json& {
    return f.entries[f.first("waive-pin")].body;
  };
  EXPECT_THAT(found([](Forge& f) { drop(f, f.first("waive-pin")); }),
              testing::HasSubstr("not in shortly before"));
  EXPECT_THAT(found([](Forge& f) { drop(f, f.first("second")); }),
              testing::HasSubstr("not in shortly before"));
  EXPECT_THAT(found([&](Forge& f) { waiver(f)["reason"] = "it fits"; }),
              testing::HasSubstr("signed something else"));
  EXPECT_THAT(found([&](Forge& f) { waiver(f)["pin"] = "M02/R1/P01"; }),
              testing::HasSubstr("signed something else"));
  EXPECT_THAT(found([&](Forge& f) { waiver(f)["by"] = "Edda"; }),
              testing::HasSubstr("is signed by Mara"));
}

std::string test_name(const testing::TestParamInfo<Alteration>& of) {
  std::string name = of.param.name;
  std::replace_if(
      name.begin(), name.end(),
      [](char c) { return std::isalnum(static_cast<unsigned char>(c)) == 0; }, '_');
  return name;
}

INSTANTIATE_TEST_SUITE_P(Insurer, Alterations, testing::ValuesIn(alterations()), test_name);

TEST(Insurer, AtLeastTwenty) { EXPECT_GE(alterations().size(), 20U); }

TEST(Fork, TwoHistoriesOfOneRecordAreShownAsSuch) {
  Forge forge(the_day());
  forge.entries[forge.last("note")].body["text"] = "the show did not begin";
  const record::test::Scratch scratch;
  const std::string a = scratch.path("a"), b = scratch.path("b");
  record::test::write_file(a, the_day());
  record::test::write_file(b, forge.sealed());
  const auto fork = compare(a, b);
  ASSERT_TRUE(fork.ok());
  EXPECT_EQ(fork->relation, Relation::part);
  EXPECT_TRUE(fork->differ());
  EXPECT_EQ(fork->entries, forge.last("note"));
  EXPECT_EQ(fork->line, compare(b, a)->line);
  EXPECT_THAT(fork->sentence(), testing::HasSubstr("two histories"));
  EXPECT_EQ(compare(a, a)->relation, Relation::same);
}

TEST(Fork, ABeginningIsNoFork) {
  const record::test::Scratch scratch;
  const std::string a = scratch.path("a"), b = scratch.path("b"), c = scratch.path("c");
  record::test::write_file(a, the_day());
  const std::size_t cut = the_day().find("\n{\"n\":7,");
  record::test::write_file(b, the_day().substr(0, cut + 1));
  record::test::write_file(c, "another\n");
  EXPECT_EQ(compare(a, b)->relation, Relation::a_goes_on);
  EXPECT_EQ(compare(b, a)->relation, Relation::b_goes_on);
  EXPECT_FALSE(compare(a, b)->differ());
  EXPECT_EQ(compare(a, c)->relation, Relation::other_record);
  EXPECT_FALSE(compare(a, scratch.path("none")).ok());
}

}  // namespace
}  // namespace walkdown::check
