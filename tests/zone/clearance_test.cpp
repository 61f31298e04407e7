// SPDX-License-Identifier: Apache-2.0
#include "checklist/zone/clearance.h"

#include <gmock/gmock.h>

#include "templates/embedded.h"

namespace walkdown::zone {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::SizeIs;

const Table kTable{"rule set", "a gazette", "2020", 20.0, {{50, 40, 30}, {75, 60, 50}}};

// A line of audience along a meridian, 0.001 degrees (70.198 m at 51 N) east of the position.
Site site(double accuracy_m = 0) {
  Site site;
  site.positions.push_back({"A", {0, 51}, accuracy_m});
  site.shapes.push_back({Role::audience, "bank", false, {{{0.001, 50.999}, {0.001, 51.001}}}, 0});
  return site;
}

TEST(Clearance, DistanceMarginAndLargestCalibre) {
  const Zone zone = judge(site(), kTable, {{"A", {75.0, false}}});
  EXPECT_TRUE(zone.holds());
  EXPECT_EQ(zone.rules, "rule set");
  ASSERT_THAT(zone.clearances, SizeIs(1));
  const Clearance& each = zone.clearances[0];
  EXPECT_NEAR(static_cast<double>(each.distance_mm), 70'198, 2);
  EXPECT_EQ(each.least_mm, 60'000);
  EXPECT_EQ(each.margin_mm(), each.distance_mm - 60'000);
  EXPECT_EQ(each.largest_um, 75'000);
  EXPECT_EQ(zone.largest_um.at("A"), 75'000);
}

TEST(Clearance, AccuracyIsTakenOff) {
  EXPECT_TRUE(judge(site(10), kTable, {{"A", {75.0, false}}}).holds());
  const Zone zone = judge(site(10.3), kTable, {{"A", {75.0, false}}});
  EXPECT_THAT(zone.faults, ElementsAre(HasSubstr("A is 59.8 m from bank; rule set asks for 60.0")));
  EXPECT_EQ(zone.largest_um.at("A"), 50'000);
}

TEST(Clearance, InsideNeverHoldsEvenWithoutADistanceAsked) {
  Site crowd = site();
  crowd.shapes.push_back({Role::structure,
                          "barn",
                          true,
                          {{{-0.1, 50.9}, {0.1, 50.9}, {0.1, 51.1}, {-0.1, 51.1}, {-0.1, 50.9}}},
                          0});
  const Zone zone = judge(crowd, kTable, {{"A", {}}});
  ASSERT_FALSE(zone.holds());
  EXPECT_LT(zone.clearances[1].distance_mm, 0);
  EXPECT_EQ(zone.largest_um.at("A"), 0);
}

TEST(Clearance, WhatCannotBeJudgedDoesNotHold) {
  EXPECT_THAT(judge(site(), kTable, {{"A", {80.0, false}}}).faults,
              ElementsAre(HasSubstr("does not say how far")));
  EXPECT_THAT(judge(site(), kTable, {{"B", {50.0, false}}}).faults,
              ElementsAre(HasSubstr("does not show where B is")));
  Table silent = kTable;
  silent.without_calibre_m.reset();
  EXPECT_FALSE(judge(site(), silent, {{"A", {50.0, true}}}).holds());
  EXPECT_TRUE(judge(site(), kTable, {{"A", {50.0, true}}}).holds());
  Site empty = site();
  empty.shapes.clear();
  EXPECT_FALSE(judge(empty, kTable, {{"A", {50.0, false}}}).holds());
}

TEST(Clearance, APositionOutsideTheClearedGround) {
  Site cleared = site();
  cleared.shapes.push_back(
      {Role::exclusion, "field", true, {{{1, 51}, {1.1, 51}, {1.1, 51.1}, {1, 51}}}, 0});
  EXPECT_THAT(judge(cleared, kTable, {{"A", {50.0, false}}}).faults,
              ElementsAre(HasSubstr("outside the ground")));
}

// DESIGN 4.4: an exclusion is a Polygon or a LineString. All the way round it encloses ground.
TEST(Clearance, AFenceDrawnAsALine) {
  const auto faults = [](const char* fence) {
    const auto read = read_site(
        R"({"type":"FeatureCollection","features":[
            {"type":"Feature","properties":{"role":"position","name":"A"},
             "geometry":{"type":"Point","coordinates":[-1.0,51.0]}},
            {"type":"Feature","properties":{"role":"audience"},
             "geometry":{"type":"LineString","coordinates":[[-1.0,51.2],[-1.01,51.2]]}},
            {"type":"Feature","properties":{"role":"exclusion"},
             "geometry":{"type":"LineString","coordinates":)" +
            std::string(fence) + "}}]}",
        "site.geojson");
    return judge(read.site, kTable, {{"A", {50.0, false}}}).faults;
  };
  const auto outside = testing::Contains(HasSubstr("A lies outside the ground"));
  EXPECT_THAT(faults("[[1,51],[1.1,51],[1.1,51.1],[1,51]]"), outside);
  EXPECT_THAT(faults("[[-1.1,50.9],[-0.9,50.9],[-1,51.1],[-1.1,50.9]]"), testing::Not(outside));
  EXPECT_THAT(faults("[[1,51],[1.1,51]]"), testing::Not(outside)) << "a line encloses nothing";
}

TEST(Clearance, WhatTheTableDoesNotSayIsNamed) {
  EXPECT_THAT(judge(site(), kTable, {{"A", {80.0, false}}}).faults,
              ElementsAre(HasSubstr(": 80 mm is above its largest calibre")));
  Table silent = kTable;
  silent.without_calibre_m.reset();
  EXPECT_THAT(judge(site(), silent, {{"A", {50.0, true}}}).faults,
              ElementsAre(HasSubstr(": it has cues without a calibre")));
}

TEST(Clearance, ChargesTakeTheLargestCalibreOfThePlan) {
  plan::Plan plan;
  plan::PlannedPin pin;
  pin.position = "A";
  pin.calibre_mm = 50;
  plan.pins.push_back(pin);
  pin.calibre_mm = 75;
  plan.pins.push_back(pin);
  pin.calibre_mm.reset();
  plan.pins.push_back(pin);
  pin.position = "B";
  pin.load.count = 0;
  plan.pins.push_back(pin);
  const auto all = charges(plan);
  ASSERT_THAT(all, SizeIs(1));
  EXPECT_EQ(all.at("A").calibre_mm, 75);
  EXPECT_TRUE(all.at("A").without_calibre);
}

TEST(Clearance, TheDemoSiteAllowsItsCalibres) {
  const auto read = read_site(templates::text("demo/site.geojson").value(), "site.geojson");
  const auto table =
      read_table(templates::text("distances/radius-70ft-per-inch.toml").value(), "t.toml");
  std::map<std::string, Charge> charges;
  for (const Position& position : read.site.positions) charges[position.name] = {75.0, true};
  const Zone zone = judge(read.site, table.table, charges);
  EXPECT_THAT(zone.faults, SizeIs(0));
  for (const auto& each : zone.clearances) {
    EXPECT_TRUE(each.margin_mm().has_value()) << each.position << " " << each.target;
  }
}

}  // namespace
}  // namespace walkdown::zone
