// SPDX-License-Identifier: Apache-2.0
// What a diagnosis gives back.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "reader/match/words.h"
#include "reader/plan/pin.h"

namespace walkdown::match {

// `low` and `high` are the worst case as this tester would show it, rounded outward to its last
// digit, with its zero taken off and, where the field has one, its offset (Outcome::field) put in:
// so `ohm` lies outside them exactly when the verdict is low, high or short.
struct PinVerdict {
  plan::PinId pin;
  Verdict verdict = Verdict::unread;
  std::optional<double> ohm;  // median of the readings that were numbers; zero taken off
  std::optional<double> low;  // empty where nothing is planned
  std::optional<double> high;
  double spread_ohm = 0;       // largest less smallest number
  std::uint32_t readings = 0;  // numbers and overs
  std::uint32_t overs = 0;
  double p_ok = 0;  // probability that the pin carries what was planned, sound; 0..1
};

// Another explanation that the readings do not rule out.
struct RunnerUp {
  Kind kind = Kind::unknown;
  std::vector<plan::PinId> pins;
  int by = 0;
  double share = 0;  // of the probability; above 0.1
};

// An explanation that no reading could tell from the finding's own.
struct Alternative {
  Kind kind = Kind::unknown;
  std::vector<plan::PinId> pins;
  int by = 0;
  std::string look;  // the one look or tug that decides between the two
};

struct Finding {
  Kind kind = Kind::unknown;
  std::vector<plan::PinId> pins;      // sorted. A block shift: the planned pins of the block;
                                      // an exchange: all planned pins of both sides
  int by = 0;                         // of a shift: + towards higher pin numbers. 0 for other kinds
  double confidence = 0;              // probability that this is what happened, 0..1
  std::string say;                    // what to do at the module, one sentence
  std::vector<std::size_t> readings;  // indices into the samples that led to it
  std::optional<RunnerUp> runner_up;
  std::vector<Alternative> same;  // electrically the same
};

// Confidence as it is said to people and kept in records, in per cent: 1 to 99, because no reading
// shows more than that.
[[nodiscard]] int stated_pct(double confidence);

// What all readings have in common, estimated from the field, and already counted in.
struct FieldFit {
  double offset_ohm = 0;    // the tester reads this much too high
  double gain = 0;          // and this share too high
  double wire_factor = 1;   // leads against the plan, over all wire
  double residual_ohm = 0;  // median of what is left; large is a warning in itself
  double jumps = 1;         // repeats of one pin differ so many times as far as the profile says;
                            // above 1 only where that is clear over the field
};

struct Outcome {
  std::vector<PinVerdict> pins;   // every planned pin and every stray, sorted by pin
  std::vector<Finding> findings;  // field first, then by kind from large to small, then by pin
  std::vector<plan::PinId> look;  // fit, but with p_ok below Options::look_below: worth a look
  FieldFit field;
  std::size_t left_out = 0;  // samples that were not finite, or named no possible pin
};

}  // namespace walkdown::match
