// SPDX-License-Identifier: Apache-2.0
// A sweep after the show, for a person and as JSON: which pins may not have fired.
#pragma once

#include <string>

#include "reader/match/after.h"

namespace walkdown::cli {

[[nodiscard]] std::string after_text(const match::After& after);

// {"pins":[{"pin":"M01/R1/P05","word":"did-not-fire","before_ohm":2.31,"after_ohm":2.3,"left":0,
//   "say":"..."}],"possible_misfires":["M01/R1/P05"]}; a value that is not there is null.
[[nodiscard]] std::string after_json(const match::After& after);

}  // namespace walkdown::cli
