// SPDX-License-Identifier: Apache-2.0
// Many pins in few words: "M07/R2/P01-P16, P18".
#pragma once

#include <span>
#include <string>

#include "reader/plan/pin.h"

namespace walkdown::cli {

// `pins` sorted. Runs of neighbours on one rail are joined; at most `most` runs are written, and
// how many pins are left is said.
[[nodiscard]] std::string pin_runs(std::span<const plan::PinId> pins, std::size_t most = 8);

}  // namespace walkdown::cli
