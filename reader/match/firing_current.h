// SPDX-License-Identifier: Apache-2.0
// Whether the supply drives enough current through every igniter: its least voltage, the measured
// loop, and everything else at its bad end.
//
//   one loop:        I = V / (Rs + R)
//   m loops at once: V' = V / (1 + Rs sum 1/R_j), I_j = V' / R_j       (one source, in parallel)
//   parallel legs:   the one of most ohms gets I (1/Rmax) / (1/Rmax + (n-1)/Rmin)
//   margin           = least current of an igniter / (factor * all-fire current)
//
// Ohm's and Kirchhoff's laws. The factor is the supply's `margin`; its default of 1.5 is common
// practice, no source. It says nothing about firing, and nothing that it says is a clearance.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "reader/match/outcome.h"
#include "reader/plan/plan.h"
#include "reader/plan/problem.h"

namespace walkdown::match {

enum class FiringWord : std::uint8_t {
  ok,              // the all-fire current with its factor is reached
  thin,            // the all-fire current is reached, its factor is not
  starved,         // "short": not even the all-fire current
  cannot_be_told,  // a figure is missing; this never counts as ok
};

// "ok", "thin", "short", "cannot-be-told".
[[nodiscard]] std::string_view text(FiringWord word);

struct MeasuredLoop {
  plan::PinId pin;
  double ohm = 0;  // lead, igniters and contacts; the tester's own leads and zero taken off
};

// The loop of a pin, with what the field has in common taken off: that is the tester's. Empty where
// the readings are no measure of a loop: open, short, stray, unsteady, stale or unread.
[[nodiscard]] std::optional<MeasuredLoop> measured_loop(const PinVerdict& pin,
                                                        const FieldFit& field);
[[nodiscard]] std::vector<MeasuredLoop> measured_loops(const Outcome& outcome);

struct FiringCurrent {
  plan::PinId pin;
  FiringWord word = FiringWord::cannot_be_told;
  bool measured = false;  // else from the planned loop at its worst
  double loop_ohm = 0;
  double least_a = 0;        // through the igniter that gets least
  double margin = 0;         // 1 where the factor is just kept; 0 where it cannot be told
  double most_loop_ohm = 0;  // that just keeps the factor, the other loops as they are
  std::optional<double>
      most_lead_m;  // one-way length that does, at the plan's worst; no wire: none
  std::string say;  // one sentence
};

// Every planned load, sorted by pin. The pins of one cue draw from the supply together. A pin that
// was not measured is judged by its planned loop at its worst. A loop at or below 0 ohm counts as
// not measured.
[[nodiscard]] std::vector<FiringCurrent> firing_currents(const plan::Plan& plan,
                                                         std::span<const MeasuredLoop> measured);

// Warnings for the plan: loops that starve their igniters when all is at its bad end. Empty where
// the supply or the all-fire currents are not known.
[[nodiscard]] std::vector<plan::Problem> lint_supply(const plan::Plan& plan);

}  // namespace walkdown::match
