// SPDX-License-Identifier: Apache-2.0
#include "checklist/report/csv.h"

#include <gmock/gmock.h>

#include "checklist/record/verify.h"
#include "tests/check/whole_day.h"

namespace walkdown::report {
namespace {

using testing::HasSubstr;

std::string table(Table which) {
  CsvTable csv(which);
  record::VerifyOptions options;
  options.visitor = [&](const record::EntryView& entry) -> std::optional<std::string> {
    csv.take(entry);
    return std::nullopt;
  };
  EXPECT_TRUE(record::verify_bytes(check::test::the_day(), options).holds);
  return csv.text();
}

std::size_t rows(const std::string& text) {
  std::size_t count = 0;
  for (std::size_t at = text.find("\r\n"); at != std::string::npos;
       at = text.find("\r\n", at + 2)) {
    ++count;
  }
  return count;
}

// RFC 4180 section 2, rules 5 to 7.
TEST(Csv, QuotesAsRfc4180Says) {
  EXPECT_EQ(csv_field("aaa"), "aaa");
  EXPECT_EQ(csv_field("b CRLF\r\nbb"), "\"b CRLF\r\nbb\"");
  EXPECT_EQ(csv_field("b\"bb"), "\"b\"\"bb\"");
  EXPECT_EQ(csv_field("a,b"), "\"a,b\"");
}

TEST(Csv, OhmsAreExact) {
  EXPECT_EQ(ohm_text(2'310'000), "2.31");
  EXPECT_EQ(ohm_text(-20'000), "-0.02");
  EXPECT_EQ(ohm_text(10'000'001), "10.000001");
  EXPECT_EQ(ohm_text(0), "0");
}

TEST(Csv, EveryReadingWithItsRawLine) {
  const std::string text = table(Table::readings);
  EXPECT_EQ(rows(text), 1 + 6 + 6 + 2U);
  EXPECT_TRUE(text.starts_with("entry,time,pin,ohm,over,raw\r\n"));
  EXPECT_THAT(text, HasSubstr(",M02/R1/P02,,over,\"M02,R1,P02,OL,ohm\"\r\n"));
  EXPECT_THAT(text, HasSubstr(",M01/R1/P04,6.8,,\"M01,R1,P04,6.80,ohm\"\r\n"));
}

TEST(Csv, FindingsAndSignOffs) {
  EXPECT_THAT(table(Table::findings), HasSubstr(",open,M02/R1/P02,0,"));
  const std::string signs = table(Table::sign_offs);
  EXPECT_THAT(signs, HasSubstr(",Mara,lead,Mara,every item holds and I release the show,"));
  EXPECT_THAT(signs, HasSubstr("reason=smoke has gone"));
}

}  // namespace
}  // namespace walkdown::report
