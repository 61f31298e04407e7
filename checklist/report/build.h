// SPDX-License-Identifier: Apache-2.0
// A record -> the report's model, in one pass that also checks it.
#pragma once

#include <string>

#include "checklist/report/model.h"
#include "reader/result.h"

namespace walkdown::report {

// The visitor and progress of `options` are set here. A record that does not hold gives a model up
// to where it holds, which says so on its first page. Errors: io; bad_input where not even the
// opening holds.
[[nodiscard]] Result<Model> build(const std::string& path, record::VerifyOptions options = {});

}  // namespace walkdown::report
