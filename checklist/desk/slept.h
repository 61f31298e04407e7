// SPDX-License-Identifier: Apache-2.0
// How long the machine has slept. Internal to this folder.
#pragma once

#include <cstdint>

namespace walkdown::desk {

// The boot clock runs on through suspend, the monotonic one does not: their difference, in ms.
[[nodiscard]] std::int64_t system_slept_ms();

}  // namespace walkdown::desk
