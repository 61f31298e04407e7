// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "reader/result.h"

namespace walkdown::gui {

// SHA-256 of a photo or a permit, 64 hex digits. Errors: io; refused above 512 MiB. Waits for the
// disk: not for the window's thread.
[[nodiscard]] Result<std::string> sha256_of_file(const std::string& path);

}  // namespace walkdown::gui
