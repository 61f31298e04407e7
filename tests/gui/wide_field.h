// SPDX-License-Identifier: Apache-2.0
// A field of any size, its positions on a ring: for trying and timing what is drawn.
#pragma once

#include "checklist/zone/site.h"
#include "gui/field/painter.h"
#include "gui/field/scene.h"

namespace walkdown::gui {

struct WideField {
  plan::Plan plan;
  zone::Site site;
};

// `positions` x `modules` each x 3 rails x 16 pins.
[[nodiscard]] WideField wide_field(std::uint16_t positions, std::uint16_t modules);
// Nine in ten fit; the others take turns.
[[nodiscard]] CellFacts mixed_facts(const Scene& scene);

}  // namespace walkdown::gui
