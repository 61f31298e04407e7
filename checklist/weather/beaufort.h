// SPDX-License-Identifier: Apache-2.0
// Beaufort force from a mean wind, by the table of WMO-No. 306 (section E): at 10 m above open
// flat ground. It grades a mean: never feed it a gust.
#pragma once

#include <cstdint>

namespace walkdown::weather {

// 0..12. The table is printed to a tenth of a metre per second, so the wind is rounded to a tenth
// (half up) before it is looked up. A negative wind counts as calm.
[[nodiscard]] int beaufort(std::int64_t mean_mm_per_s);

// The lowest mean wind of a force, in mm/s; force 0..12.
[[nodiscard]] std::int64_t lowest_mm_per_s(int force);

}  // namespace walkdown::weather
