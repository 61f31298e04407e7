// SPDX-License-Identifier: Apache-2.0
// What a sound pin can read, with and without the tester's own error.
#pragma once

#include "reader/plan/catalogue.h"
#include "reader/plan/expected.h"
#include "reader/plan/plan.h"
#include "reader/tester/model.h"

namespace walkdown::match {

struct Band {
  plan::Interval worst;  // interval arithmetic: every input at its bad end at once
  double mean_ohm = 0;
  double u_ohm = 0;  // standard uncertainty, JCGM 100: root sum of squares
};

// The loop alone: plan::expected() in this shape.
[[nodiscard]] Band loop_band(const plan::Load& load, const plan::Catalogue& catalogue);

// As the tester would show it: accuracy and offset at their bad end, three standard deviations of
// noise, half a digit of rounding. `low` is not clipped at 0: a nulled tester may read below it.
// zero_ohm has been taken off.
[[nodiscard]] Band shown_band(const plan::Load& load, const plan::Catalogue& catalogue,
                              const tester::Model& tester);

}  // namespace walkdown::match
