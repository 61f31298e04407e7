// SPDX-License-Identifier: Apache-2.0
// What the two halves of the second simulator share.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <optional>
#include <random>
#include <vector>

#include "tests/match/second_field.h"

namespace walkdown::simulated {

class Draw {
 public:
  explicit Draw(std::uint64_t seed) : bits_(static_cast<std::uint_fast32_t>(seed * 7919 + 13)) {}
  double unit() { return (static_cast<double>(bits_()) + 0.5) / 4294967296.0; }
  double from(double lo, double hi) { return lo + (hi - lo) * unit(); }
  double log_from(double lo, double hi) { return lo * std::pow(hi / lo, unit()); }
  bool yes(double p) { return unit() < p; }
  int pick(int n) { return std::min(n - 1, static_cast<int>(unit() * n)); }
  template <typename Values>
  auto& one_of(Values& values) {
    return values[static_cast<std::size_t>(pick(static_cast<int>(values.size())))];
  }
  double gauss(double sigma) {  // twelve uniforms less six: near enough to four deviations
    double sum = -6;
    for (int i = 0; i < 12; ++i) sum += unit();
    return sigma * sum;
  }

 private:
  std::mt19937 bits_;
};

// A rail as a row of sockets: what is planned on each, and whose load hangs there now.
struct Row {
  plan::PinId id;  // pin 0
  std::vector<std::optional<plan::Load>> planned;
  std::vector<plan::PinId> now;  // {0,0,0}: nothing
  [[nodiscard]] int size() const { return static_cast<int>(planned.size()); }
  [[nodiscard]] plan::PinId pin(int i) const {
    return {id.module, id.rail, static_cast<std::uint16_t>(i + 1)};
  }
  [[nodiscard]] plan::PinId own(int i) const {
    return planned[static_cast<std::size_t>(i)] ? pin(i) : plan::PinId{};
  }
};

// What is wrong with single loads, and what the tester shows of all of them.
void read_rows(const Setting& setting, const std::vector<Row>& rows, Draw& draw, Field& field);

}  // namespace walkdown::simulated
