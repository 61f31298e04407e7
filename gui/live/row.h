// SPDX-License-Identifier: Apache-2.0
// One entry of the record, as the window keeps it: as it stands on disk.
#pragma once

#include <QMetaType>
#include <cstdint>
#include <string>
#include <vector>

#include "checklist/record/line.h"

namespace walkdown::gui {

struct Row {
  std::uint64_t n = 0;
  std::int64_t at_ms = 0;
  std::int64_t up_ms = 0;
  std::string kind;
  std::string body;  // canonical JSON
};
using Rows = std::vector<Row>;

[[nodiscard]] Row row_of(const record::EntryView& view);

}  // namespace walkdown::gui

Q_DECLARE_METATYPE(walkdown::gui::Rows)
