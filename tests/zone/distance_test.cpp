// SPDX-License-Identifier: Apache-2.0
#include "checklist/zone/distance.h"

#include <gtest/gtest.h>

#include <GeographicLib/Geodesic.hpp>
#include <GeographicLib/GeodesicLine.hpp>
#include <algorithm>
#include <cmath>
#include <random>

namespace walkdown::zone {
namespace {

using GeographicLib::Geodesic;

// Vincenty's test line between two geodetic stations, on GRS 80; WGS 84 gives the same millimetre.
TEST(Distance, FlindersPeakToBuninyong) {
  const Point flinders{144.42486788888888, -37.95103341666667};
  const Point buninyong{143.92649552777777, -37.65282113888889};
  EXPECT_NEAR(distance_m(flinders, buninyong), 54972.271, 0.001);
}

// GeographicLib's example of GeodSolve.
TEST(Distance, AcrossTheAtlantic) {
  EXPECT_NEAR(distance_m({-73.8, 40.6}, {-0.5, 51.6}), 5551759.400, 0.001);
}

// Computed independently: equal degrees are not equal metres at 51 N.
TEST(Distance, DegreesAreNotMetres) {
  EXPECT_NEAR(distance_m({0, 50.9995}, {0, 51.0005}), 111.248, 0.001);
  EXPECT_NEAR(distance_m({0, 51}, {0.001, 51}), 70.198, 0.001);
}

Point moved(const Point& from, double east_m, double north_m) {
  Point to;
  Geodesic::WGS84().Direct(from.lat_deg, from.lon_deg,
                           std::atan2(east_m, north_m) * 57.29577951308232,
                           std::hypot(east_m, north_m), to.lat_deg, to.lon_deg);
  return to;
}

const Point kOrigin{-35.2, 44.6};

Shape square(double side_m) {
  Shape shape{Role::audience, "square", true, {{}}, 0};
  for (const auto& [x, y] :
       {std::pair{0.0, 0.0}, {side_m, 0.0}, {side_m, side_m}, {0.0, side_m}, {0.0, 0.0}}) {
    shape.rings[0].push_back(moved(kOrigin, x, y));
  }
  return shape;
}

// The square of the plane, (0,0)-(10,10): worked by hand. Ten metres of ground are plane to 0.1 mm.
TEST(Distance, SquareOfThePlane) {
  const Shape shape = square(10);
  EXPECT_NEAR(distance_to_shape_m(moved(kOrigin, 5, -3), shape), 3, 1e-3);
  EXPECT_NEAR(distance_to_shape_m(moved(kOrigin, 13, 14), shape), 5, 1e-3);
  EXPECT_NEAR(distance_to_shape_m(moved(kOrigin, 5, 4), shape), -4, 1e-3);
  EXPECT_NEAR(distance_to_shape_m(moved(kOrigin, 10, 5), shape), 0, 1e-3);
  EXPECT_TRUE(inside(moved(kOrigin, 5, 4), shape));
  EXPECT_FALSE(inside(moved(kOrigin, 13, 14), shape));
}

TEST(Distance, InAHoleIsOutside) {
  Shape shape = square(100);
  std::vector<Point> hole;
  for (const auto& [x, y] :
       {std::pair{40.0, 40.0}, {60.0, 40.0}, {60.0, 60.0}, {40.0, 60.0}, {40.0, 40.0}}) {
    hole.push_back(moved(kOrigin, x, y));
  }
  shape.rings.push_back(hole);
  EXPECT_NEAR(distance_to_shape_m(moved(kOrigin, 50, 45), shape), 5, 1e-3);
  EXPECT_NEAR(distance_to_shape_m(moved(kOrigin, 50, 30), shape), -10, 1e-3);
}

TEST(Distance, ALineHasNoInside) {
  Shape line = square(10);
  line.polygon = false;
  EXPECT_NEAR(distance_to_shape_m(moved(kOrigin, 5, 4), line), 4, 1e-3);
}

TEST(Distance, AnEdgeOfNoLength) {
  EXPECT_NEAR(distance_to_edge_m(moved(kOrigin, 3, 4), kOrigin, kOrigin), 5, 1e-3);
}

TEST(Distance, WindingDoesNotMatter) {
  Shape shape = square(10);
  std::reverse(shape.rings[0].begin(), shape.rings[0].end());
  EXPECT_NEAR(distance_to_shape_m(moved(kOrigin, 5, 4), shape), -4, 1e-3);
}

double by_search(const Point& from, const Point& a, const Point& b) {
  const auto edge = Geodesic::WGS84().InverseLine(a.lat_deg, a.lon_deg, b.lat_deg, b.lon_deg);
  const auto at = [&](double along) {
    Point point;
    edge.Position(along, point.lat_deg, point.lon_deg);
    return distance_m(from, point);
  };
  double low = 0;
  double high = edge.Distance();
  for (int i = 0; i < 200; ++i) {
    const double third = (high - low) / 3;
    if (at(low + third) < at(high - third)) {
      high -= third;
    } else {
      low += third;
    }
  }
  return at((low + high) / 2);
}

// Against a plain ternary search along the same geodesic.
TEST(Distance, EdgesAgreeWithASearch) {
  std::mt19937 random(7);
  for (const double span_m : {10.0, 1'000.0, 50'000.0}) {
    std::uniform_real_distribution<double> metres(-span_m, span_m);
    for (int i = 0; i < 100; ++i) {
      const Point from = moved(kOrigin, metres(random), metres(random));
      const Point a = moved(kOrigin, metres(random), metres(random));
      const Point b = moved(kOrigin, metres(random), metres(random));
      ASSERT_NEAR(distance_to_edge_m(from, a, b), by_search(from, a, b), 1e-4) << span_m;
    }
  }
}

TEST(Distance, NearThePoleAndAcrossTheAntimeridian) {
  const Point a{179.9995, -17};
  const Point b{-179.9995, -17};
  EXPECT_NEAR(distance_to_edge_m({180, -17.0001}, a, b), 11.07, 0.01);
  EXPECT_NEAR(distance_to_edge_m({0, 89.9999}, {90, 89.9999}, {-90, 89.9999}), 11.17, 0.01);
}

}  // namespace
}  // namespace walkdown::zone
