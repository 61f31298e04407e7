// SPDX-License-Identifier: Apache-2.0
// From readings to verdicts and findings.
//
// Every pin's readings are weighed under every thing that can be on it: what was planned, sound or
// faulty in one of ten ways, or another pin's load. The explanation of the whole field with the
// highest posterior wins: so one shifted plug beats twelve independent faults, and a load that was
// moved and is faulty is one move and one fault. The physics and the rates are in priors.h.
//
// Pure: the same samples give the same outcome, on any machine. Nothing throws but bad_alloc.
// Work grows in proportion to the field.
#pragma once

#include <span>
#include <vector>

#include "reader/match/outcome.h"
#include "reader/match/priors.h"
#include "reader/match/sample.h"
#include "reader/plan/plan.h"
#include "reader/tester/model.h"

namespace walkdown::match {

struct Options {
  std::vector<plan::PinId> stale;  // pins whose readings do not count any more
  bool layout_known = false;       // the plan's layout is measured; else a pin read beyond the end
                                   // of a rail makes that rail longer
  bool structure = true;           // look for moved loads at all
  double look_below = 0.8;         // p_ok under which a fitting pin is listed in Outcome::look
  Priors priors;
};

[[nodiscard]] Outcome diagnose(const plan::Plan& plan, const tester::Model& tester,
                               std::span<const Sample> samples, const Options& options = {});

}  // namespace walkdown::match
