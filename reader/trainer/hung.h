// SPDX-License-Identifier: Apache-2.0
// One load as it was made: what its parts really measure, and what is wrong with it.
#pragma once

#include <optional>
#include <random>
#include <vector>

#include "reader/plan/catalogue.h"
#include "reader/plan/plan.h"
#include "reader/trainer/fault_kind.h"

namespace walkdown::trainer {

struct Hung {
  plan::Load load;
  std::optional<plan::PinId> home;  // the pin it is planned for; empty for a stray
  std::vector<double> leg_ohm;      // each igniter with its fitted leads
  double lead_ohm = 0;              // both conductors, at the field's temperature
  double contact_ohm = 0;
  FaultKind fault = FaultKind::none;
  double amount = 0;  // ohm, or a factor for wrong_lead
};

// Draws every part within the catalogue's intervals. `warm_k` is how much warmer the wire is than
// 20 degC.
[[nodiscard]] Hung draw(const plan::Load& load, const plan::Catalogue& catalogue, double warm_k,
                        std::mt19937_64& random);

// The igniters of a load, each drawn; `count` of them.
[[nodiscard]] std::vector<double> draw_legs(std::uint16_t igniter, std::size_t count,
                                            const plan::Catalogue& catalogue,
                                            std::mt19937_64& random);

// The true resistance seen from the pin; empty for an open. An intermittent one draws anew each
// time. `lead_factor` is the field's wire against the planned.
[[nodiscard]] std::optional<double> ohm(const Hung& hung, double lead_factor,
                                        std::mt19937_64& random);

}  // namespace walkdown::trainer
