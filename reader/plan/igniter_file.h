// SPDX-License-Identifier: Apache-2.0
// Reads igniters, wires and how the wiring is done from TOML. FORMAT.md, "igniter file".
#pragma once

#include <string_view>

#include "reader/plan/catalogue.h"
#include "reader/result.h"

namespace walkdown::plan {

// Code::bad_input with every mistake of the file and its line. Refused are, besides what is not a
// number: a range with its larger end first, what is negative or zero and must not be, a no-fire
// current above the all-fire current, a test current above the no-fire current, a name given twice,
// more than kMaxNames names, and a key that is nearly a known one (a mistyped no_fire_a must not
// pass as 'no limit given'). Other unknown keys are passed over.
[[nodiscard]] Result<Catalogue> read_igniters(std::string_view toml, std::string_view file_name);

}  // namespace walkdown::plan
