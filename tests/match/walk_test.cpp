// SPDX-License-Identifier: Apache-2.0
#include "reader/match/walk.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

#include "tests/match/simulator.h"

namespace walkdown {
namespace {

using match::Place;

std::vector<Place> scattered(std::uint64_t seed, std::size_t n, bool rows) {
  simulated::Dice dice(seed);
  std::vector<Place> out;
  for (std::size_t i = 0; i < n; ++i) {
    const double y = rows ? 25.0 * static_cast<double>(dice.below(3)) : dice.uniform(0, 100);
    out.push_back({dice.uniform(0, 200), y});
  }
  return out;
}

// Every order, given up once it is longer than the best so far.
class EveryOrder {
 public:
  EveryOrder(Place start, const std::vector<Place>& places)
      : places_(places), seen_(places.size()) {
    try_next(start, 0, 0);
  }
  [[nodiscard]] double least() const { return least_; }

 private:
  void try_next(Place here, std::size_t done, double length) {
    if (length >= least_) return;
    if (done == places_.size()) {
      least_ = length;
      return;
    }
    std::vector<std::pair<double, std::size_t>> next;
    for (std::size_t i = 0; i < places_.size(); ++i) {
      if (seen_[i] != 0) continue;
      next.emplace_back(std::hypot(places_[i].x_m - here.x_m, places_[i].y_m - here.y_m), i);
    }
    std::sort(next.begin(), next.end());
    for (const auto& [far, i] : next) {
      seen_[i] = 1;
      try_next(places_[i], done + 1, length + far);
      seen_[i] = 0;
    }
  }

  const std::vector<Place>& places_;
  std::vector<char> seen_;
  double least_ = std::numeric_limits<double>::infinity();
};

TEST(Walk, FiftySetsOfTwelveBesideEveryOrder) {
  for (std::uint64_t seed = 1; seed <= 50; ++seed) {
    const Place start{-10, 20};
    const auto places = scattered(seed, 12, seed % 2 == 0);
    const double best = EveryOrder(start, places).least();
    const auto exact = match::walk(start, places);
    EXPECT_NEAR(match::walk_length(start, places, exact), best, 1e-3) << seed;
    match::WalkOptions rules_of_thumb;
    rules_of_thumb.exact_up_to = 0;
    const auto order = match::walk(start, places, rules_of_thumb);
    EXPECT_LE(match::walk_length(start, places, order), 1.05 * best) << seed;
  }
}

TEST(Walk, EveryPlaceOnceAndTheSameEachTime) {
  for (const std::size_t n : {0U, 1U, 2U, 3U, 13U, 14U, 60U, 200U}) {
    const auto places = scattered(n + 7, n, false);
    auto order = match::walk({0, 0}, places);
    EXPECT_EQ(order, match::walk({0, 0}, places));
    std::sort(order.begin(), order.end());
    std::vector<std::size_t> all(n);
    std::iota(all.begin(), all.end(), std::size_t{0});
    EXPECT_EQ(order, all);
  }
}

TEST(Walk, PlacesOnOneSpotAndNoPlaces) {
  const std::vector<Place> spot(40, Place{5, 5});
  EXPECT_EQ(match::walk({0, 0}, spot).size(), 40U);
  auto lost = scattered(3, 20, false);
  lost[4].x_m = std::numeric_limits<double>::quiet_NaN();
  const auto order = match::walk({0, 0}, lost);
  ASSERT_EQ(order.size(), 20U);
  EXPECT_EQ(order.back(), 4U);
}

}  // namespace
}  // namespace walkdown
