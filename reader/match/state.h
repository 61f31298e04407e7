// SPDX-License-Identifier: Apache-2.0
// A hypothesis about the field: which load is on which slot, and what each slot's readings cost
// under it. It starts as the plan.
#pragma once

#include <cstdint>
#include <vector>

#include "reader/match/mixture.h"
#include "reader/match/words.h"

namespace walkdown::match {

inline constexpr std::uint32_t kNowhere = 0xFFFFFFFF;  // the source of a slot left bare

// One slot whose load changes: it gets what `source` holds at the time, be it nothing.
struct Effect {
  std::uint32_t slot = 0;
  std::uint32_t source = kNowhere;

  friend bool operator==(const Effect&, const Effect&) = default;
};

// One mistake that moves loads.
struct Event {
  Kind kind = Kind::swapped;
  int by = 0;
  double price = 0;                    // nats: -ln of its prior
  double pooled = 0;                   // nats off it for other mistakes of the same effect
  double net = 0;                      // nats by which the readings favour it, its price paid
  std::vector<Effect> effects;         // sorted by slot; slots whose load changes place
  std::vector<std::uint32_t> members;  // slots it is told with, sorted
};

struct State {
  std::vector<std::uint32_t> on;    // slot -> spec now on it
  std::vector<std::uint32_t> from;  // slot -> slot whose planned load it holds, kNowhere: none
  std::vector<double> cost;         // slot -> cost under `on`
  std::vector<double> excess;       // slot -> what another load could save at most

  State(const Field& field, const Mixture& mixture);
  void set(const Field& field, const Mixture& mixture, std::uint32_t slot, std::uint32_t spec,
           std::uint32_t source);
};

// Excess above which a slot counts as bad.
inline constexpr double kBad = 2;

}  // namespace walkdown::match
