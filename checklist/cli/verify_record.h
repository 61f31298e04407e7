// SPDX-License-Identifier: Apache-2.0
// The whole check of a record: its bytes and signatures, and everything claimed derived again.
#pragma once

#include <string>
#include <vector>

#include "checklist/record/verify.h"

namespace walkdown::cli {

// The keys that a reader trusts, from a file. Errors name the file and the row.
[[nodiscard]] Result<std::vector<record::VerifyKey>> known_keys(const std::string& path);

// `options.visitor` is set here. Errors as record::verify_file.
[[nodiscard]] Result<record::Report> verify_record(const std::string& path,
                                                   record::VerifyOptions options);

// For a person: holds or not, where and why, and what else is to be known.
[[nodiscard]] std::string verify_text(const std::string& path, const record::Report& report);

}  // namespace walkdown::cli
