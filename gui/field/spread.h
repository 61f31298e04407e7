// SPDX-License-Identifier: Apache-2.0
// Moves boxes apart until none lies on another, each as little as it can. Internal to this folder.
#pragma once

#include <QRectF>
#include <vector>

#include "gui/field/scene.h"

namespace walkdown::gui {

void spread(std::vector<QRectF>& boxes);

// Positions that the site does not know stand in rows below those it knows.
void set_out_rest(const Scene& scene, std::vector<QRectF>& boxes);

}  // namespace walkdown::gui
