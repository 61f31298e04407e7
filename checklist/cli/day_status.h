// SPDX-License-Identifier: Apache-2.0
// The day and its plan as text for a terminal, wide enough for 80 columns of words, with no colour.
#pragma once

#include <string>
#include <vector>

#include "checklist/day/checklist.h"
#include "checklist/day/schedule.h"
#include "checklist/day/state.h"
#include "checklist/desk/folded.h"

namespace walkdown::cli {

[[nodiscard]] std::string status_text(const day::Checklist& checklist, const day::State& state,
                                      const std::vector<desk::Told>& told);
[[nodiscard]] std::string schedule_text(const day::Schedule& schedule, std::int64_t utc_offset_min);

}  // namespace walkdown::cli
