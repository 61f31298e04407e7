// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/note.h"

#include <gtest/gtest.h>

#include "checklist/record/checkpoint.h"
#include "checklist/record/cosign.h"
#include "tests/record/sample.h"

namespace walkdown::record {
namespace {

// The example of C2SP signed-note.md.
constexpr const char* kExampleKey =
    "example.com/foo+530d903a+AekyeRrm56hApGFkyQR4ZCbV54Id2LKaANYcrnKv3U2k";
const std::string kExample =
    "This is an example message.\n\n\xE2\x80\x94 example.com/foo "
    "Uw2QOkn8srV1yJGh2VYRlL1Tnagv1YEq6TfXppzi2ONncAlTgK7Ztg1ERYNZXsYjOBH3mFXmRKuwHjG1Yu72IneyaQM="
    "\n";

TEST(NoteTest, PublishedExampleHolds) {
  const auto key = parse_vkey(kExampleKey);
  ASSERT_TRUE(key.ok());
  EXPECT_EQ(key_id(*key), 0x530d903aU);
  EXPECT_EQ(text(*key), kExampleKey);
  const auto note = parse_note(kExample);
  ASSERT_TRUE(note.ok());
  EXPECT_EQ(note->text, "This is an example message.\n");
  EXPECT_TRUE(is_signed_by(*note, *key));
  EXPECT_EQ(text(*note), kExample);
}

// Package documentation of golang.org/x/mod/sumdb/note: a private key, its text, its signature.
TEST(NoteTest, SecondPublishedExampleIsReproduced) {
  const auto secret = from_base64("AYEKFALVFGyNhPJEMzD1QIDr+Y7hfZx09iUvxdXHKDFz");
  ASSERT_TRUE(secret.has_value());
  Seed seed{};
  std::copy(secret->begin() + 1, secret->end(), seed.begin());
  const SigningKey key("PeterNeumann", seed);
  EXPECT_EQ(text(key.verify_key()),
            "PeterNeumann+c74f20a3+ARpc2QcUPDhMQegwxbzhKqiBfsVkmqq/LDE4izWy10TW");
  const Note note = sign_note(
      "If you think cryptography is the answer to your problem,\n"
      "then you don't know what your problem is.\n",
      key);
  EXPECT_TRUE(
      text(note).ends_with("\n\xE2\x80\x94 PeterNeumann x08go/ZJkuBS9UG/SffcvIAQxVBtiFupLLr8p"
                           "AcElZInNIuGUgYN1FFYC2pZSNXgKvqfqdngotpRZb6KE6RyyBwJnAM=\n"));
}

TEST(NoteTest, EveryFlippedBitOfTheExampleIsRefused) {
  const auto key = parse_vkey(kExampleKey);
  for (std::size_t bit = 0; bit < kExample.size() * 8; ++bit) {
    std::string forged = kExample;
    forged[bit / 8] = static_cast<char>(forged[bit / 8] ^ static_cast<char>(1U << (bit % 8)));
    const auto note = parse_note(forged);
    EXPECT_FALSE(note.ok() && is_signed_by(*note, *key)) << bit;
  }
}

TEST(NoteTest, MalformedIsRefused) {
  for (const std::string& bad :
       {std::string("text\n"), std::string("text\n\n"), std::string("text\n\nx y\n"),
        std::string("t\x01xt\n\n\xE2\x80\x94 a AAAAAAA=\n"), kExample + "\n",
        kExample.substr(0, kExample.size() - 1),
        std::string("\xff\n\n\xE2\x80\x94 a AAAAAAA=\n")}) {
    EXPECT_FALSE(parse_note(bad).ok()) << bad;
  }
}

// RFC 8032 section 7.1, tests 1 to 3.
TEST(Ed25519Test, PublishedSignatures) {
  const auto hex_of = [](const Bytes& bytes) { return hex(bytes.data(), bytes.size()); };
  EXPECT_EQ(hex(test::station().verify_key().key.data(), 32),
            "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a");
  EXPECT_EQ(
      hex_of(test::station().sign("")),
      "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701c"
      "f9b46bd25bf5f0595bbe24655141438e7a100b");
  EXPECT_EQ(
      hex_of(test::lead().sign("\x72")),
      "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0"
      "f11d8c387b2eaeb4302aeeb00d291612bb0c00");
  EXPECT_EQ(
      hex_of(test::witness().sign("\xaf\x82")),
      "6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f76098"
      "4dc6594a7c15e9716ed28dc027beceea1ec40a");
}

TEST(VkeyTest, MalformedIsRefused) {
  for (const char* bad :
       {"", "name", "name+530d903a", "+530d903a+AekyeRrm56hApGFkyQR4ZCbV54Id2LKaANYcrnKv3U2k",
        "example.com/foo+530D903A+AekyeRrm56hApGFkyQR4ZCbV54Id2LKaANYcrnKv3U2k",
        "example.com/fo+530d903a+AekyeRrm56hApGFkyQR4ZCbV54Id2LKaANYcrnKv3U2k",
        "a b+530d903a+AekyeRrm56hApGFkyQR4ZCbV54Id2LKaANYcrnKv3U2k",
        "example.com/foo+530d903a+AekyeRrm56hApGFkyQR4ZCbV54Id2LKaANYcrnKv3U2"}) {
    EXPECT_FALSE(parse_vkey(bad).ok()) << bad;
  }
}

TEST(VkeyTest, NamesHaveNoSpaceOfAnyKind) {
  EXPECT_TRUE(is_key_name("Bühne-2"));
  for (const char* bad : {"", "a b", "a+b",
                          "a\xC2\xA0"
                          "b",
                          "a\xE2\x80\x83"
                          "b",
                          "a\xE3\x80\x80", "a\tb"}) {
    EXPECT_FALSE(is_key_name(bad)) << bad;
  }
}

// RFC 4648 section 10, and section 3.5: unused bits must be zero.
TEST(Base64Test, CanonicalOnly) {
  const auto encode = [](std::string_view s) {
    return base64(reinterpret_cast<const std::uint8_t*>(s.data()), s.size());
  };
  EXPECT_EQ(encode(""), "");
  EXPECT_EQ(encode("f"), "Zg==");
  EXPECT_EQ(encode("fo"), "Zm8=");
  EXPECT_EQ(encode("foobar"), "Zm9vYmFy");
  EXPECT_EQ(from_base64("Zg=="), Bytes{'f'});
  for (const char* bad :
       {"Zh==", "Zg=", "Zg", "Zg==\n", "Z g=", "Zm9=", "Zm9_", "====", "Zg==Zg=="}) {
    EXPECT_FALSE(from_base64(bad).has_value()) << bad;
  }
}

TEST(CheckpointTest, RoundTripAndMalformed) {
  const Checkpoint checkpoint{"origin/1", 12, leaf_hash("x")};
  EXPECT_EQ(*parse_checkpoint(text(checkpoint)), checkpoint);
  const std::string root = base64(checkpoint.root.data(), 32);
  for (const std::string& bad : std::vector<std::string>{
           "", "\n", "o\n1\n", "o\n01\n" + root + "\n", "o\n-1\n" + root + "\n", "o\n1\n" + root,
           "o\n1\n" + root + "\nmore\n", "a b\n1\n" + root + "\n",
           "o\n18446744073709551616\n" + root + "\n"}) {
    EXPECT_FALSE(parse_checkpoint(bad).ok()) << bad;
  }
}

// The example of C2SP tlog-cosignature.md has no public key beside it: its form is taken apart, and
// its time is the one the document prints.
TEST(CosignTest, PublishedExampleIsTakenApart) {
  const auto cosigned = parse_cosigned(
      "example.com/behind-the-sofa\n20852163\nCsUYapGGPo4dkMgIAUqom/Xajj7h2fB2MPA3j2jxq2I=\n\n"
      "\xE2\x80\x94 witness.example.com/w1 "
      "jWbPPwAAAABkGFDLEZMHwSRaJNiIDoe9DYn/zXcrtPHeolMI5OWXEhZCB9dlr"
      "DJsX3b2oyin1nPZqhf5nNo0xUe+mbIUBkBIfZ+qnA==\n");
  ASSERT_TRUE(cosigned.ok()) << cosigned.error().sentence();
  EXPECT_EQ(cosigned->time_s, 1679315147U);
  EXPECT_EQ(cosigned->checkpoint.size, 20852163U);
}

TEST(CosignTest, HoldsForTheWitnessAlone) {
  const std::string note =
      text(sign_note(text(Checkpoint{"origin/1", 3, leaf_hash("x")}), test::station()));
  const auto signed_note = cosign(note, test::witness(), 1'783'191'740);
  ASSERT_TRUE(signed_note.ok());
  const auto cosigned = parse_cosigned(*signed_note);
  ASSERT_TRUE(cosigned.ok());
  EXPECT_TRUE(is_cosigned_by(*cosigned, test::witness().verify_key()));
  EXPECT_FALSE(is_cosigned_by(*cosigned, test::lead().verify_key()));
  // It is no signature of the note itself: the two have ids of their own.
  EXPECT_FALSE(is_signed_by(cosigned->note, test::witness().verify_key()));
}

}  // namespace
}  // namespace walkdown::record
