// SPDX-License-Identifier: Apache-2.0
// Items whose standing follows from what is, not from what somebody answered. Internal to this
// folder.
#pragma once

#include "checklist/day/standing.h"

namespace walkdown::day {

[[nodiscard]] bool is_derived(Kind kind);

// Precondition: is_derived(kind of the item).
[[nodiscard]] Judgement judge_derived(const View& view, std::size_t item, Moment moment);

// The latest wind of the item's averaging time, by somebody who may read it, against its limits.
[[nodiscard]] Judgement judge_wind(const View& view, std::size_t item, Moment moment);

}  // namespace walkdown::day
