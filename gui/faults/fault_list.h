// SPDX-License-Identifier: Apache-2.0
// What is to be done in the field, from the diagnosis and the re-hooks of the record alone: what
// was found, then what was re-hooked and waits for its reading, then what is done. Pure.
#pragma once

#include <QString>
#include <vector>

#include "gui/live/ledger.h"
#include "reader/match/outcome.h"
#include "reader/plan/plan.h"

namespace walkdown::gui {

struct Fault {
  enum class Step : std::uint8_t { to_do, to_read, done };
  Step step = Step::to_do;
  QString kind;      // in words
  QString position;  // where to go
  QString where;     // its pins, shortened
  QString say;       // what to do
  int confidence_pct = 0;
  QString runner_up;  // what else it may be, and how likely; empty: nothing close
  std::vector<plan::PinId> pins;
  std::size_t finding = 0;  // index into Outcome::findings, while to do
};

// In the order of the plan's positions, then by pin: findings of the whole field come first.
[[nodiscard]] std::vector<Fault> faults_of(const plan::Plan& plan, const match::Outcome& outcome,
                                           const std::vector<RehookRow>& rehooks);

// "M08/R3/P01 to P18", "M01/R1/P05 and 3 more".
[[nodiscard]] QString pins_words(const std::vector<plan::PinId>& pins);

}  // namespace walkdown::gui
