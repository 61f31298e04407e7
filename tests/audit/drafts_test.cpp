// SPDX-License-Identifier: Apache-2.0
#include "checklist/audit/drafts.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "checklist/record/json_text.h"

namespace walkdown::audit {
namespace {

using testing::HasSubstr;

tester::Reading reading_of_pin(std::int64_t micro_ohm) {
  tester::Reading reading;
  reading.pin = {7, 2, 5};
  reading.micro_ohm = micro_ohm;
  return reading;
}

TEST(ReadingBody, HoldsWholeMicroOhmAndTheRawLine) {
  const auto body = reading_body(reading_of_pin(2310000), "M07,R2,P05,2.31,ohm");
  EXPECT_EQ(body.dump(), R"({"pin":"M07/R2/P05","raw":"M07,R2,P05,2.31,ohm","uohm":2310000})");
}

TEST(ReadingBody, OverHasNoValue) {
  auto reading = reading_of_pin(0);
  reading.over = true;
  const auto body = reading_body(reading, "M07,R2,P05,OL,ohm");
  EXPECT_TRUE(body["over"]);
  EXPECT_FALSE(body.contains("uohm"));
  EXPECT_TRUE(reading_of(body)->reading.over);
}

TEST(ReadingBody, ComesBackAsItWas) {
  auto reading = reading_of_pin(-20000);
  reading.seq = 41;
  const auto back = reading_of(nlohmann::json::parse(reading_body(reading, "x", true).dump()));
  ASSERT_TRUE(back.ok());
  EXPECT_EQ(back->reading.pin, reading.pin);
  EXPECT_EQ(back->reading.micro_ohm, -20000);
  EXPECT_TRUE(back->walked);
  EXPECT_EQ(back->raw, "x");
}

TEST(ReadingBody, KeepsBytesThatAreNoText) {
  const std::string raw("M07\x00\xFF\x80", 6);
  const auto body = reading_body(reading_of_pin(1), raw);
  EXPECT_FALSE(body.contains("raw"));
  EXPECT_EQ(reading_of(nlohmann::json::parse(body.dump()))->raw, raw);
}

// Any bytes, any value, with and without what is optional: both ways back come to the same.
RC_GTEST_PROP(ReadingBodyProperty, QuickAndSlowAgree, ()) {
  tester::Reading reading = reading_of_pin(*rc::gen::inRange<std::int64_t>(-1000, 1'000'000'000));
  const auto raw = *rc::gen::container<std::string>(rc::gen::arbitrary<char>());
  if (*rc::gen::arbitrary<bool>()) reading.seq = *rc::gen::inRange<std::uint64_t>(0, 1'000'000);
  if (*rc::gen::arbitrary<bool>()) {
    reading.over = true;
    reading.micro_ohm = 0;
  }
  const bool walked = *rc::gen::arbitrary<bool>();
  const auto body = reading_body(reading, raw, walked);
  std::string text;
  RC_ASSERT(record::append_json(body, text).ok());
  const auto quick = quick_reading_of(text);
  const auto slow = reading_of(body);
  RC_ASSERT(quick.has_value());
  RC_ASSERT(slow.ok());
  for (const RecordedReading& back : {*quick, *slow}) {
    RC_ASSERT(back.raw == raw);
    RC_ASSERT(back.walked == walked);
    RC_ASSERT(back.reading.pin == reading.pin);
    RC_ASSERT(back.reading.over == reading.over);
    RC_ASSERT(back.reading.micro_ohm == reading.micro_ohm);
    RC_ASSERT(back.reading.seq == reading.seq);
  }
}

TEST(ReadingBody, QuickTakesNothingElse) {
  for (const char* bad :
       {"{}", R"({"pin":"M01/R1/P05"})", R"({"pin":"x","raw":"y","uohm":1})",
        R"({"pin":"M01/R1/P05","raw":"y"})", R"({"pin":"M01/R1/P05","raw":"y","uohm":1.5})",
        R"({"pin":"M01/R1/P05","raw_b64":"!","uohm":1})",
        R"({"over":true,"pin":"M01/R1/P05","raw":"y","uohm":1})",
        R"({"pin":"M01/R1/P05","raw":"y","uohm":1,"walked":false})"}) {
    EXPECT_FALSE(quick_reading_of(bad).has_value()) << bad;
  }
}

TEST(ReadingBody, RefusesWhatItDidNotWrite) {
  const auto why = [](const char* text) {
    const auto back = reading_of(nlohmann::json::parse(text));
    return back.ok() ? std::string("taken") : back.error().sentence();
  };
  EXPECT_THAT(why(R"({"raw":"x","uohm":1})"), HasSubstr("no pin"));
  EXPECT_THAT(why(R"({"pin":"M0/R1/P1","raw":"x","uohm":1})"), HasSubstr("no pin"));
  EXPECT_THAT(why(R"({"pin":7,"raw":"x","uohm":1})"), HasSubstr("no pin"));
  EXPECT_THAT(why(R"({"pin":"M01/R1/P01","uohm":1})"), HasSubstr("raw line"));
  EXPECT_THAT(why(R"({"pin":"M01/R1/P01","raw":"x"})"), HasSubstr("not both"));
  EXPECT_THAT(why(R"({"pin":"M01/R1/P01","raw":"x","over":true,"uohm":1})"), HasSubstr("not both"));
  EXPECT_THAT(why(R"({"pin":"M01/R1/P01","raw":"x","uohm":1.5})"), HasSubstr("whole number"));
  EXPECT_THAT(why(R"({"pin":"M01/R1/P01","raw_b64":"***","uohm":1})"), HasSubstr("raw line"));
}

TEST(RehookBody, CoversItsPinsOnly) {
  Rehook rehook;
  rehook.pins = {{1, 1, 3}, {1, 1, 4}};
  const auto back = rehook_of(nlohmann::json::parse(rehook_body(rehook).dump()));
  ASSERT_TRUE(back.ok());
  EXPECT_TRUE(back->covers({1, 1, 3}));
  EXPECT_FALSE(back->covers({1, 1, 5}));
}

TEST(RehookBody, CoversARailOrAModule) {
  Rehook rehook;
  rehook.module = 7;
  EXPECT_TRUE(rehook_of(rehook_body(rehook))->covers({7, 3, 9}));
  rehook.rail = 2;
  const auto back = rehook_of(rehook_body(rehook));
  EXPECT_TRUE(back->covers({7, 2, 9}));
  EXPECT_FALSE(back->covers({7, 3, 9}));
  EXPECT_FALSE(back->covers({8, 2, 9}));
}

TEST(RehookBody, CoversAPosition) {
  Rehook rehook;
  rehook.positions = {"Jetty"};
  const auto back = rehook_of(rehook_body(rehook));
  EXPECT_TRUE(back->covers({1, 1, 3}, "Jetty"));
  EXPECT_FALSE(back->covers({1, 1, 3}, "Bank"));
  EXPECT_FALSE(back->covers({1, 1, 3}, ""));
}

TEST(RehookBody, RefusesNonsense) {
  EXPECT_TRUE(rehook_of(nlohmann::json::object()).ok()) << "nothing named: the whole field";
  EXPECT_FALSE(rehook_of({{"rail", 2}}).ok());
  EXPECT_FALSE(rehook_of({{"positions", "Jetty"}}).ok());
  EXPECT_FALSE(rehook_of({{"module", 0}}).ok());
  EXPECT_FALSE(rehook_of({{"module", 10000}}).ok());
  EXPECT_FALSE(rehook_of({{"pins", {"M01"}}}).ok());
}

}  // namespace
}  // namespace walkdown::audit
