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
  // "Nothing is on it" costs nothing where the pin is open; elsewhere a sound load is the best.
  const bool free_is_best = spec == kNothing || held.seen.open();
  const double usual = free_is_best ? 0 : mixture.table().specs[spec].usual;
  excess[slot] = held.seen.unread() ? 0 : std::max(0.0, cost[slot] - usual);
}

}  // namespace walkdown::match
