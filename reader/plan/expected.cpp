// SPDX-License-Identifier: Apache-2.0
#include "reader/plan/expected.h"

#include <algorithm>
#include <cmath>

namespace walkdown::plan {
namespace {

constexpr double kReferenceC = 20;  // of ohm_per_km and of alpha

// A quantity with its worst case, its mean and its variance.
struct Part {
  Interval ohm;
  double mean = 0;
  double variance = 0;
};

// JCGM 100, 4.3.7: u = half / sqrt(3).
double rectangular(double half) { return half * half / 3; }

Part boxed(Interval ohm) { return {ohm, ohm.mid(), rectangular(ohm.half())}; }

Part lead(const Load& load, const Catalogue& catalogue) {
  if (load.wire == kNoWire) return {};
  const Wire& wire = catalogue.wires[load.wire];
  const Wiring& wiring = catalogue.wiring;
  const double km = 2 * load.lead_m / 1000;
  const double tol = wiring.lead_tol_pct / 100;
  // An alloy of large alpha in great cold would come out below zero: the line does not reach there.
  const double warm = std::max(0.0, 1 + wire.alpha_per_k * (wiring.temp_c - kReferenceC));
  const double drift = std::abs(wire.alpha_per_k) * wiring.temp_tol_k;
  const double mid = km * wire.ohm_per_km.mid();
  return {{km * wire.ohm_per_km.lo * (1 - tol) * std::max(0.0, warm - drift),
           km * wire.ohm_per_km.hi * (1 + tol) * (warm + drift)},
          mid * warm,
          rectangular(km * wire.ohm_per_km.half() * warm) + rectangular(mid * tol * warm) +
              rectangular(mid * drift)};
}

// n legs of bridge and fitted lead. In parallel each leg has the sensitivity 1/n^2, and the second
// derivatives bring the mean down by (1/n - 1/n^2) V / leg.
Part igniters(const Load& load, const Catalogue& catalogue) {
  const Igniter& igniter = catalogue.igniters[load.igniter];
  const Part bridge = boxed(igniter.bridge_ohm);
  const Part fitted = boxed(igniter.fitted_lead_ohm);
  const Part leg{{bridge.ohm.lo + fitted.ohm.lo, bridge.ohm.hi + fitted.ohm.hi},
                 bridge.mean + fitted.mean,
                 bridge.variance + fitted.variance};
  const double n = load.count;
  if (load.join == Join::series || load.count < 2) {
    return {{n * leg.ohm.lo, n * leg.ohm.hi}, n * leg.mean, n * leg.variance};
  }
  const double bend = (1 / n - 1 / (n * n)) * leg.variance / leg.mean;
  return {{leg.ohm.lo / n, leg.ohm.hi / n}, leg.mean / n - bend, leg.variance / (n * n * n)};
}

}  // namespace

bool known(const Load& load, const Catalogue& catalogue) {
  const bool wire = load.wire == kNoWire || load.wire < catalogue.wires.size();
  return wire && (load.count == 0 || load.igniter < catalogue.igniters.size());
}

Expected expected(const Load& load, const Catalogue& catalogue) {
  if (!known(load, catalogue)) return {};
  const Part wire = lead(load, catalogue);
  Expected result;
  result.lead_ohm = wire.ohm;
  if (load.count == 0) return result;
  const Part hung = igniters(load, catalogue);
  const Part contact = boxed(catalogue.wiring.contact_ohm);
  result.load_ohm = hung.ohm;
  result.ohm = {wire.ohm.lo + hung.ohm.lo + contact.ohm.lo,
                wire.ohm.hi + hung.ohm.hi + contact.ohm.hi};
  result.mean_ohm = wire.mean + hung.mean + contact.mean;
  result.u_ohm = std::sqrt(wire.variance + hung.variance + contact.variance);
  return result;
}

}  // namespace walkdown::plan
