// SPDX-License-Identifier: Apache-2.0
#include "checklist/desk/round.h"

#include <cmath>
#include <numbers>
#include <optional>

#include "reader/match/walk.h"

namespace walkdown::desk {
namespace {

// Mean radius of the Earth, IUGG; flat around the start is good enough for an order.
constexpr double kMetresPerDegree = 6'371'008.8 * std::numbers::pi / 180;

match::Place place(zone::Point at, zone::Point around) {
  const double shrink = std::cos(around.lat_deg * std::numbers::pi / 180);
  return {(at.lon_deg - around.lon_deg) * shrink * kMetresPerDegree,
          (at.lat_deg - around.lat_deg) * kMetresPerDegree};
}

// Its middle, roughly: the mean of its corners.
std::optional<zone::Point> control_of(const zone::Site& site, std::string& name) {
  for (const zone::Shape& shape : site.shapes) {
    if (shape.role != zone::Role::control || shape.rings.empty() || shape.rings[0].empty()) {
      continue;
    }
    zone::Point sum;
    for (const zone::Point& corner : shape.rings[0]) {
      sum.lon_deg += corner.lon_deg;
      sum.lat_deg += corner.lat_deg;
    }
    const auto count = static_cast<double>(shape.rings[0].size());
    name = shape.name;
    return zone::Point{sum.lon_deg / count, sum.lat_deg / count};
  }
  return std::nullopt;
}

}  // namespace

Round round_of(const zone::Site* site, const std::string& from,
               const std::vector<std::string>& names) {
  Round out;
  std::vector<const std::string*> known;
  std::vector<zone::Point> points;
  for (const std::string& name : names) {
    const zone::Position* position = site == nullptr ? nullptr : site->find(name);
    if (position == nullptr) continue;
    known.push_back(&name);
    points.push_back(position->at);
  }
  if (site != nullptr && !known.empty()) {
    zone::Point start = points.front();
    if (const zone::Position* stands = site->find(from)) {
      start = stands->at;
      out.from = from;
    } else if (const auto control = control_of(*site, out.from)) {
      start = *control;
    }
    std::vector<match::Place> places;
    places.reserve(points.size());
    for (const zone::Point& point : points) places.push_back(place(point, start));
    const auto order = match::walk({0, 0}, places);
    out.length_m = match::walk_length({0, 0}, places, order);
    for (const std::size_t next : order) out.order.push_back(*known[next]);
  }
  for (const std::string& name : names) {
    if (site == nullptr || site->find(name) == nullptr) out.order.push_back(name);
  }
  return out;
}

}  // namespace walkdown::desk
