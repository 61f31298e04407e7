// SPDX-License-Identifier: Apache-2.0
// The fields that a score is taken over, the same for every program that takes one.
#pragma once

#include <array>
#include <cstdint>
#include <utility>

#include "tests/match/second_field.h"
#include "tests/match/simulator.h"

namespace walkdown::simulated {

inline constexpr std::array<std::pair<const char*, Style>, 3> kStyles = {
    {{"mixed", Style::mixed}, {"all alike", Style::alike}, {"blocks", Style::blocks}}};

// Calls use(field, seed) for so many fields from setting.seed on, by simulator 1 or 2: every other
// one with wire of exactly its nominal area, every other two with the repeats of a pin in a row.
template <typename Use>
void many_fields(Setting setting, int fields, int simulator, Use use) {
  const std::uint64_t first = setting.seed;
  for (int i = 0; i < fields; ++i) {
    setting.seed = first + static_cast<std::uint64_t>(i);
    setting.ideal_mm2 = i % 2 == 0;
    setting.back_to_back = i % 4 >= 2;
    use(simulator == 2 ? simulate_second(setting) : simulate(setting), setting.seed);
  }
}

}  // namespace walkdown::simulated
