// SPDX-License-Identifier: Apache-2.0
#include "checklist/desk/tell.h"

#include <gtest/gtest.h>

#include "checklist/desk/prepared.h"
#include "checklist/record/cosign.h"
#include "checklist/record/timestamp.h"

namespace walkdown::desk {
namespace {

std::string told(const char* kind, const char* body) {
  return tell(no_checklist(), {1, 0, 0, kind, nlohmann::json::parse(body)});
}

TEST(Tell, PlainWords) {
  EXPECT_EQ(told("reading", R"({"pin":"M01/R1/P05","raw":"x","uohm":2310000})"),
            "M01/R1/P05 2.31 ohm");
  EXPECT_EQ(told("reading", R"({"over":true,"pin":"M01/R1/P05","raw":"x"})"),
            "M01/R1/P05 over range");
  EXPECT_EQ(told("out", R"({"by":"Mara","role":"lead","person":"Jon","reason":"seen at the van"})"),
            "Mara (lead) says that Jon is out of the field: seen at the van");
  EXPECT_EQ(told("out", R"({"by":"Jon","role":"crew","person":"Jon"})"), "Jon is out of the field");
  EXPECT_EQ(told("wind", R"({"from":"instrument","mean_mm_per_s":4400,"gust_mm_per_s":7100,
                             "period_ms":600000})"),
            "wind: mean 4.4 m/s, gusts 7.1 m/s over 10 min, by the instrument");
  EXPECT_EQ(told("rehook", R"({"module":7,"rail":2})"), "hooked up anew: module 7 rail 2");
  EXPECT_EQ(told("hold", "{}"), "somebody called a hold");
}

TEST(Tell, WhoWitnessedAndWhen) {
  const record::SigningKey station("demo", record::Seed{1});
  const record::SigningKey olga("Olga_Brandt", record::Seed{2});
  const std::string head = record::text(
      record::sign_note(record::text(record::Checkpoint{"a-record", 17, {}}), station));
  const auto note = record::cosign(head, olga, 1'783'203'000);
  ASSERT_TRUE(note.ok()) << note.error().sentence();
  EXPECT_EQ(told("cosign", record::cosign_body(*note, 17, {}).dump().c_str()),
            "Olga Brandt signed as a witness that the first 17 entries stood at " +
                record::stamp_time(1'783'203'000'000));
}

TEST(Tell, AnyBodyGivesALine) {
  for (const char* kind :
       {"reading",    "answer",   "enrol",    "second",   "pause",     "show-time", "wind",
        "thunder",    "in",       "out",      "tag-hang", "tag-back",  "key-offer", "key-give",
        "key-put",    "key-take", "hold",     "lift",     "waive",     "waive-pin", "release",
        "withdraw",   "rehook",   "rejected", "claim",    "open",      "resumed",   "suspended",
        "clock-step", "torn",     "cosign",   "close",    "unheard-of"}) {
    EXPECT_FALSE(told(kind, "{}").empty()) << kind;
    EXPECT_FALSE(told(kind, R"({"by":1,"pins":7,"verdicts":[1],"uohm":"x"})").empty()) << kind;
  }
}

}  // namespace
}  // namespace walkdown::desk
