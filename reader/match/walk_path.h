// SPDX-License-Identifier: Apache-2.0
// An open path that is bettered by local moves. Internal to walk.cpp.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "reader/match/walk.h"

namespace walkdown::match {

// Nodes 1..n are the places, 0 is the start, n + 1 an end at distance 0 from everything: so the
// last place is free.
class WalkPath {
 public:
  WalkPath(Place start, std::span<const Place> places);

  using Node = std::uint16_t;
  using Path = std::vector<Node>;  // start, places, end

  [[nodiscard]] std::size_t places() const { return n_; }
  [[nodiscard]] double far(Node a, Node b) const { return far_[a * width_ + b]; }
  [[nodiscard]] const std::vector<Node>& near(Node a) const { return near_[a]; }
  [[nodiscard]] double length(const Path& path) const;

  // Nearest neighbour, with `first` as the first place.
  [[nodiscard]] Path nearest(Node first) const;

  // 2-opt and Or-opt until no move between near places betters it; looks at positions [from, to)
  // first, and wherever something changed. Returns the metres saved.
  double better(Path& path, std::size_t from, std::size_t to) const;

 private:
  struct Work;
  double turn(Path& path, std::size_t i, std::size_t j) const;
  double at(Path& path, std::size_t i, Work& work) const;
  double turns(Path& path, std::size_t i, Work& work) const;
  double shifts(Path& path, std::size_t i, Work& work) const;

  std::size_t n_;
  std::size_t width_;
  std::vector<float> far_;
  std::vector<std::vector<Node>> near_;
};

}  // namespace walkdown::match
