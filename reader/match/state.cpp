// SPDX-License-Identifier: Apache-2.0
#include "reader/match/state.h"

#include <algorithm>

namespace walkdown::match {

State::State(const Field& field, const Mixture& mixture) {
  const std::size_t n = field.slots.size();
  on.resize(n);
  from.resize(n);
  cost.resize(n);
  excess.resize(n);
  for (std::uint32_t i = 0; i < n; ++i) {
    set(field, mixture, i, field.slots[i].spec, field.slots[i].spec == kNothing ? kNowhere : i);
  }
}

void State::set(const Field& field, const Mixture& mixture, std::uint32_t slot, std::uint32_t spec,
                std::uint32_t source) {
  const Slot& held = field.slots[slot];
  on[slot] = spec;
  from[slot] = source;
  cost[slot] = mixture.cost(held, spec);
  excess[slot] = 0;
  if (held.seen.unread()) return;
  // "Nothing is on it" costs nothing where the pin is open; elsewhere a sound load is the best.
  if (held.seen.open()) {
    excess[slot] = std::max(0.0, cost[slot]);
    return;
  }
  // The cost of jumping readings has a constant in it that says nothing of the load.
  if (mixture.unsteady(held)) {
    excess[slot] = std::max(0.0, cost[slot] - mixture.least_jump(held));
    return;
  }
  const double usual = spec == kNothing ? 0 : mixture.table().specs[spec].usual;
  const double here = std::max(0.0, cost[slot] - usual);
  // Another load may be known more narrowly, and so cost less where it fits.
  excess[slot] = here > kBad ? std::max(here, cost[slot] - mixture.least_usual()) : here;
}

}  // namespace walkdown::match
