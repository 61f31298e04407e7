// SPDX-License-Identifier: Apache-2.0
// An entry in one line of plain words, for lists of what was written: the window's, the report's,
// and `walkdown day`'s. Total: any body gives a line, since a record may hold anything.
#pragma once

#include <string>

#include "checklist/day/checklist.h"
#include "checklist/record/entry.h"

namespace walkdown::desk {

// "Mara Linde (lead): edge: nobody", "M01/R1/P05 2.31 ohm", "Jon Weir went into the field: Jetty".
[[nodiscard]] std::string tell(const day::Checklist& checklist, const record::Entry& entry);

}  // namespace walkdown::desk
