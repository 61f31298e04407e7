// SPDX-License-Identifier: Apache-2.0
// What a pin should read, the tester's own error not yet counted:
//
//   R = 2 L r (1 + alpha (T - 20)) + load + contact
//   load of n igniters in series:   n (bridge + fitted lead)
//   load of n igniters in parallel: (bridge + fitted lead) / n for equal legs
//
// Only the wire is corrected for temperature: a bridge is an alloy that hardly changes.
#pragma once

#include "reader/plan/catalogue.h"
#include "reader/plan/plan.h"

namespace walkdown::plan {

struct Expected {
  Interval ohm;  // worst case: every input at its bad end at once
  double mean_ohm = 0;
  double u_ohm = 0;   // standard uncertainty, JCGM 100: rectangular inputs, root sum of squares
  Interval lead_ohm;  // worst case of the lead wire alone: what a shunt at its far end leaves
  Interval load_ohm;  // worst case of the igniters with their fitted leads
};

// True where the catalogue has the load's igniter and wire. An importer makes no other load; one
// that comes from elsewhere is looked up here before anything is said about it.
[[nodiscard]] bool known(const Load& load, const Catalogue& catalogue);

// A load of count 0 is an open end: all of it is then 0 but lead_ohm. Of a load that is not known()
// all is 0: no reading fits that.
//
// The mean of a parallel group is taken to second order (JCGM 100, 5.1.2, note): legs that differ
// lie below the value of equal legs at the middle of their range.
[[nodiscard]] Expected expected(const Load& load, const Catalogue& catalogue);

}  // namespace walkdown::plan
