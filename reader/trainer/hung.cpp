// SPDX-License-Identifier: Apache-2.0
#include "reader/trainer/hung.h"

#include <cmath>

namespace walkdown::trainer {
namespace {

double within(plan::Interval interval, std::mt19937_64& random) {
  return std::uniform_real_distribution<double>(0, 1)(random) * (interval.hi - interval.lo) +
         interval.lo;
}

std::optional<double> joined(const Hung& hung) {
  if (hung.leg_ohm.empty()) return std::nullopt;
  double sum = 0;
  const bool parallel = hung.load.join == plan::Join::parallel;
  for (const double leg : hung.leg_ohm) sum += parallel ? 1 / leg : leg;
  return parallel ? 1 / sum : sum;
}

}  // namespace

std::vector<double> draw_legs(std::uint16_t igniter, std::size_t count,
                              const plan::Catalogue& catalogue, std::mt19937_64& random) {
  const plan::Igniter& kind = catalogue.igniters.at(igniter);
  std::vector<double> legs(count);
  for (double& leg : legs)
    leg = within(kind.bridge_ohm, random) + within(kind.fitted_lead_ohm, random);
  return legs;
}

Hung draw(const plan::Load& load, const plan::Catalogue& catalogue, double warm_k,
          std::mt19937_64& random) {
  Hung hung;
  hung.load = load;
  hung.leg_ohm = draw_legs(load.igniter, load.count, catalogue, random);
  hung.contact_ohm = within(catalogue.wiring.contact_ohm, random);
  if (load.wire != plan::kNoWire) {
    const plan::Wire& wire = catalogue.wires.at(load.wire);
    const double tolerance = catalogue.wiring.lead_tol_pct / 100;
    hung.lead_ohm = 2 * load.lead_m / 1000 * within(wire.ohm_per_km, random) *
                    within({1 - tolerance, 1 + tolerance}, random) *
                    (1 + wire.alpha_per_k * warm_k);
  }
  return hung;
}

std::optional<double> ohm(const Hung& hung, double lead_factor, std::mt19937_64& random) {
  const double wrong = hung.fault == FaultKind::wrong_lead ? hung.amount : 1;
  const double lead = hung.lead_ohm * lead_factor * wrong;
  const std::optional<double> load = joined(hung);
  if (hung.fault == FaultKind::short_circuit) return lead + hung.contact_ohm;
  if (hung.fault == FaultKind::open || !load) return std::nullopt;
  const double whole = lead + *load + hung.contact_ohm;
  if (hung.fault == FaultKind::poor_joint) return whole + hung.amount;
  if (hung.fault == FaultKind::leak) return whole * hung.amount / (whole + hung.amount);
  if (hung.fault == FaultKind::intermittent) {
    std::uniform_real_distribution<double> unit(0, 1);
    if (unit(random) < 0.4) return std::nullopt;
    return whole + 0.1 * std::pow(50, unit(random));  // log-uniform 0.1..5 ohm
  }
  return whole;
}

}  // namespace walkdown::trainer
