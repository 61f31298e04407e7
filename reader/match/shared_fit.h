// SPDX-License-Identifier: Apache-2.0
// Errors that every pin of a field shares - the tester's offset and gain, the wire's temperature,
// what a wire size really measures - are estimated from the field, not tolerated pin by pin.
//
// A robust least-squares fit inside a hard box: the box is what the plan and the tester allow.
// Without it a whole field of wrong igniters would be taken for an offset, and not a pin flagged.
#pragma once

#include <cstdint>
#include <vector>

#include "reader/match/field.h"
#include "reader/match/priors.h"
#include "reader/match/spec.h"

namespace walkdown::match {

struct Shared {
  double offset = 0;
  double gain = 0;
  double noise = 0;                 // variance of one reading, rounding included: the profile's, or
                                    // what repeats show where that is clearly more
  double rounding = 0;              // the part of it that repeats do not average out
  double range = 0;                 // above it the tester says over
  double digit = 0.01;              // last digit shown
  std::vector<double> lead_factor;  // per wire of the catalogue; 1 = as planned
  double residual = 0;              // median of what is left over the field
  double jumps = 1;                 // deviation of that noise against the profile's
  bool at_edge = false;             // an estimate lies on the box

  // What is shown of a load of so many ohms, a lead and contacts.
  [[nodiscard]] double shown(double ohm) const { return offset + (1 + gain) * ohm; }
};

// How far the field-wide unknowns may go beyond what plan and tester allow: used to try out that
// the tester's leads were not zeroed, or that all wire is of another gauge.
struct Allowance {
  double offset_ohm = 0;   // added to the tester's accuracy
  double offset_mean = 0;  // where the offset is looked for
  double lead_factor = 1;  // all leads by this
};

// Fits, and writes the result into the specs (sound, lead_shown, shared_var). `field` may have any
// shape, also none at all.
[[nodiscard]] Shared fit_shared(const Field& field, SpecTable& table,
                                const plan::Catalogue& catalogue, const tester::Model& tester,
                                const Allowance& allowance);

}  // namespace walkdown::match
