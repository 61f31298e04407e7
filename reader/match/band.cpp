// SPDX-License-Identifier: Apache-2.0
#include "reader/match/band.h"

#include <algorithm>
#include <cmath>

namespace walkdown::match {

Band loop_band(const plan::Load& load, const plan::Catalogue& catalogue) {
  const plan::Expected loop = plan::expected(load, catalogue);
  return {loop.ohm, loop.mean_ohm, loop.u_ohm};
}

Band shown_band(const plan::Load& load, const plan::Catalogue& catalogue,
                const tester::Model& tester) {
  const Band loop = loop_band(load, catalogue);
  const double gain = std::abs(tester.accuracy_pct) / 100;
  const double fixed = std::abs(tester.accuracy_ohm) + 3 * std::abs(tester.noise()) +
                       std::abs(tester.resolution_ohm) / 2;
  Band shown = loop;
  shown.worst.lo = loop.worst.lo * (1 - std::min(gain, 1.0)) - fixed;
  shown.worst.hi = loop.worst.hi * (1 + gain) + fixed;
  const double a = gain * loop.mean_ohm;  // half-widths of rectangular inputs (JCGM 100, 4.3.7)
  const double b = tester.accuracy_ohm;
  const double q = tester.resolution_ohm / 2;
  shown.u_ohm = std::sqrt(loop.u_ohm * loop.u_ohm + (a * a + b * b + q * q) / 3 +
                          tester.noise() * tester.noise());
  return shown;
}

}  // namespace walkdown::match
