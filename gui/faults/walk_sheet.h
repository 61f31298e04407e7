// SPDX-License-Identifier: Apache-2.0
// The walk sheet: on paper, what is to be done, in the order of the walk, with a box to tick.
#pragma once

#include <QPagedPaintDevice>
#include <QTextDocument>
#include <vector>

#include "gui/faults/fault_list.h"

namespace walkdown::gui {

// What stands above the list.
struct SheetHead {
  QString mark;  // the record's at this moment
  QString from;  // where the walk begins; empty: not known
  double length_m = 0;
};

// Black on white, whatever the light. `outcome` is what the faults were taken from.
void fill_walk_sheet(QTextDocument& sheet, const std::vector<Fault>& faults,
                     const match::Outcome& outcome, const SheetHead& head);

}  // namespace walkdown::gui
