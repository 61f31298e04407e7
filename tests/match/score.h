// SPDX-License-Identifier: Apache-2.0
// Counts of what a way of judging got right, over many simulated fields.
#pragma once

#include <array>
#include <map>
#include <string>
#include <vector>

#include "reader/match/diagnose.h"
#include "tests/match/simulator.h"

namespace walkdown::simulated {

struct Ratio {
  double hit = 0;
  double all = 0;
  [[nodiscard]] double value() const { return all > 0 ? hit / all : 0; }
};

struct Score {
  Ratio wrong_flagged;   // of pins not as planned
  Ratio faulty_flagged;  // of them, those whose load is faulty
  Ratio sound_flagged;   // of pins as planned: false alarms
  Ratio moves_found;     // of visible moves: the same electrically as a finding
  Ratio moves_named;     // of visible moves: kind, pins and by as they were
  Ratio moves_right;     // of findings that move loads: electrically what happened
  Ratio first_right;     // of findings about one pin: the kind that was
  std::map<match::Kind, Ratio> recall, precision;
  std::map<match::Kind, std::map<match::Kind, int>> confusion;  // of load faults: true, told
  std::array<Ratio, 10> calibration{};        // by tenth of confidence, all findings
  std::array<Ratio, 10> calibration_moves{};  // findings that move loads
  double confidence_sum = 0;
};

// A flag per pin: what any way of judging can give.
using Flags = std::map<plan::PinId, bool>;
[[nodiscard]] Flags flags(const match::Outcome& outcome);

void count_flags(const Field& field, const Flags& flagged, Score& score);
void count_findings(const Field& field, const std::vector<match::Finding>& findings, Score& score);

// What each pin carries under a finding, where that is not what was planned.
using Carried = std::map<plan::PinId, const plan::Load*>;
[[nodiscard]] Carried carried(const Field& field, const match::Finding& finding);

}  // namespace walkdown::simulated
