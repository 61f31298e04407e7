// SPDX-License-Identifier: Apache-2.0
// One reading as the diagnosis takes it.
#pragma once

#include "reader/plan/pin.h"

namespace walkdown::match {

// A reading of a pin since that pin was last hooked up. The tester's zero (tester::Model::zero_ohm)
// is still in it. Samples are handed over in the order they were received: a tester that repeats
// the line before is recognised by it. `ohm` is not looked at where `over` is set; a value that is
// not finite is left out and counted (Outcome::left_out).
struct Sample {
  plan::PinId pin;
  double ohm = 0;
  bool over = false;  // above the tester's range
};

}  // namespace walkdown::match
