// SPDX-License-Identifier: Apache-2.0
// What is known of the tester as an instrument: the part of a profile that judging needs.
// Figures that ship as defaults are common practice, no source; the meter's own sheet replaces
// them.
#pragma once

#include <optional>

namespace walkdown::tester {

struct Model {
  double accuracy_pct = 1.0;        // of the reading, +-, the same for every pin of one tester
  double accuracy_ohm = 0.02;       // +-, the same for every pin of one tester
  double resolution_ohm = 0.01;     // last digit shown
  std::optional<double> noise_ohm;  // standard deviation of one reading; default: the resolution
  double range_ohm = 200;           // above it the tester says over
  double zero_ohm = 0;  // taken off every reading: the leads, if not nulled in the meter
  std::optional<double> test_current_a;  // into a short; empty: not known, so not judged

  [[nodiscard]] double noise() const { return noise_ohm.value_or(resolution_ohm); }
};

}  // namespace walkdown::tester
