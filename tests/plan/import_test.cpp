// SPDX-License-Identifier: Apache-2.0
#include "reader/plan/import.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <random>
#include <string>

namespace walkdown::plan {
namespace {

using testing::HasSubstr;

Catalogue catalogue() {
  Catalogue out;
  Igniter& igniter = out.igniters.emplace_back();
  igniter.name = "std";
  igniter.bridge_ohm = {1.4, 2.0};
  return out;
}

Imported take(std::string_view bytes) { return import_plan(bytes, "show.csv", catalogue()); }

std::string all(const Imported& imported) {
  std::string text;
  for (const Problem& problem : imported.errors) text += problem.sentence() + "\n";
  return text;
}

const std::string kHeader = "cue,module,rail,pin,igniter,wire,lead_m,note\n";

TEST(Import, TakesPlainAndLetteredAddresses) {
  const auto got = take(kHeader + "1,M07,R2,P05,std,AWG24,12.5,\n2,7,2,6,std,,,\n");
  ASSERT_TRUE(got.plan) << all(got);
  ASSERT_EQ(got.plan->pins.size(), 2U);
  EXPECT_EQ(got.plan->pins[0].id, (PinId{7, 2, 5}));
  EXPECT_DOUBLE_EQ(got.plan->pins[0].load.lead_m, 12.5);
  EXPECT_EQ(got.plan->pins[1].load.wire, kNoWire);
}

TEST(Import, TakesSemicolonDecimalCommaMarkAndCrLf) {
  const auto got = take(
      "\xEF\xBB\xBF"
      "pin;rail;module;cue;igniter;lead_m;colour\r\n"
      "5;2;7;1;std;12,5;red\r\n");
  ASSERT_TRUE(got.plan) << all(got);
  EXPECT_DOUBLE_EQ(got.plan->pins[0].load.lead_m, 12.5);
  ASSERT_EQ(got.plan->pins[0].more.size(), 1U);
  EXPECT_EQ(got.plan->pins[0].more[0].second, "red");
}

TEST(Import, FindsTheSeparatorBehindEmptyLines) {
  const auto got = take("\r\n\r\ncue;module;rail;pin;igniter\r\n1;1;1;1;std\r\n");
  ASSERT_TRUE(got.plan) << all(got);
  EXPECT_EQ(got.plan->pins[0].row, 4U);
}

// RFC 4180, section 2, rules 5 to 7: quotes, line breaks and doubled quotes in a field.
TEST(Import, KeepsQuotedLineBreaksAndCountsThemAsOneRow) {
  const auto got = take(kHeader + "1,1,1,1,std,,,\"a \"\"b\"\",\nc\"\n2,1,1,2,std,,,\n");
  ASSERT_TRUE(got.plan) << all(got);
  EXPECT_EQ(got.plan->pins[0].note, "a \"b\",\nc");
  EXPECT_EQ(got.plan->pins[1].row, 3U);
}

TEST(Import, ListsEveryMistakeWithRowColumnAndValue) {
  const auto text = all(take(kHeader + "1,0,1,1,std,,,\n\n2,1,1,x,nix,AWG99,-1,\n"));
  EXPECT_THAT(text, HasSubstr("row 2, column module, '0'"));
  EXPECT_THAT(text, HasSubstr("row 4, column pin, 'x'"));
  EXPECT_THAT(text, HasSubstr("row 4, column igniter, 'nix'"));
  EXPECT_THAT(text, HasSubstr("row 4, column wire, 'AWG99'"));
  EXPECT_THAT(text, HasSubstr("row 4, column lead_m, '-1'"));
}

TEST(Import, NamesBothRowsOfADoublePinAlsoInARowWithAnotherMistake) {
  const auto text = all(take(kHeader + "1,1,1,1,std,,bad,\n2,1,1,1,std,,,\n"));
  EXPECT_THAT(text, HasSubstr("column lead_m, 'bad'"));
  EXPECT_THAT(text, HasSubstr("row 3, column pin, 'M01/R1/P01': row 2 uses this pin"));
}

TEST(Import, RefusesOtherEncodings) {
  EXPECT_THAT(all(take("\xFF\xFE"
                       "c")),
              HasSubstr("UTF-16"));
  EXPECT_THAT(all(take(std::string_view("c\0u\0", 4))), HasSubstr("UTF-16"));
  EXPECT_THAT(all(take("cue,module,rail,pin,igniter,x\n1,1,1,1,std,\xE9\n")), HasSubstr("UTF-8"));
  EXPECT_THAT(all(take("cue,module,rail,pin,igniter,\xE9\n")), HasSubstr("UTF-8"));
}

TEST(Import, NamesTheRowOfAnOpenQuote) {
  EXPECT_THAT(all(take(kHeader + "1,1,1,1,std,,,\"a\n")), HasSubstr("row 2: a quoted field"));
}

TEST(Import, RefusesALayoutBeyondItsBounds) {
  std::string bytes = "cue,module,rail,pin,igniter\n";
  for (int m = 1; m <= 200; ++m) bytes += "1," + std::to_string(m) + ",9999,1,std\n";
  EXPECT_THAT(all(take(bytes)), HasSubstr("more rails or pins"));
}

TEST(Import, ManyWireSizesAreRefusedBeforeTheirIndexWraps) {
  std::string bytes = "cue,module,rail,pin,igniter,wire\n";
  for (int i = 0; i < 65'010; ++i) {
    bytes += "1," + std::to_string(i / 9999 + 1) + ",1," + std::to_string(i % 9999 + 1) +
             ",std,1." + std::to_string(100'000 + i) + "mm2\n";
  }
  EXPECT_THAT(all(take(bytes)), HasSubstr("more wire sizes"));
}

TEST(Import, MutatedFilesGiveAPlanOrErrors) {
  const std::string good = kHeader + "1,M07,R2,P05,std,AWG24,12.5,\"a\nb\"\r\n2,7,2,6,std,,,\n";
  std::mt19937 random(7);  // NOLINT(cert-msc51-cpp): the same mutants each time
  for (int i = 0; i < 5000; ++i) {
    std::string bytes = good;
    for (int k = 0; k < 3; ++k) bytes[random() % bytes.size()] = static_cast<char>(random());
    const auto got = take(bytes);
    EXPECT_EQ(got.plan.has_value(), got.errors.empty());
  }
}

}  // namespace
}  // namespace walkdown::plan
