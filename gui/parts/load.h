// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "reader/result.h"

namespace walkdown::gui {

// The whole file. A path that somebody is still typing names a folder on its way, and may name a
// device that never ends: only a file of at most 512 MiB is read. Waits for the disk: not for the
// window's thread. Errors: io, refused where it is too large.
[[nodiscard]] Result<std::string> load_file(const std::string& path);

}  // namespace walkdown::gui
