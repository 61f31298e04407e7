// SPDX-License-Identifier: Apache-2.0
// `walkdown verify` on an extract.
#pragma once

#include <string>

#include "checklist/cli/status.h"
#include "checklist/record/verify.h"

namespace walkdown::cli {

Status verify_extract(const std::string& path, const record::VerifyOptions& options, bool json);

}  // namespace walkdown::cli
