// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/line.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include "checklist/record/canonical.h"
#include "checklist/record/clock.h"
#include "checklist/record/json_text.h"
#include "checklist/record/utf8.h"

namespace walkdown::record {
namespace {

using nlohmann::json;

const std::string kLine =
    R"({"n":7,"at":"2026-07-04T19:02:11.123Z","up_ms":81234,"kind":"reading","body":{"a":1}})";

TEST(LineTest, EntryRoundTrip) {
  const auto parsed = parse_line(kLine);
  ASSERT_TRUE(parsed.ok()) << parsed.error().sentence();
  const Entry entry = entry_of(std::get<EntryView>(*parsed));
  EXPECT_EQ(entry.n, 7U);
  EXPECT_EQ(entry.at_ms, 1'783'191'731'123);
  EXPECT_EQ(entry.up_ms, 81'234);
  EXPECT_EQ(entry.body, json({{"a", 1}}));
  EXPECT_EQ(*entry_line(entry), kLine);
}

TEST(LineTest, CheckpointRoundTrip) {
  const std::string note = "o\n1\n\"x\"\n";
  const auto parsed = parse_line(checkpoint_line(note));
  ASSERT_TRUE(parsed.ok());
  EXPECT_EQ(std::get<CheckpointLine>(*parsed).note, note);
}

struct BadLine : testing::TestWithParam<std::pair<const char*, const char*>> {};

// Each is the good line with one thing another: the first text replaced by the second.
TEST_P(BadLine, IsRefused) {
  const auto& [from, to] = GetParam();
  std::string line = kLine;
  const std::size_t at = line.find(from);
  ASSERT_NE(at, std::string::npos);
  line.replace(at, std::string_view(from).size(), to);
  EXPECT_FALSE(parse_line(line).ok()) << line;
}

INSTANTIATE_TEST_SUITE_P(
    One, BadLine,
    testing::Values(
        std::pair{"7", "07"}, std::pair{"7", "-7"}, std::pair{"7", "7.0"},
        std::pair{"7", "9007199254740992"}, std::pair{"{\"n\"", " {\"n\""},
        std::pair{"\"n\":7", "\"n\": 7"}, std::pair{"123Z", "12Z"}, std::pair{"123Z", "123+00:00"},
        std::pair{"2026", "1969"}, std::pair{"07-04", "02-30"}, std::pair{"T", " "},
        std::pair{"81234", "-1"}, std::pair{"reading", "Reading"}, std::pair{"reading", ""},
        std::pair{"{\"a\":1}", "[]"}, std::pair{"{\"a\":1}", "{\"a\":1.5}"},
        std::pair{"{\"a\":1}", "{\"a\":1e3}"}, std::pair{"{\"a\":1}", "{\"a\":-0}"},
        std::pair{"{\"a\":1}", "{\"b\":1,\"a\":1}"}, std::pair{"{\"a\":1}", "{\"a\":1,\"a\":1}"},
        std::pair{"{\"a\":1}", "{\"a\":\"\\/\"}"}, std::pair{"{\"a\":1}", "{\"a\":\"\\u0041\"}"},
        std::pair{"{\"a\":1}", "{\"a\":\"\\u000A\"}"},
        std::pair{"{\"a\":1}", "{\"a\":\"\\u000a\"}"}, std::pair{"{\"a\":1}", "{\"a\":\"\x1f\"}"},
        std::pair{"{\"a\":1}", "{\"a\":\"\xff\"}"}, std::pair{"{\"a\":1}", "{\"a\":NaN}"},
        std::pair{"1}}", "1}} "}, std::pair{"1}}", "1}"},
        std::pair{"\"kind\"", "\"more\":1,\"kind\""}));

TEST(LineTest, EveryPrefixIsRefused) {
  for (std::size_t size = 0; size < kLine.size(); ++size) {
    EXPECT_FALSE(parse_line(kLine.substr(0, size)).ok()) << size;
  }
}

TEST(LineTest, DepthIsBounded) {
  const auto nested = [](std::size_t depth) {
    return std::string(depth, '[') + std::string(depth, ']');
  };
  EXPECT_TRUE(is_canonical(nested(kMaxDepth)));
  EXPECT_FALSE(is_canonical(nested(kMaxDepth + 1)));
  EXPECT_FALSE(is_canonical(nested(1'000'000)));
}

TEST(LineTest, WhatARecordCannotHoldIsSaid) {
  Entry entry{1, 0, 0, "x", {{"deep", {{"ohm", 2.5}}}}};
  EXPECT_THAT(entry_line(entry).error().sentence(), testing::HasSubstr("deep.ohm"));
  entry.body = {{"big", std::uint64_t{1} << 60U}};
  EXPECT_FALSE(entry_line(entry).ok());
  entry.body = {{"bytes", "\xC3"}};
  EXPECT_FALSE(entry_line(entry).ok());
  entry.body = json::array();
  EXPECT_FALSE(entry_line(entry).ok());
}

// Any bytes: the one-pass check says yes exactly where the tree of nlohmann-json, written again by
// it, gives the same text (and no number is beyond what we keep).
json any_value(int depth) {
  const int pick = *rc::gen::inRange(0, depth > 0 ? 7 : 5);
  if (pick == 0) return nullptr;
  if (pick == 1) return *rc::gen::arbitrary<bool>();
  if (pick == 2) return *rc::gen::inRange<std::int64_t>(-kMaxWhole, kMaxWhole);
  if (pick <= 4) {
    const auto text = *rc::gen::container<std::string>(rc::gen::inRange<char>(0, 127));
    return is_utf8(text) ? text : "";
  }
  json nested = pick == 5 ? json::array() : json::object();
  const int count = *rc::gen::inRange(0, 4);
  for (int i = 0; i < count; ++i) {
    if (pick == 5) {
      nested.push_back(any_value(depth - 1));
    } else {
      nested[*rc::gen::container<std::string>(rc::gen::inRange<char>(0, 127))] =
          any_value(depth - 1);
    }
  }
  return nested;
}

RC_GTEST_PROP(CanonicalProperty, WritesWhatNlohmannWrites, ()) {
  const json value = any_value(4);
  std::string text;
  RC_ASSERT(append_json(value, text).ok());
  RC_ASSERT(text == value.dump());
  RC_ASSERT(is_canonical(text));
  RC_ASSERT(parse_canonical(text) == value);
}

RC_GTEST_PROP(CanonicalProperty, TakesOnlyWhatComesBackTheSame, ()) {
  std::string text;
  RC_ASSERT(append_json(any_value(3), text).ok());
  const auto at = *rc::gen::inRange<std::size_t>(0, text.size());
  text[at] =
      *rc::gen::element('"', '\\', '{', '}', '[', ']', ',', ':', '0', '1', '-', '.', 'e', 'u', ' ');
  const json again = json::parse(text, nullptr, false);
  std::string back;
  const bool same = !again.is_discarded() && append_json(again, back).ok() && back == text;
  RC_ASSERT(is_canonical(text) == same);
}

RC_GTEST_PROP(Utf8Property, AgreesWithNlohmann, ()) {
  const auto bytes = *rc::gen::container<std::string>(rc::gen::arbitrary<char>());
  bool valid = true;
  try {
    (void)json(bytes).dump();
  } catch (const json::type_error&) {
    valid = false;
  }
  RC_ASSERT(is_utf8(bytes) == valid);
}

// RFC 3629 section 10 and section 4: overlong forms, surrogates, beyond U+10FFFF.
TEST(Utf8Test, Borders) {
  for (const char* good : {"", "a", "\xC2\x80", "\xDF\xBF", "\xE0\xA0\x80", "\xED\x9F\xBF",
                           "\xEE\x80\x80", "\xF0\x90\x80\x80", "\xF4\x8F\xBF\xBF"}) {
    EXPECT_TRUE(is_utf8(good)) << good;
  }
  for (const char* bad :
       {"\x80", "\xC0\x80", "\xC1\xBF", "\xE0\x9F\xBF", "\xED\xA0\x80", "\xF0\x8F\xBF\xBF",
        "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\xC2", "\xE1\x80", "\xE1\x80\x41", "\xFF"}) {
    EXPECT_FALSE(is_utf8(bad)) << bad;
  }
}

// RFC 3339 section 5.8 and the erratum-free examples of many test suites.
TEST(Rfc3339Test, PublishedExamples) {
  EXPECT_EQ(parse_rfc3339("1985-04-12T23:20:50.52Z"), 482'196'050'520);
  EXPECT_EQ(parse_rfc3339("1996-12-19T16:39:57-08:00"), 851'042'397'000);
  EXPECT_EQ(parse_rfc3339("1996-12-20T00:39:57Z"), 851'042'397'000);
  EXPECT_EQ(parse_rfc3339("1937-01-01T12:00:27.87+00:20"),
            parse_rfc3339("1937-01-01T11:40:27.87Z"));
  EXPECT_EQ(parse_rfc3339("1990-12-31T23:59:60Z"), 662'688'000'000);
  EXPECT_EQ(parse_rfc3339("1990-12-31T15:59:60-08:00"), 662'688'000'000);
  EXPECT_EQ(parse_rfc3339("1985-04-12t23:20:50z"), parse_rfc3339("1985-04-12T23:20:50-00:00"));
}

TEST(Rfc3339Test, MalformedIsRefused) {
  for (const char* bad : {"", "1985-04-12", "1985-04-12T23:20:50", "1985-04-12T23:20:50.Z",
                          "1985-04-12 23:20:50Z", "1985-02-29T00:00:00Z", "1985-13-01T00:00:00Z",
                          "1985-04-12T24:00:00Z", "1985-04-12T23:60:00Z", "1985-04-12T23:20:60Z",
                          "1985-04-12T23:20:50+0100", "1985-04-12T23:20:50+24:00",
                          "85-04-12T23:20:50Z", "1985-04-12T23:20:50Zx", "+1985-4-12T23:20:50Z"}) {
    EXPECT_FALSE(parse_rfc3339(bad).has_value()) << bad;
  }
}

RC_GTEST_PROP(Rfc3339Property, ComesBack, ()) {
  const auto at = *rc::gen::inRange<std::int64_t>(0, 253'402'300'799'999);
  RC_ASSERT(parse_at(rfc3339(at)) == at);
  RC_ASSERT(parse_rfc3339(rfc3339(at)) == at);
}

}  // namespace
}  // namespace walkdown::record
