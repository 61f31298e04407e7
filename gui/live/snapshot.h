// SPDX-License-Identifier: Apache-2.0
// What the desk says at one moment, taken in one go by a thread that may wait, and handed to the
// views. Never changed once made.
#pragma once

#include <QMetaType>
#include <QString>
#include <cstdint>
#include <memory>
#include <vector>

#include "checklist/day/schedule.h"
#include "checklist/day/state.h"
#include "checklist/desk/folded.h"
#include "reader/match/outcome.h"

namespace walkdown::gui {

struct Snapshot {
  day::Now now;
  day::State state;
  day::Schedule schedule;
  std::shared_ptr<const match::Outcome> outcome;  // never null
  desk::Counts counts;
  std::vector<desk::Told> told;  // the last few, the newest last
  QString mark;                  // of the last checkpoint, in groups of four
  QString trouble;               // of the medium, or an entry that does not hold; empty: none
};
using Seen = std::shared_ptr<const Snapshot>;

}  // namespace walkdown::gui

Q_DECLARE_METATYPE(walkdown::gui::Seen)
