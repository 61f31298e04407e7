// SPDX-License-Identifier: Apache-2.0
// What is to be done in the field, from the diagnosis and the re-hooks of the record alone: what
// was found, then what was re-hooked and waits for its reading, then what is done. Pure.
#pragma once

#include <QString>
#include <string>
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
  int stop = 0;             // of the walk, from 1 on; 0: nowhere in particular
};

// By pin: findings of the whole field come first; then what waits for a reading, then what is done.
[[nodiscard]] std::vector<Fault> faults_of(const plan::Plan& plan, const match::Outcome& outcome,
                                           const std::vector<RehookRow>& rehooks);

// Where something is to be done still, each once, as the list has it; without a name: not.
[[nodiscard]] std::vector<std::string> positions_of(const std::vector<Fault>& faults);
// What a hand touches where it mends this: of a moved plug every pin of its rail or module, the
// free ones too, because a reading from before tells nothing of any of them. Sorted.
[[nodiscard]] std::vector<plan::PinId> touched_by(const plan::Plan& plan,
                                                  const match::Finding& finding);

// The row of what these pins are about: the same pins, else one of them; -1 where there is none.
[[nodiscard]] int find_again(const std::vector<Fault>& faults,
                             const std::vector<plan::PinId>& pins);
// Puts what is to do into this order of positions, and numbers the stops. What concerns the whole
// field stays first, what has no position comes last.
void put_in_order(std::vector<Fault>& faults, const std::vector<std::string>& positions);

// "M08/R3/P01 to P18", "M01/R1/P05 and 3 more".
[[nodiscard]] QString pins_words(const std::vector<plan::PinId>& pins);

}  // namespace walkdown::gui
