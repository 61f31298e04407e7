// SPDX-License-Identifier: Apache-2.0
// Each finding from the claim that told it to the one that no longer did. Internal to this folder.
#pragma once

#include "checklist/report/collect.h"
#include "checklist/report/model.h"

namespace walkdown::report {

// Fills sweeps and faults. Precondition: model.outcome is set.
void tell_faults(const Collector& collected, Model& model);

}  // namespace walkdown::report
