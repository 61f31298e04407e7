// SPDX-License-Identifier: Apache-2.0
// Pairs of bad slots that would fit each other's load: what a far swap leaves behind, and, where
// many such pairs join the same two rails or modules, an exchange of these.
#pragma once

#include <cstdint>
#include <utility>
#include <vector>

#include "reader/match/search.h"
#include "reader/match/state.h"

namespace walkdown::match {

using SlotPairs = std::vector<std::pair<std::uint32_t, std::uint32_t>>;

struct Partners {
  SlotPairs rails;    // rail indices, a < b, sorted
  SlotPairs modules;  // module indices, a < b, sorted
  SlotPairs slots;    // of different modules, a < b, sorted
};

// Hashes bad slots by (what it reads, what was planned there), in cells of 0.4 ohm, and looks for
// the mirror image: linear in the bad slots. Rails and modules take part when a good share of their
// loads is bad, or a free pin shows a number; two pins when the excess of both pays for a far swap.
// A cell with very many equal slots is cut short: where m partners are as good as each other,
// naming one would be a guess. Only slots of `dirty` rails are looked at.
[[nodiscard]] Partners find_partners(const Field& field, const Mixture& mixture, const State& state,
                                     const Prices& prices, const std::vector<char>& dirty);

}  // namespace walkdown::match
