// SPDX-License-Identifier: Apache-2.0
// Pins that no resistance test can tell apart: their loads are electrically the same. A swap among
// them is invisible; they go on a list to check by eye.
#pragma once

#include <vector>

#include "reader/plan/plan.h"

namespace walkdown::match {

// Groups of two or more planned pins whose igniters, count, join, wire and lead are the same in
// ohms (to 0.1 %, however written). Groups and pins are sorted by pin; a pin is in one group at
// most. Pins planned to stay free are in none.
[[nodiscard]] std::vector<std::vector<plan::PinId>> alike(const plan::Plan& plan);

}  // namespace walkdown::match
