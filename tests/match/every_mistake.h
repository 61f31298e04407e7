// SPDX-License-Identifier: Apache-2.0
// Every single mistake that can be made in a field, one after another, without bounds or
// cleverness.
#pragma once

#include <functional>

#include "tests/match/reference.h"

namespace walkdown::simulated {

class EveryMistake {
 public:
  using Found = std::function<void(const match::Event&)>;

  explicit EveryMistake(const Bench& bench);

  // Those that save at least `least` nats when `on` is what hangs in the field; a block is anything
  // but a swap.
  void blocks(const On& on, double least, const Found& found) const;
  void swaps(const On& on, double least, const Found& found) const;

 private:
  using Map = std::vector<match::Effect>;

  // What the slots [first, first + count) could save at most, whatever hung on them: an exact
  // bound.
  [[nodiscard]] double most(const On& on, std::uint32_t first, std::uint32_t count) const;

  [[nodiscard]] double gain(const On& on, std::uint32_t slot, std::uint32_t source) const;
  void offer(const On& on, match::Kind kind, int by, double price, const Map& map, double least,
             const Found& found) const;
  void rail(const On& on, const match::Rail& rail, double least, const Found& found) const;
  void slides(const On& on, const match::Rail& rail, int by, double least,
              const Found& found) const;
  void wraps(const On& on, const match::Rail& rail, int by, double least, const Found& found) const;
  void rail_pairs(const On& on, double least, const Found& found) const;
  void module_pairs(const On& on, double least, const Found& found) const;

  const Bench& bench_;
  const match::Field& field_;
  std::vector<double> least_;  // cost of each slot under the load that fits its readings best
};

}  // namespace walkdown::simulated
