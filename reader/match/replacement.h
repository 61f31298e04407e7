// SPDX-License-Identifier: Apache-2.0
// One mistake tried in the place of those that are held where it would be; what was held before
// comes back where it proves the better.
#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

#include "reader/match/hypothesis.h"

namespace walkdown::match {

class Replacement {
 public:
  // Lifts out `old`, a closed set of mistakes that touch `rails` and no others: Hypothesis::closed.
  Replacement(Hypothesis& held, const Field& field, std::vector<std::size_t> old,
              std::vector<std::uint32_t> rails);

  // Puts the mistake in, and under it those of the old ones that it does not hang together with.
  void put(Event event);

  // Whatever else is found there, what was held before is the better. To be asked after each find.
  [[nodiscard]] bool hopeless() const;

  // Of the mistake and of those that it took the place of, sorted: where to look for more.
  [[nodiscard]] const std::vector<std::uint32_t>& rails() const { return around_; }

  // Keeps what is held by now, or what was held before. Call once, last.
  void settle();

 private:
  [[nodiscard]] double prices_of(const std::vector<std::size_t>& events) const;
  void put_back_apart();
  [[nodiscard]] double to_explain() const;
  [[nodiscard]] double cost_now() const;  // of these rails, with what is held on them

  Hypothesis& held_;
  const Field& field_;
  std::vector<std::size_t> old_, kept_;
  std::vector<std::uint32_t> all_rails_, around_;
  std::vector<std::uint32_t> slots_;  // of the mistake and those that it took the place of, sorted
  double before_ = 0;
  std::size_t first_ = 0;  // number of the first mistake put in
};

}  // namespace walkdown::match
