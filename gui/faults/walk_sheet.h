// SPDX-License-Identifier: Apache-2.0
// The walk sheet: on paper, what is to be done, in the order of the walk, with a box to tick.
#pragma once

#include <QPagedPaintDevice>
#include <QTextDocument>
#include <vector>

#include "gui/faults/fault_list.h"

namespace walkdown::gui {

// Black on white, whatever the light. `mark` is the record's at this moment.
void fill_walk_sheet(QTextDocument& sheet, const std::vector<Fault>& faults, const QString& mark);

}  // namespace walkdown::gui
