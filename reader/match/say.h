// SPDX-License-Identifier: Apache-2.0
// What to do at the module: one sentence a finding.
#pragma once

#include <string>
#include <vector>

#include "reader/match/outcome.h"

namespace walkdown::match {

// The sentence for a finding whose kind, pins and by are set.
[[nodiscard]] std::string sentence(Kind kind, const std::vector<plan::PinId>& pins, int by);

// What tells one explanation from another: a look or a tug.
[[nodiscard]] std::string deciding_look(Kind kind, const std::vector<plan::PinId>& pins, int by);

}  // namespace walkdown::match
