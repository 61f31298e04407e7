// SPDX-License-Identifier: Apache-2.0
// Internal to this folder, as TOML is.
#pragma once

#include <toml++/toml.h>

#include <cstdint>
#include <string>
#include <utility>
#include <vector>

#include "reader/tester/instrument.h"

namespace walkdown::tester {

// Line of the file, and what would be right.
using InstrumentMistakes = std::vector<std::pair<std::uint32_t, std::string>>;

// A profile without such a table gives an empty one.
[[nodiscard]] Instrument read_instrument(const toml::table& profile, InstrumentMistakes& mistakes);

}  // namespace walkdown::tester
