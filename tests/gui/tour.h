// SPDX-License-Identifier: Apache-2.0
// Goes through every view and state of the window.
#pragma once

#include <QString>
#include <QWidget>
#include <functional>
#include <vector>

#include "gui/app/demo.h"
#include "gui/app/window.h"

namespace walkdown::gui {

using Look_at = std::function<void(QWidget&)>;

struct Stop {
  QString name;
  // Goes there, and hands over the window or the dialog while it stands as it should.
  std::function<void(const Look_at&)> visit;
};

// The demo's record as it is.
[[nodiscard]] std::vector<Stop> tour(Window& window);
// What takes an evening, or bad luck, to come about: the last snapshot with a change made here is
// shown to the views. Nothing of it is in the record.
[[nodiscard]] std::vector<Stop> made_up_states(Window& window, Demo& demo);

// Wind and thunder, which are entries of the record from then on: the last of all.
[[nodiscard]] std::vector<Stop> weather_states(Window& window, Demo& demo);

// Shows the views a changed snapshot until the next real one comes.
void show_changed(Window& window, const std::function<void(Snapshot&)>& change);

// Lays everything out to the end, with no other event: nobody sees a window before that is done.
void settle();

// Waits until the demo's tester has gone over the whole field once.
void read_the_field(Window& window, Demo& demo);

}  // namespace walkdown::gui
