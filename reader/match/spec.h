// SPDX-License-Identifier: Apache-2.0
// Specs: the electrically different loads of a plan. Pins of one spec are exchangeable: every
// reading is as likely on the one as on the other, so no test can tell them apart.
#pragma once

#include <cstdint>
#include <vector>

#include "reader/match/density.h"
#include "reader/match/priors.h"
#include "reader/plan/plan.h"

namespace walkdown::match {

inline constexpr std::uint32_t kNothing = 0;  // spec 0: no load planned

// One kind of load without its lead, and what it turns into when the wrong igniters are joined.
struct LoadKind {
  plan::Load load;  // lead and wire are not looked at
  Shape sound;
  bool can_miss = false;
  Shape missing;             // one igniter fewer
  std::vector<Shape> extra;  // one more; a single one becomes two in series or two in parallel
  struct Other {
    Shape shape;
    double share = 0;  // of all wrong types; adds to 1
  };
  std::vector<Other> others;  // the same number of another type
};

struct Spec {
  std::uint32_t kind = 0;  // index into SpecTable::kinds
  std::uint16_t wire = plan::kNoWire;
  double lead_ohm = 0;  // both conductors, middle of the wire's range, at temp_c
  double lead_box = 0;  // full width of what differs from lead to lead
  // Filled by the shared fit:
  double lead_shown = 0;  // lead_ohm by the field's estimated wire factor
  double shared_var = 0;  // variance left by the estimate of the shared errors
  Shape sound;            // what a sound pin shows, without noise
  double level = 0;       // cost (nats) on the plateau
  double usual = 0;       // cost (nats) of a typical sound reading
  double top = 0;         // weight of a sound load on the plateau
  double plateau = 0;     // half-width of it; not above 0 where there is none
  double reach = 0;       // from the mean; beyond, no sound load of this spec reads
  double middle = 0;      // from the mean, where `rivals` holds
  double faults = 0;      // summed rates of what can go wrong with a number to show
  double rivals = 0;      // density of all faults near the middle, at most
};

struct SpecTable {
  std::vector<LoadKind> kinds;
  std::vector<Spec> specs;            // [0] is kNothing
  std::vector<std::uint32_t> of_pin;  // spec of plan.pins[i]
  plan::Interval contact_ohm;
};

// Two loads are one spec when their load, lead and wire agree to 0.1 % in ohms, however written.
[[nodiscard]] SpecTable make_specs(const plan::Plan& plan);

// The load of `count` igniters of a type: linearised, so that each bridge keeps its own box.
[[nodiscard]] Shape load_shape(const plan::Igniter& igniter, unsigned count, plan::Join join);

// Load, lead and contacts together.
[[nodiscard]] Shape whole_shape(const Shape& load, const Spec& spec, plan::Interval contact_ohm);

}  // namespace walkdown::match
