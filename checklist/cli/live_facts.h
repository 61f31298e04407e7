// SPDX-License-Identifier: Apache-2.0
// What a live view shows of a record that is being written: a diagnosis of what is on disk.
#pragma once

#include <string>

#include "checklist/cli/field_record.h"
#include "checklist/cli/live_view.h"

namespace walkdown::cli {

[[nodiscard]] LiveFacts live_facts(const FieldRecord& record, const std::string& link);

}  // namespace walkdown::cli
