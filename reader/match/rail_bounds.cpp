// SPDX-License-Identifier: Apache-2.0
#include "reader/match/rail_bounds.h"

#include <algorithm>

namespace walkdown::match {

void RailBounds::lay_out(const Field& field, const Mixture& mixture, const State& state,
                         std::uint32_t first, int count) {
  const auto n = static_cast<std::size_t>(count);
  on_.assign(state.on.begin() + first, state.on.begin() + first + count);
  excess_.assign(state.excess.begin() + first, state.excess.begin() + first + count);
  for (std::vector<float>* values : {&shown_, &mean_, &reach_}) values->resize(n);
  other_.resize(n);
  bare_.resize(n);
  for (std::size_t t = 0; t < n; ++t) {
    const std::uint32_t at = first + static_cast<std::uint32_t>(t);
    const Seen& seen = field.slots[at].seen;
    const Mixture::Reach& reach = mixture.reach(on_[t]);
    shown_[t] = mixture.shown(at);
    mean_[t] = reach.mean;
    reach_[t] = reach.width;
    const bool loaded = on_[t] != kNothing;
    const bool either = seen.open() && loaded;
    other_[t] = seen.unread() ? 0 : either ? kOpenEither : excess_[t] - kFaultToo;
    bare_[t] = seen.unread() || !loaded ? 0 : seen.open() ? excess_[t] : excess_[t] - kStray;
  }
}

double RailBounds::recovered(int t) const {
  double best = bare(t);
  for (int s = 0; s < static_cast<int>(on_.size()) && best < excess(t); ++s) {
    best = std::max(best, most(t, s));
  }
  return best;
}

}  // namespace walkdown::match
