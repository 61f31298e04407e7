// SPDX-License-Identifier: Apache-2.0
// The timeline as data: what is drawn of each item, in wall time. Pure.
#pragma once

#include <QString>
#include <cstdint>
#include <optional>
#include <vector>

#include "checklist/day/checklist.h"
#include "gui/live/snapshot.h"

namespace walkdown::gui {

struct Bar {
  QString name;
  bool holds = false;
  std::int64_t from_ms = 0;                   // of what holds: now
  std::optional<std::int64_t> until_ms;       // empty: no end
  std::optional<std::int64_t> not_before_ms;  // an answer before this would not last
  std::int64_t latest_ms = 0;                 // latest start
  bool late = false;                          // the latest start is past, and it does not hold
  bool breaks_first = false;                  // the one that ends the release first
  QString say;                                // in words, whole
};

struct Bars {
  std::vector<Bar> bars;
  std::int64_t from_ms = 0;  // what the drawing covers
  std::int64_t to_ms = 0;
  std::int64_t now_ms = 0;
  std::int64_t show_ms = 0;
  std::int64_t end_ms = 0;  // of the show
};

// Empty without a show time.
[[nodiscard]] Bars bars_of(const Snapshot& seen, const day::Checklist& list);

}  // namespace walkdown::gui
