// SPDX-License-Identifier: Apache-2.0
// A field by a second simulator: modules of 16, 32 and 72 pins, leads by position, one gauge a
// module, free pins at the ends of rails or here and there. `pins`, `repeats`, `style`, the two
// scales and `seed` of the setting count; the rest is its own.
#pragma once

#include "tests/match/simulator.h"

namespace walkdown::simulated {

[[nodiscard]] Field simulate_second(const Setting& setting);

}  // namespace walkdown::simulated
