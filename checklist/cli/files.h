// SPDX-License-Identifier: Apache-2.0
// Whole files, for inputs small enough to hold: plans, templates, readings of one sweep.
#pragma once

#include <string>
#include <string_view>

#include "reader/result.h"

namespace walkdown::cli {

// "-" is standard input. Errors: io, with the path and the system's reason.
Result<std::string> read_file(const std::string& path);

// Writes beside the target and renames, so that a crash leaves the old file or the new one. What is
// no file (a device, a pipe) is written to, and a link is followed. Errors: io, with the path.
Done write_file(const std::string& path, std::string_view bytes);

// The last part of a path, as it is kept in a record.
[[nodiscard]] std::string base_name(const std::string& path);

}  // namespace walkdown::cli
