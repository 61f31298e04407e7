// SPDX-License-Identifier: Apache-2.0
#include "checklist/weather/beaufort.h"

#include <algorithm>
#include <array>

namespace walkdown::weather {
namespace {

constexpr std::array<std::int64_t, 13> kLowest = {0,     300,   1600,  3400,  5500,  8000, 10800,
                                                  13900, 17200, 20800, 24500, 28500, 32700};

}  // namespace

int beaufort(std::int64_t mean_mm_per_s) {
  const std::int64_t tenths = (std::max<std::int64_t>(mean_mm_per_s, 0) + 50) / 100 * 100;
  const auto* const above = std::upper_bound(kLowest.begin(), kLowest.end(), tenths);
  return static_cast<int>(above - kLowest.begin()) - 1;
}

std::int64_t lowest_mm_per_s(int force) {
  return kLowest.at(static_cast<std::size_t>(std::clamp(force, 0, 12)));
}

}  // namespace walkdown::weather
