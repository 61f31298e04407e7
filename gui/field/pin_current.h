// SPDX-License-Identifier: Apache-2.0
// The current that one pin's igniters would get from the supply. Pure.
#pragma once

#include <optional>

#include "reader/match/firing_current.h"
#include "reader/match/outcome.h"
#include "reader/plan/plan.h"

namespace walkdown::gui {

// With the measured loops of its cue, whose pins draw together; a pin that reads open, stray or
// unsteady, or whose reading is stale, is judged by its planned loop at its worst. Empty where
// nothing is planned on the pin.
[[nodiscard]] std::optional<match::FiringCurrent> current_of(const plan::Plan& plan,
                                                             const match::Outcome& outcome,
                                                             plan::PinId pin);

}  // namespace walkdown::gui
