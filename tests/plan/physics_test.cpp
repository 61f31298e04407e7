// SPDX-License-Identifier: Apache-2.0
#include <gtest/gtest.h>

#include <cmath>

#include "reader/plan/expected.h"
#include "reader/plan/wire_size.h"

namespace walkdown::plan {
namespace {

// Computed independently from the formula of ASTM B258 and 1/58 ohm mm2/m (IEC 60028).
TEST(WireSize, AwgDiameterAndResistance) {
  EXPECT_NEAR(awg_diameter_mm(24), 0.5106, 5e-5);
  EXPECT_NEAR(awg_diameter_mm(36), 0.127, 1e-9);
  EXPECT_NEAR(awg_diameter_mm(-3), 11.684, 1e-9);
  EXPECT_NEAR(standard_wire("AWG24")->ohm_per_km.mid(), 84.22, 0.01);
  EXPECT_NEAR(standard_wire("AWG14")->ohm_per_km.mid(), 8.286, 0.001);
  EXPECT_NEAR(standard_wire("AWG28")->ohm_per_km.mid(), 212.9, 0.05);
}

// IEC 60228, class 5 plain: the maximum; the ideal value is computed from 1/58.
TEST(WireSize, MetricBand) {
  const auto wire = standard_wire("0,5 mm\xC2\xB2");
  ASSERT_TRUE(wire);
  EXPECT_NEAR(wire->ohm_per_km.lo, 34.483, 0.001);
  EXPECT_DOUBLE_EQ(wire->ohm_per_km.hi, 39.0);
  EXPECT_NEAR(standard_wire("2.5mm2")->ohm_per_km.hi, 7.98, 1e-9);
  EXPECT_FALSE(standard_wire("AWG99"));
  EXPECT_FALSE(standard_wire("mm2"));
}

Catalogue exact(const char* size, double temp_c) {
  Catalogue out;
  out.igniters.emplace_back().bridge_ohm = {1.6, 1.6};
  out.wires.push_back(*standard_wire(size));
  out.wiring = {.lead_tol_pct = 0, .contact_ohm = {0, 0}, .temp_c = temp_c, .temp_tol_k = 0};
  return out;
}

// Computed independently: 30 m of 0.5 mm2 pair with 1.6 ohm, at 20 and at 35 degC (IEC 60028); only
// the wire is corrected.
TEST(Expected, CorrectsTheWireAlone) {
  const Load load{.wire = 0, .lead_m = 30};
  const auto cool = expected(load, exact("0.5mm2", 20));
  EXPECT_NEAR(cool.lead_ohm.lo, 2.069, 0.001);
  EXPECT_NEAR(cool.ohm.hi, 3.940, 0.001);
  EXPECT_NEAR(expected(load, exact("0.5mm2", 35)).ohm.hi, 4.0779, 0.0001);
}

// JCGM 100, 4.3.7 and 5.1.2: rectangular inputs, root sum of squares.
TEST(Expected, UncertaintyIsTheRootOfTheSumOfSquares) {
  Catalogue catalogue = exact("AWG24", 20);
  catalogue.igniters[0].bridge_ohm = {1.3, 1.9};
  catalogue.wiring.contact_ohm = {0, 0.1};
  const auto got = expected({.count = 3}, catalogue);
  EXPECT_NEAR(got.u_ohm, std::sqrt(3 * 0.09 / 3 + 0.0025 / 3), 1e-12);
  EXPECT_NEAR(got.ohm.hi, 5.8, 1e-12);
}

TEST(Expected, ColdNeverMakesResistanceNegative) {
  Catalogue catalogue = exact("AWG24", -60);
  catalogue.wires[0].alpha_per_k = 0.02;
  EXPECT_GE(expected({.wire = 0, .lead_m = 100}, catalogue).lead_ohm.lo, 0);
}

}  // namespace
}  // namespace walkdown::plan
