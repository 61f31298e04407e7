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

// What happened, as a thing: "a leak", "pins 3 to 9 of rail 1, module 2 shifted by 1". For use
// after "it is" or "from".
[[nodiscard]] std::string as_thing(Kind kind, const std::vector<plan::PinId>& pins, int by);

// The finding's sentence with what it may be confused with, and the one look or tug that decides:
// the first of those that no reading tells from it, and the runner-up.
[[nodiscard]] std::string with_doubt(const Finding& finding);

}  // namespace walkdown::match
