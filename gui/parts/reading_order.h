// SPDX-License-Identifier: Apache-2.0
// Tab goes from control to control as they are read: in the order of the layouts. Qt's own order is
// the order in which they were made, so that what a page makes anew would always come last.
#pragma once

#include <vector>

class QWidget;

namespace walkdown::gui {

// What takes the focus by Tab in `root` now.
[[nodiscard]] std::vector<QWidget*> reading_order(QWidget& root);

// Gives the focus to the one after, or before, that which has it, and scrolls it into sight; where
// that was just hidden or made grey, to one near it that is no alarm. False where nothing takes it.
// For focusNextPrevChild() of windows.
bool focus_next(QWidget& window, bool next);

}  // namespace walkdown::gui
