// SPDX-License-Identifier: Apache-2.0
// An invented show of any size, from its files on: for trying the window at the size that DESIGN
// names.
#pragma once

#include <string>

#include "checklist/show/show.h"
#include "reader/trainer/field.h"

namespace walkdown::gui {

// `positions` x `modules` each x 3 rails x 16 pins, leads and counts mixed; generic igniters, the
// default tester, the evening checklist, every position on the ground.
[[nodiscard]] show::Show big_show(int positions, int modules);
// The simulated field of that show: hung as planned, but for one pin in `one_in` that is open.
[[nodiscard]] trainer::Field big_field(const show::Show& show, int one_in);

}  // namespace walkdown::gui
