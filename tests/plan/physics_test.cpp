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

struct Row {
  int awg;
  double mm;
  double mm2;
  double ohm_per_km;
};

// ASTM B258 formula with annealed copper of 1/58 ohm mm2/m (IEC 60028), computed independently; the
// ohm per 1000 ft agree to 0.03 % with the long-published 2.53, 4.02, 6.39, 10.15, 16.14, 25.67,
// 40.81 and 64.90 (a public AWG table).
TEST(WireSize, AgreesWithPublishedAwgTables) {
  constexpr double kFtPerKm = 3280.8399;
  const Row rows[] = {{14, 1.6277, 2.08091, 8.286},  {16, 1.2908, 1.30870, 13.174},
                      {18, 1.0237, 0.82305, 20.948}, {20, 0.8118, 0.51762, 33.31},
                      {22, 0.6438, 0.32553, 52.96},  {24, 0.5106, 0.20473, 84.22},
                      {26, 0.4049, 0.12876, 133.9},  {28, 0.3211, 0.08098, 212.9}};
  const double published[] = {2.53, 4.02, 6.39, 10.15, 16.14, 25.67, 40.81, 64.90};
  for (std::size_t i = 0; i < std::size(rows); ++i) {
    const Row& row = rows[i];
    EXPECT_NEAR(awg_diameter_mm(row.awg), row.mm, 1e-4) << row.awg;
    EXPECT_NEAR(awg_area_mm2(row.awg), row.mm2, 2e-5) << row.awg;
    const double ohm = standard_wire("AWG" + std::to_string(row.awg))->ohm_per_km.mid();
    EXPECT_NEAR(ohm / row.ohm_per_km, 1, 4e-4) << row.awg;
    // The published values have three or four digits.
    EXPECT_NEAR(ohm / kFtPerKm * 1000, published[i], 0.006) << row.awg;
  }
  EXPECT_NEAR(awg_diameter_mm(23) / awg_diameter_mm(24), 1.1229322, 1e-7);
  EXPECT_NEAR(awg_diameter_mm(18) / awg_diameter_mm(24), 2.00503, 1e-5);
  EXPECT_NEAR(awg_area_mm2(14) / awg_area_mm2(24), 10.164, 1e-3);
}

// IEC 60228, class 5 plain: the whole of the sizes that we hold.
TEST(WireSize, AgreesWithIec60228ClassFive) {
  const std::pair<const char*, std::pair<double, double>> rows[] = {{"0.5mm2", {34.483, 39.0}},
                                                                    {"0.75mm2", {22.989, 26.0}},
                                                                    {"1mm2", {17.241, 19.5}},
                                                                    {"1.5mm2", {11.494, 13.3}},
                                                                    {"2.5mm2", {6.897, 7.98}}};
  for (const auto& [size, ohm] : rows) {
    EXPECT_NEAR(standard_wire(size)->ohm_per_km.lo, ohm.first, 5e-4) << size;
    EXPECT_DOUBLE_EQ(standard_wire(size)->ohm_per_km.hi, ohm.second) << size;
  }
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

// 100 ft of AWG22 pair with 1.6 ohm, computed independently: 3.228 ohm of wire, 4.828 in all.
TEST(Expected, AgreesWithAWorkedExample) {
  const Load load{.wire = 0, .lead_m = 30.48};
  const auto got = expected(load, exact("AWG22", 20));
  EXPECT_NEAR(got.lead_ohm.mid(), 3.228, 0.001);
  EXPECT_NEAR(got.ohm.mid(), 4.828, 0.001);
}

// IEC 60028, alpha 0.00393 per kelvin: 10 ohm of copper at 20 degC reads 11.1790 at 50 degC; the
// other published form, (234.5 + T) / 254.5 (from memory), gives 11.1788, and IEC 60228's
// 250 / (230 + T) back to 20 degC gives 11.2: the three agree within 0.2 %.
TEST(Expected, TemperatureFormsAgree) {
  Catalogue catalogue = exact("AWG24", 50);
  catalogue.wires[0].ohm_per_km = {1000, 1000};
  const double ohm = expected({.wire = 0, .lead_m = 5}, catalogue).lead_ohm.mid();
  EXPECT_NEAR(ohm, 11.1790, 1e-9);
  EXPECT_NEAR(ohm / (10 * (234.5 + 50) / 254.5), 1, 2e-4);
  EXPECT_NEAR(ohm / (10 * (230.0 + 50) / 250), 1, 2e-3);
}

// n equal legs share the current: R/n exactly where the range is a point.
TEST(Expected, ParallelLegsDivide) {
  Load load{.count = 4};
  load.join = Join::parallel;
  const auto got = expected(load, exact("AWG24", 20));
  EXPECT_NEAR(got.ohm.mid(), 0.4, 1e-12);
  EXPECT_NEAR(got.u_ohm, 0, 1e-12);
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
