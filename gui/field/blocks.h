// SPDX-License-Identifier: Apache-2.0
// Modules and their cells, packed under their positions, each position at the origin. Internal to
// this folder.
#pragma once

#include "gui/field/scene.h"

namespace walkdown::gui {

[[nodiscard]] Scene make_blocks(const plan::Plan& plan);

}  // namespace walkdown::gui
