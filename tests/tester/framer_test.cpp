// SPDX-License-Identifier: Apache-2.0
#include "reader/tester/framer.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <random>
#include <string>
#include <vector>

namespace walkdown::tester {
namespace {

using ::testing::ElementsAre;

struct Kept {
  std::string text;
  std::uint64_t number;
  Ending ending;
  friend bool operator==(const Kept&, const Kept&) = default;
};

class FramerTest : public ::testing::Test {
 protected:
  Framer::Sink sink() {
    return [this](const Line& line) {
      lines.push_back({std::string(line.text), line.number, line.ending});
      beginnings.push_back(line.beginning);
    };
  }
  std::vector<std::string> texts() const {
    std::vector<std::string> all;
    for (const Kept& line : lines) all.push_back(line.text);
    return all;
  }
  std::vector<Kept> lines;
  std::vector<Beginning> beginnings;
};

TEST_F(FramerTest, TakesAllThreeLineEnds) {
  Framer framer;
  framer.feed("a\nb\r\nc\rd\n", sink());
  EXPECT_THAT(texts(), ElementsAre("a", "b", "c", "d"));
  EXPECT_EQ(lines.back().number, 4U);
}

TEST_F(FramerTest, ALineEndCutInTwoIsOneLineEnd) {
  Framer framer;
  framer.feed("a\r", sink());
  EXPECT_THAT(texts(), ElementsAre("a"));  // a CR alone may be all there ever comes
  framer.feed("\nb\r", sink());
  framer.feed("\n", sink());
  EXPECT_THAT(lines,
              ElementsAre(Kept{"a", 1, Ending::terminated}, Kept{"b", 2, Ending::terminated}));
}

TEST_F(FramerTest, CountsBlankLinesAndHandsNoneOn) {
  Framer framer;
  framer.feed(std::string_view("\n \t\n\0\0\nx\n", 9), sink());
  EXPECT_THAT(lines, ElementsAre(Kept{"x", 4, Ending::terminated}));
}

TEST_F(FramerTest, KeepsNulBytesAsReceived) {
  Framer framer;
  framer.feed(std::string_view("\0M07\0\n", 6), sink());
  EXPECT_EQ(lines.at(0).text, std::string("\0M07\0", 5));
}

TEST_F(FramerTest, CutsALongLineAndTellsItOnce) {
  Framer framer;
  const std::string longest(kMaxLineBytes, 'x');
  framer.feed(longest + "\n", sink());
  framer.feed(longest + "y\n", sink());
  for (int i = 0; i < 1000; ++i) framer.feed(std::string(10'000, 'z'), sink());
  framer.feed("\nafter\n", sink());
  ASSERT_EQ(lines.size(), 4U);
  EXPECT_EQ(lines[0], (Kept{longest, 1, Ending::terminated}));
  EXPECT_EQ(lines[1], (Kept{longest, 2, Ending::too_long}));
  EXPECT_EQ(lines[2], (Kept{std::string(kMaxLineBytes, 'z'), 3, Ending::too_long}));
  EXPECT_EQ(lines[3], (Kept{"after", 4, Ending::terminated}));
}

TEST_F(FramerTest, TellsALongLineOfBlanks) {
  Framer framer;
  framer.feed(std::string(kMaxLineBytes + 1, '\0') + "\n", sink());
  ASSERT_EQ(lines.size(), 1U);
  EXPECT_EQ(lines[0].ending, Ending::too_long);
}

TEST_F(FramerTest, HandsOnAnUnfinishedLastLine) {
  Framer framer;
  framer.feed("a\nb", sink());
  framer.finish(Ending::end_of_file, sink());
  framer.finish(Ending::end_of_file, sink());
  EXPECT_THAT(lines,
              ElementsAre(Kept{"a", 1, Ending::terminated}, Kept{"b", 2, Ending::end_of_file}));
}

TEST_F(FramerTest, AfterAHangUpTheNextLineMayLackItsBeginning) {
  Framer framer(Beginning::unknown);
  framer.feed("5,2.31\nb\nc", sink());
  framer.finish(Ending::hang_up, sink());
  framer.feed("d\ne\n", sink());
  EXPECT_THAT(lines,
              ElementsAre(Kept{"5,2.31", 1, Ending::terminated}, Kept{"b", 2, Ending::terminated},
                          Kept{"c", 3, Ending::hang_up}, Kept{"d", 4, Ending::terminated},
                          Kept{"e", 5, Ending::terminated}));
  EXPECT_THAT(beginnings, ElementsAre(Beginning::unknown, Beginning::whole, Beginning::whole,
                                      Beginning::unknown, Beginning::whole));
}

TEST_F(FramerTest, AnyCutOfTheBytesGivesTheSameLines) {
  std::mt19937 random(7);  // NOLINT(cert-msc51-cpp): the same bytes every time
  std::string bytes;
  for (int i = 0; i < 5000; ++i) {
    constexpr std::string_view kAlphabet("ab\r\n\0 ", 6);
    bytes += kAlphabet[random() % kAlphabet.size()];
  }
  Framer whole;
  whole.feed(bytes, sink());
  const std::vector<Kept> expected = std::exchange(lines, {});
  for (int round = 0; round < 50; ++round) {
    lines.clear();
    Framer framer;
    for (std::size_t at = 0; at < bytes.size();) {
      const std::size_t part = 1 + random() % 40;
      framer.feed(std::string_view(bytes).substr(at, part), sink());
      at += part;
    }
    ASSERT_EQ(lines, expected);
    EXPECT_EQ(framer.lines(), whole.lines());
  }
}

}  // namespace
}  // namespace walkdown::tester
