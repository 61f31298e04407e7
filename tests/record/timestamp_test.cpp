// SPDX-License-Identifier: Apache-2.0
// RFC 3161 against the stock openssl command: it reads our requests, we read its answers.
#include "checklist/record/timestamp.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <ctime>

#include "tests/record/authority.h"

namespace walkdown::record {
namespace {

using testing::HasSubstr;

constexpr const char* kNote = "origin/1\n3\nroot\n\n\xE2\x80\x94 station c2lnbmF0dXJl\n";
constexpr std::uint64_t kNonce = 0x7edcba9876543210ULL;

test::Authority& authority() {
  static test::Authority one;
  return one;
}
Bytes request() { return *time_stamp_request(kNote, kNonce); }
const Bytes& answer() {
  static const Bytes one = authority().answer(request());
  return one;
}
std::string why(const Result<TimeStamp>& result) { return result ? "" : result.error().what; }

TEST(TimeStamp, TheRequestIsWhatOpensslAsksFor) {
  const std::string ours = authority().read(request());
  const std::string theirs = authority().read(authority().request(kNote, "-sha256 -cert"));
  const auto before_nonce = [](const std::string& text) {
    return text.substr(0, text.find("Nonce"));
  };
  EXPECT_EQ(before_nonce(ours), before_nonce(theirs));
  EXPECT_THAT(ours, HasSubstr("Nonce: 0x7EDCBA9876543210"));
  EXPECT_THAT(ours, HasSubstr("Certificate required: yes"));
}

TEST(TimeStamp, TheAnswerSaysWhenAndWho) {
  const Bytes asked = request();
  const auto stamp = check_time_stamp(kNote, &asked, answer());
  ASSERT_TRUE(stamp.ok()) << stamp.error().sentence();
  EXPECT_EQ(stamp->authority, "CN=Time-stamps,O=A test");
  EXPECT_NEAR(static_cast<double>(stamp->at_ms / 1000), static_cast<double>(std::time(nullptr)),
              120);
  EXPECT_TRUE(check_time_stamp(kNote, nullptr, answer()).ok());
}

TEST(TimeStamp, OverAnotherTextItDoesNotHold) {
  const std::string other = std::string(kNote) + "\n";
  EXPECT_THAT(why(check_time_stamp(other, nullptr, answer())), HasSubstr("something else"));
  const Bytes asked = *time_stamp_request(other, kNonce);
  EXPECT_THAT(why(check_time_stamp(kNote, &asked, answer())), HasSubstr("another head"));
}

TEST(TimeStamp, AnAnswerToAnotherRequestDoesNotHold) {
  const Bytes other = *time_stamp_request(kNote, kNonce - 1);
  EXPECT_THAT(why(check_time_stamp(kNote, &other, answer())), HasSubstr("another request"));
  const Bytes without = authority().request(kNote, "-sha256 -cert -no_nonce");
  EXPECT_THAT(why(check_time_stamp(kNote, &without, authority().answer(without))),
              HasSubstr("no nonce"));
}

TEST(TimeStamp, ARefusalIsToldInTheAuthoritysWords) {
  const Bytes asked = request();
  const auto refused = check_time_stamp(kNote, &asked, authority().decline(asked));
  ASSERT_FALSE(refused.ok());
  EXPECT_EQ(refused.error().code, Code::refused);
  EXPECT_THAT(refused.error().what, HasSubstr("status 2"));  // rejection, RFC 3161 2.4.2
}

TEST(TimeStamp, WithoutTheCertificateItCannotBeChecked) {
  const Bytes without = authority().request(kNote, "-sha256");
  EXPECT_THAT(why(check_time_stamp(kNote, &without, authority().answer(without))),
              HasSubstr("certificate is not in it"));
}

// No change of the answer gives another time or another name: it holds no more, or says the same.
TEST(TimeStamp, NoChangedBitSaysAnythingElse) {
  const Bytes asked = request();
  const auto honest = check_time_stamp(kNote, &asked, answer());
  std::size_t held = 0, tried = 0;
  for (std::size_t bit = 0; bit < answer().size() * 8; bit += 3, ++tried) {
    Bytes changed = answer();
    changed[bit / 8] ^= static_cast<std::uint8_t>(1U << (bit % 8));
    const auto stamp = check_time_stamp(kNote, &asked, changed);
    if (!stamp) continue;
    ++held;
    EXPECT_EQ(stamp->at_ms, honest->at_ms) << bit;
    EXPECT_EQ(stamp->authority, honest->authority) << bit;
  }
  EXPECT_LT(held, tried / 20);
}

TEST(TimeStamp, NoCutAnswerHolds) {
  for (std::size_t size = 0; size < answer().size(); size += 13) {
    const Bytes cut(answer().begin(), answer().begin() + static_cast<std::ptrdiff_t>(size));
    EXPECT_FALSE(check_time_stamp(kNote, nullptr, cut).ok()) << size;
  }
  Bytes longer = answer();
  longer.push_back(0);
  EXPECT_FALSE(check_time_stamp(kNote, nullptr, longer).ok());
}

TEST(TimeStamp, WhoseItIsTheReadersCertificatesSay) {
  EXPECT_EQ(not_vouched(answer(), authority().certificate()), std::nullopt);
  test::Authority other;
  EXPECT_THAT(not_vouched(answer(), other.certificate()).value_or(""), HasSubstr("none of"));
  // Both of one name: the signature tells them apart.
  EXPECT_EQ(not_vouched(answer(), other.certificate() + authority().certificate()), std::nullopt);
  EXPECT_EQ(*count_certificates(other.certificate() + authority().certificate()), 2U);
  EXPECT_FALSE(count_certificates("").ok());
  EXPECT_FALSE(
      count_certificates("-----BEGIN CERTIFICATE-----\nAAAA\n-----END CERTIFICATE-----\n").ok());
}

}  // namespace
}  // namespace walkdown::record
