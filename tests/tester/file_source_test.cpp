// SPDX-License-Identifier: Apache-2.0
#include "reader/tester/file_source.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

namespace walkdown::tester {
namespace {

class FileSource : public ::testing::Test {
 protected:
  void write(std::string_view bytes) { std::ofstream(path, std::ios::binary) << bytes; }
  ~FileSource() override { std::filesystem::remove(path); }
  std::string path = ::testing::TempDir() + "lines_" + std::to_string(::getpid());
  std::vector<std::string> lines;
  Framer::Sink sink = [this](const Line& line) { lines.emplace_back(line.text); };
};

TEST_F(FileSource, HandsOnEachLine) {
  write("a\r\n\r\nb\nlast");
  const auto count = read_lines(path, sink);
  ASSERT_TRUE(count.ok());
  EXPECT_EQ(*count, 4U);
  EXPECT_THAT(lines, ::testing::ElementsAre("a", "b", "last"));
}

TEST_F(FileSource, TakesAnEmptyFile) {
  write("");
  EXPECT_EQ(*read_lines(path, sink), 0U);
}

TEST_F(FileSource, CrossesItsBufferWithoutLoss) {
  std::string all;
  for (int i = 0; i < 30'000; ++i) all += std::to_string(i) + "\n";
  write(all);
  ASSERT_TRUE(read_lines(path, sink).ok());
  ASSERT_EQ(lines.size(), 30'000U);
  for (std::size_t i = 0; i < lines.size(); ++i) ASSERT_EQ(lines[i], std::to_string(i));
}

TEST_F(FileSource, SaysWhatIsNotThere) {
  const auto missing = read_lines(path + ".none", sink);
  ASSERT_FALSE(missing.ok());
  EXPECT_THAT(missing.error().sentence(), ::testing::HasSubstr(path + ".none"));
  EXPECT_EQ(missing.error().code, Code::io);
  EXPECT_FALSE(read_lines("/", sink).ok());
}

}  // namespace
}  // namespace walkdown::tester
