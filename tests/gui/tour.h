// SPDX-License-Identifier: Apache-2.0
// Goes through every view and state of the window.
#pragma once

#include <QPixmap>
#include <QString>
#include <functional>
#include <vector>

#include "gui/app/demo.h"
#include "gui/app/window.h"

namespace walkdown::gui {

struct Stop {
  QString name;
  std::function<QPixmap()> grab;  // goes there and takes the picture
};

[[nodiscard]] std::vector<Stop> tour(Window& window);

// Waits until the demo's tester has gone over the whole field once.
void read_the_field(Window& window, Demo& demo);

}  // namespace walkdown::gui
