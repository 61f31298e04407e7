// SPDX-License-Identifier: Apache-2.0
// With real keys: what 21 CFR 11.50 and 11.70 ask of a signature.
#include "checklist/day/signatures.h"

#include <gmock/gmock.h>

#include "world.h"

namespace walkdown::day {
namespace {

using testing::HasSubstr;

class RealKeys : public testing::Test {
 protected:
  RealKeys() {
    outside_.check_note = check_record_notes();
    fold_.emplace(small_checklist(), outside_);
    write("open", {{"format", 1}});
    write("enrol", {{"name", "Cy"}, {"role", "crew"}, {"vkey", record::text(cy_.verify_key())}});
  }

  void write(std::string_view kind, Body body) {
    fold_->take({n_, kStart_ms, 1'000, std::string(kind), std::move(body)});
    ++n_;
  }
  [[nodiscard]] std::string note(const Body& body, const record::SigningKey& key) const {
    const record::Head head{"walkdown/test/0123456789abcdef", n_, {}, 0, 0};
    const auto made =
        record::make_sign_off(sign_off(fold_->checklist(), "answer", body, head, kStart_ms), key);
    EXPECT_TRUE(made);
    return made ? *made : "";
  }
  [[nodiscard]] Standing standing() const {
    return fold_->at({kStart_ms, 1'000}).items[0].standing;
  }

  const Body body_ = {{"item", "angles"}, {"value", "away"}, {"by", "Cy"}, {"role", "crew"}};
  record::SigningKey cy_ = record::SigningKey::make("cy");
  Outside outside_;
  std::optional<Fold> fold_;
  std::uint64_t n_ = 0;
};

// 21 CFR 11.50(a): printed name, date and time, meaning.
TEST_F(RealKeys, ASignatureShowsNameTimeAndMeaning) {
  const std::string text = note(body_, cy_);
  EXPECT_THAT(text, HasSubstr("I am Cy.\n"));
  EXPECT_THAT(text, HasSubstr("My role is crew.\n"));
  EXPECT_THAT(text, HasSubstr("The time is 2026-07-04T19:00:00.000Z.\n"));
  EXPECT_THAT(text, HasSubstr("I looked and answer the question: Where do they point?"));
  EXPECT_THAT(text, HasSubstr("The value is away.\n"));
  Body body = body_;
  body["signoff"] = text;
  write("answer", body);
  EXPECT_EQ(standing(), Standing::holds);
}

// What is signed reads as it was said, and not in thousandths or milliseconds alone.
TEST_F(RealKeys, NumbersAndTimesReadAsPeopleSayThem) {
  const auto text_of = [&](const char* kind, Body body) {
    body.update({{"by", "Cy"}, {"role", "crew"}});
    const record::Head head{"walkdown/test/0123456789abcdef", n_, {}, 0, 0};
    const auto made =
        record::make_sign_off(sign_off(fold_->checklist(), kind, body, head, kStart_ms), cy_);
    return made ? *made : made.error().sentence();
  };
  EXPECT_THAT(text_of("answer", {{"item", "water"}, {"milli", 20'500}}), HasSubstr("20.5 l"));
  EXPECT_THAT(
      text_of("show-time", {{"show_at_ms", kStart_ms}, {"utc_offset_min", 120}}),
      HasSubstr("the show is at 21:00 by the clock there, which is 2026-07-04T19:00:00.000Z"));
  EXPECT_THAT(
      text_of("wind", {{"mean_mm_per_s", 4'900}, {"gust_mm_per_s", 7'600}, {"period_ms", 600'000}}),
      HasSubstr("mean 4.9 m/s, gusts 7.6 m/s, over 10 min"));
}

// 21 CFR 11.70: it cannot be cut out and put to another statement.
TEST_F(RealKeys, ASignatureCannotBeMovedToAnotherStatement) {
  Body body = body_;
  body["signoff"] = note(body_, cy_);
  for (const auto& [name, value] : std::vector<std::pair<const char*, Body>>{
           {"value", "at people"}, {"item", "edge"}, {"by", "Bo"}, {"role", "lead"}, {"more", 1}}) {
    Body moved = body;
    moved[name] = value;
    write("answer", moved);
    EXPECT_EQ(standing(), Standing::open) << name;
  }
  write("out", body);
  EXPECT_EQ(standing(), Standing::open);
}

TEST_F(RealKeys, AnotherKeyDoesNotSignForThem) {
  Body body = body_;
  body["signoff"] = note(body_, record::SigningKey::make("cy"));
  write("answer", body);
  EXPECT_EQ(standing(), Standing::open);
  EXPECT_EQ(fold_->day().ignored_count, 1U);
}

TEST_F(RealKeys, EveryByteOfTheNoteCounts) {
  const std::string good = note(body_, cy_);
  for (std::size_t i = 0; i < good.size(); ++i) {
    Body body = body_;
    std::string bad = good;
    bad[i] = static_cast<char>(bad[i] ^ 1);
    body["signoff"] = bad;
    write("answer", body);
    ASSERT_EQ(standing(), Standing::open) << i;
  }
}

}  // namespace
}  // namespace walkdown::day
