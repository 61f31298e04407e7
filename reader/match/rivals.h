// SPDX-License-Identifier: Apache-2.0
// Other single mistakes that would explain the same readings as one that was lifted out.
#pragma once

#include <cstdint>
#include <utility>
#include <vector>

#include "reader/match/search.h"

namespace walkdown::match {

// Which of two mistakes is told, where both are as good: the larger kind, then the lowest pin.
[[nodiscard]] bool better(const Event& a, const Event& b);

// Mistakes that change the same slots to the same specs are one to every reading: the best of them
// stands for all, at the price of their summed rates. Sorted by better().
void pool(Events& events, const State& state);

class Rivals {
 public:
  Rivals(const Field& field, const State& state, Search& search)
      : field_(field), state_(state), search_(search) {}

  // All that change a slot which `event` changes, and save at least `floor` nats; best first. In
  // the present state, which `event` is not in.
  [[nodiscard]] Events around(const Event& event, double floor);

  // slot -> spec it would have, where that is another one: what the readings can see of an event.
  [[nodiscard]] std::vector<std::pair<std::uint32_t, std::uint32_t>> seen_of(const Event& a) const;

 private:
  [[nodiscard]] bool changes(const Effect& e) const;
  [[nodiscard]] bool meets(const Event& a, const Event& b) const;
  void across(const std::vector<std::uint32_t>& rails, const std::vector<std::uint32_t>& modules,
              Events& found);

  const Field& field_;
  const State& state_;
  Search& search_;
};

}  // namespace walkdown::match
