// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/keys.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>

#include "tests/record/sample.h"

namespace walkdown::record {
namespace {

using testing::HasSubstr;

unsigned mode_of(const std::string& path) {
  struct stat found {};
  EXPECT_EQ(stat(path.c_str(), &found), 0);
  return found.st_mode & 0777U;
}

struct KeysTest : testing::Test {
  test::Scratch scratch;
  std::string path = scratch.path("folder/key");
  Done save(const SigningKey& key = test::lead()) {
    return save_person_key(path, key, "correct horse", Cost::interactive);
  }
};

TEST_F(KeysTest, StationKeyIsMadeOnceAndKept) {
  const auto made = station_key(path, "desk");
  ASSERT_TRUE(made.ok()) << made.error().sentence();
  EXPECT_EQ(mode_of(path), 0600U);
  const auto again = station_key(path, "another name");
  ASSERT_TRUE(again.ok());
  EXPECT_EQ(again->verify_key(), made->verify_key());
}

TEST_F(KeysTest, StationKeyThatOthersMayReadIsRefused) {
  ASSERT_TRUE(station_key(path, "desk").ok());
  ASSERT_EQ(chmod(path.c_str(), 0644), 0);
  EXPECT_EQ(station_key(path, "desk").error().code, Code::refused);
}

TEST_F(KeysTest, ChangedStationKeyIsToldSo) {
  ASSERT_TRUE(station_key(path, "desk").ok());
  const std::string text = test::read_file(path);
  for (std::size_t i = 0; i < text.size() - 1; ++i) {
    std::string changed = text;
    changed[i] = changed[i] == 'A' ? 'B' : 'A';
    test::write_file(path, changed);
    EXPECT_FALSE(station_key(path, "desk").ok()) << i;
  }
}

TEST_F(KeysTest, PersonKeyComesBackByItsPassphrase) {
  ASSERT_TRUE(save().ok());
  EXPECT_EQ(mode_of(path), 0600U);
  const auto key = load_person_key(path, "correct horse");
  ASSERT_TRUE(key.ok()) << key.error().sentence();
  EXPECT_EQ(key->sign("x"), test::lead().sign("x"));
  EXPECT_EQ(*person_vkey(path), test::lead().verify_key());
}

TEST_F(KeysTest, WrongPassphraseIsToldClearly) {
  ASSERT_TRUE(save().ok());
  const auto key = load_person_key(path, "correct h0rse");
  ASSERT_FALSE(key.ok());
  EXPECT_EQ(key.error().code, Code::refused);
  EXPECT_THAT(key.error().sentence(), HasSubstr("passphrase is wrong"));
}

TEST_F(KeysTest, ShortPassphraseIsRefused) {
  EXPECT_EQ(save_person_key(path, test::lead(), "short").error().code, Code::refused);
}

TEST_F(KeysTest, SecretIsNotInTheFile) {
  ASSERT_TRUE(save().ok());
  const Seed seed = test::lead().seed();
  EXPECT_THAT(test::read_file(path), testing::Not(HasSubstr(base64(seed.data(), seed.size()))));
}

TEST_F(KeysTest, NothingIsOverwritten) {
  ASSERT_TRUE(save().ok());
  EXPECT_EQ(save(test::witness()).error().code, Code::refused);
  EXPECT_EQ(*person_vkey(path), test::lead().verify_key());
}

TEST_F(KeysTest, FileThatAsksForTooMuchIsRefused) {
  ASSERT_TRUE(save().ok());
  std::string text = test::read_file(path);
  text.replace(text.find("67108864"), 8, "99999999999");
  test::write_file(path, text);
  EXPECT_EQ(load_person_key(path, "correct horse").error().code, Code::bad_input);
}

TEST_F(KeysTest, NoFileIsAnIoError) {
  EXPECT_EQ(load_person_key(path, "correct horse").error().code, Code::io);
}

}  // namespace
}  // namespace walkdown::record
