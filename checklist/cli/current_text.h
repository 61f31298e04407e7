// SPDX-License-Identifier: Apache-2.0
// What a plan, or a sweep, says of the firing current (reader/match/firing_current.h).
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "reader/match/firing_current.h"

namespace walkdown::cli {

struct Currents {
  std::size_t ok = 0, thin = 0, starved = 0;
  std::size_t unmeasured = 0;                  // would do as planned; but nobody has measured them
  std::size_t cannot_be_told = 0;              // a figure is missing
  std::vector<match::FiringCurrent> short_of;  // thin and starved, sorted by pin
  std::string say;                             // one sentence

  [[nodiscard]] bool to_act_on() const { return !short_of.empty(); }
};

// `outcome` is null before the first reading: every loop is then judged by the plan at its worst.
[[nodiscard]] Currents currents_of(const plan::Plan& plan, const match::Outcome* outcome);

// "The firing current: ..." and a line for each loop short of it.
[[nodiscard]] std::string currents_text(const Currents& currents, std::size_t most = 20);

// One JSON object: say, ok, thin, short, unmeasured, cannot_be_told; pins: those thin or
// short.
[[nodiscard]] std::string currents_json(const Currents& currents);

}  // namespace walkdown::cli
