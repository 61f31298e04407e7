// SPDX-License-Identifier: Apache-2.0
// The readings that a finding rests on, in words: what hangs there against what was planned. Pure.
#pragma once

#include <QStringList>
#include <cstddef>
#include <vector>

#include "reader/match/outcome.h"
#include "reader/plan/pin.h"

namespace walkdown::gui {

// One line a pin, such as "M08/R3/P04: low, 4.05 ohm (planned 9.07 to 11.79 ohm)". Pins that do not
// fit come first, each of the two in the order of `pins`; of more than `most` the last line tells
// how many are left out. Pins that `outcome` does not know have no line.
[[nodiscard]] QStringList readings_words(const match::Outcome& outcome,
                                         const std::vector<plan::PinId>& pins, std::size_t most);

}  // namespace walkdown::gui
