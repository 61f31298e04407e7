// SPDX-License-Identifier: Apache-2.0
// Distances on the ellipsoid (WGS 84), in metres, by Karney's geodesics. Edges are geodesics.
#pragma once

#include "checklist/zone/site.h"

namespace walkdown::zone {

[[nodiscard]] double distance_m(const Point& from, const Point& to);

// The least distance to any point of the edge between a and b, to a tenth of a millimetre for
// edges and distances up to 100 km.
[[nodiscard]] double distance_to_edge_m(const Point& from, const Point& a, const Point& b);

// The least distance to the shape. Inside a polygon (not in one of its holes) it is minus the
// distance to the nearest edge; on an edge 0. Precondition: the shape has at least one point.
[[nodiscard]] double distance_to_shape_m(const Point& from, const Shape& shape);

// Whether the point is in the polygon and in none of its holes. A line has no inside.
[[nodiscard]] bool inside(const Point& at, const Shape& shape);

}  // namespace walkdown::zone
