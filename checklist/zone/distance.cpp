// SPDX-License-Identifier: Apache-2.0
#include "checklist/zone/distance.h"

#include <GeographicLib/Geodesic.hpp>
#include <GeographicLib/GeodesicLine.hpp>
#include <GeographicLib/Gnomonic.hpp>
#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace walkdown::zone {
namespace {

using GeographicLib::Geodesic;

constexpr int kMostSteps = 50;
constexpr double kClose_m = 1e-6;

struct Inverse {
  double length_m = 0;
  double azimuth_deg = 0;  // at `from`, towards `to`
};

Inverse inverse(const Point& from, const Point& to) {
  Inverse found;
  double azimuth_at_end_deg = 0;
  Geodesic::WGS84().Inverse(from.lat_deg, from.lon_deg, to.lat_deg, to.lon_deg, found.length_m,
                            found.azimuth_deg, azimuth_at_end_deg);
  return found;
}

// Whether a ray from the origin along +x crosses the edge; the half-open rule counts a vertex once.
bool crosses(double ax, double ay, double bx, double by) {
  if ((ay > 0) == (by > 0)) return false;
  return ax - ay * (bx - ax) / (by - ay) > 0;
}

bool in_ring(const Point& at, const std::vector<Point>& ring) {
  // In a gnomonic projection about the point, geodesics are straight to well under a millimetre
  // over a site, so the plane's even-odd rule applies.
  const GeographicLib::Gnomonic gnomonic(Geodesic::WGS84());
  bool odd = false;
  double before_x = 0;
  double before_y = 0;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    double x = 0;
    double y = 0;
    gnomonic.Forward(at.lat_deg, at.lon_deg, ring[i].lat_deg, ring[i].lon_deg, x, y);
    if (i > 0 && crosses(before_x, before_y, x, y)) odd = !odd;
    before_x = x;
    before_y = y;
  }
  return odd;
}

}  // namespace

double distance_m(const Point& from, const Point& to) { return inverse(from, to).length_m; }

// Newton's way along the edge: at a point of it, the foot of the perpendicular is d cos(angle)
// further on, exactly so in the plane; the curvature over a site leaves a residue that the next
// step removes.
double distance_to_edge_m(const Point& from, const Point& a, const Point& b) {
  const Geodesic& geodesic = Geodesic::WGS84();
  const auto edge = geodesic.InverseLine(a.lat_deg, a.lon_deg, b.lat_deg, b.lon_deg);
  const double length_m = edge.Distance();
  double least_m = std::min(distance_m(from, a), distance_m(from, b));
  double along_m = 0;
  for (int step = 0; step < kMostSteps && length_m > 0; ++step) {
    Point at;
    double azimuth_deg = 0;
    edge.Position(along_m, at.lat_deg, at.lon_deg, azimuth_deg);
    const Inverse back = inverse(at, from);
    least_m = std::min(least_m, back.length_m);
    const double angle = (back.azimuth_deg - azimuth_deg) * std::numbers::pi / 180;
    const double next_m = std::clamp(along_m + back.length_m * std::cos(angle), 0.0, length_m);
    if (std::abs(next_m - along_m) < kClose_m) break;
    along_m = next_m;
  }
  return least_m;
}

bool inside(const Point& at, const Shape& shape) {
  if (!shape.polygon || shape.rings.empty() || !in_ring(at, shape.rings.front())) return false;
  return std::none_of(shape.rings.begin() + 1, shape.rings.end(),
                      [&](const std::vector<Point>& hole) { return in_ring(at, hole); });
}

double distance_to_shape_m(const Point& from, const Shape& shape) {
  double least_m = std::numeric_limits<double>::infinity();
  for (const auto& ring : shape.rings) {
    if (ring.size() == 1) least_m = std::min(least_m, distance_m(from, ring.front()));
    for (std::size_t i = 1; i < ring.size(); ++i) {
      least_m = std::min(least_m, distance_to_edge_m(from, ring[i - 1], ring[i]));
    }
  }
  return inside(from, shape) ? -least_m : least_m;
}

}  // namespace walkdown::zone
