// SPDX-License-Identifier: Apache-2.0
// The site: where the positions are and what stands around them. Read from GeoJSON (RFC 7946):
// longitude before latitude, degrees, WGS 84.
//
// Each feature has "role" among its properties:
//   position    Point, with "name" as in the plan
//   audience    Polygon or LineString
//   structure   Polygon or LineString
//   control     Point, Polygon or LineString: where the show is fired from
//   exclusion   Polygon: the ground that must be clear of people
// Optional: "name" of any feature, "accuracy_m" (0..100, default 0): how far off its points may be.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "reader/result.h"

namespace walkdown::zone {

struct Point {
  double lon_deg = 0;  // -180..180
  double lat_deg = 0;  // -90..90
};

struct Position {
  std::string name;
  Point at;
  double accuracy_m = 0;
};

enum class Role : std::uint8_t { audience, structure, control, exclusion };
[[nodiscard]] std::string_view word(Role role);

// A polygon's rings are closed: first = last. The first is the outer one, the others are holes.
// A line, or a point, is one open ring.
struct Shape {
  Role role = Role::audience;
  std::string name;  // "audience 2" where the file gives none
  bool polygon = false;
  std::vector<std::vector<Point>> rings;
  double accuracy_m = 0;
};

struct Site {
  std::vector<Position> positions;
  std::vector<Shape> shapes;

  // Null where the site has no such position.
  [[nodiscard]] const Position* find(std::string_view name) const;
};

struct SiteRead {
  Site site;                    // whatever could be read
  std::vector<Error> mistakes;  // all of them; the site is usable only when there is none
};

// Features are taken in their order in the file. The wrong winding of a ring is accepted (RFC 7946,
// 3.1.6). Mistakes: not JSON, not a FeatureCollection, a feature with no or an unknown role, a
// geometry that its role does not take, a ring that is not closed or has under four positions,
// coordinates out of range, a position without a name or named twice, a site over 100 km across.
// "44.6005 N, 35.2000 W", of the first position, to be looked up on a map: longitude and latitude
// exchanged are two good numbers, of another place where the metres are not the same. Empty without
// a position.
[[nodiscard]] std::string say_place(const Site& site);

[[nodiscard]] SiteRead read_site(std::string_view text, std::string_view file_name);

}  // namespace walkdown::zone
