// SPDX-License-Identifier: Apache-2.0
#include "gui/live/row.h"

namespace walkdown::gui {

Row row_of(const record::EntryView& view) {
  return {view.n, view.at_ms, view.up_ms, std::string(view.kind), std::string(view.body)};
}

}  // namespace walkdown::gui
