// SPDX-License-Identifier: Apache-2.0
// The set of mistakes that explains the field best, and how sure each of them is.
#pragma once

#include <cstdint>
#include <vector>

#include "reader/match/search.h"

namespace walkdown::match {

// A mistake that was taken, among those that would explain the same readings.
struct Explained {
  Event event;
  double confidence = 0;
  Events same;                 // electrically the same effect: no reading tells them apart
  Events rivals;               // other effects, best first
  std::vector<double> shares;  // of the rivals
};

struct Explanation {
  State state;                      // with all mistakes in it
  std::vector<Explained> mistakes;  // by first slot
  double eased = 0;                 // nats by which mistakes proved likelier here than their rates
};

[[nodiscard]] Explanation explain(const Field& field, const Mixture& mixture,
                                  const MoveRates& rates);

}  // namespace walkdown::match
