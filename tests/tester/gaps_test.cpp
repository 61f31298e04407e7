// SPDX-License-Identifier: Apache-2.0
#include "reader/tester/gaps.h"

#include <gtest/gtest.h>

namespace walkdown::tester {
namespace {

using Kind = SeqNote::Kind;

TEST(SeqWatch, SaysNothingWhileNumbersFollowOn) {
  SeqWatch watch;
  for (std::uint64_t seq = 17; seq < 40; ++seq) EXPECT_FALSE(watch.see(seq).has_value());
  EXPECT_EQ(watch.lost(), 0U);
}

TEST(SeqWatch, CountsWhatIsMissing) {
  SeqWatch watch;
  watch.see(1);
  EXPECT_EQ(watch.see(5), (SeqNote{Kind::gap, 3}));
  EXPECT_EQ(watch.see(7), (SeqNote{Kind::gap, 1}));
  EXPECT_EQ(watch.lost(), 4U);
}

TEST(SeqWatch, TellsARepeatFromARestart) {
  SeqWatch watch;
  watch.see(12);
  EXPECT_EQ(watch.see(12), (SeqNote{Kind::repeat, 0}));
  EXPECT_EQ(watch.see(3), (SeqNote{Kind::restart, 0}));
  EXPECT_FALSE(watch.see(4).has_value());
}

TEST(SeqWatch, AFullCounterWraps) {
  for (const std::uint64_t last : {9ULL, 99ULL, 255ULL, 9999ULL, 65535ULL, 4294967295ULL}) {
    for (const std::uint64_t first : {0ULL, 1ULL}) {
      SeqWatch watch;
      watch.see(last);
      EXPECT_FALSE(watch.see(first).has_value()) << last;
    }
    SeqWatch watch;
    watch.see(last - 1);
    EXPECT_TRUE(watch.see(0).has_value()) << last;
  }
}

TEST(SeqWatch, ForgetsOverAnUnplugging) {
  SeqWatch watch;
  watch.see(500);
  watch.forget();
  EXPECT_FALSE(watch.see(1).has_value());
}

TEST(SeqWatch, TakesTheLargestNumbers) {
  SeqWatch watch;
  watch.see(0);
  EXPECT_EQ(watch.see(UINT64_MAX), (SeqNote{Kind::gap, UINT64_MAX - 1}));
  EXPECT_EQ(watch.see(0), (SeqNote{Kind::restart, 0}));
}

}  // namespace
}  // namespace walkdown::tester
