// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/files.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cerrno>
#include <filesystem>
#include <system_error>

#include "tests/cli/program.h"

namespace walkdown::cli {
namespace {

namespace fs = std::filesystem;
using testing::HasSubstr;

TEST(WriteFile, PutsANewFileInThePlaceOfTheOld) {
  const Folder folder;
  const std::string path = folder.put("report.html", "old");
  ASSERT_TRUE(write_file(path, "new").ok());
  EXPECT_EQ(whole_file(path), "new");
  EXPECT_FALSE(fs::exists(path + ".part"));
}

TEST(WriteFile, MakesAFileThatIsNotThereYet) {
  const Folder folder;
  const std::string path = folder / "new.csv";
  const Done kept = write_file(path, "bytes");
  ASSERT_TRUE(kept.ok()) << kept.error().sentence();
  EXPECT_EQ(whole_file(path), "bytes");
}

// Through links that the test made: should it fail as root, the devices stay.
TEST(WriteFile, WritesToADeviceAndDoesNotReplaceIt) {
  const Folder folder;
  const std::string nowhere = folder / "null";
  fs::create_symlink("/dev/null", nowhere);
  EXPECT_TRUE(write_file(nowhere, "bytes").ok());
  EXPECT_TRUE(fs::is_symlink(nowhere));
  EXPECT_TRUE(fs::is_character_file(nowhere));
  const std::string full = folder / "full";
  fs::create_symlink("/dev/full", full);
  const Done kept = write_file(full, "bytes");
  ASSERT_FALSE(kept.ok());
  EXPECT_THAT(kept.error().sentence(), HasSubstr(std::generic_category().message(ENOSPC)));
  EXPECT_TRUE(fs::is_character_file(full));
}

TEST(WriteFile, FollowsALinkToAFile) {
  const Folder folder;
  const std::string path = folder.put("kept.csv", "old");
  const std::string link = folder / "link.csv";
  fs::create_symlink(path, link);
  ASSERT_TRUE(write_file(link, "new").ok());
  EXPECT_TRUE(fs::is_symlink(link));
  EXPECT_EQ(whole_file(path), "new");
}

TEST(WriteFile, AFolderIsSaidToBeOne) {
  const Folder folder;
  const Done kept = write_file(folder / "", "bytes");
  ASSERT_FALSE(kept.ok());
  EXPECT_THAT(kept.error().sentence(), HasSubstr("it is a folder"));
}

}  // namespace
}  // namespace walkdown::cli
