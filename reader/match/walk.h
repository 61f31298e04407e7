// SPDX-License-Identifier: Apache-2.0
// Walking order: a short open path from where the crew stands through every place that needs a
// visit, ending anywhere. Straight lines; a walk order is no permission to approach.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace walkdown::match {

// A place on the ground, metres in any flat grid.
struct Place {
  double x_m = 0;
  double y_m = 0;
};

struct WalkOptions {
  std::size_t exact_up_to = 12;  // places; at most 14: work and memory double with each
  std::size_t kicks = 900;       // tries to better the path of more places; counted, not timed, so
                                 // that the same field gives the same walk
};

// Indices into `places`, each once. Exact (Held and Karp's recursion) for few places; else nearest
// neighbour, 2-opt and Or-opt from several first hops, then kicks. Places that are not finite come
// last.
[[nodiscard]] std::vector<std::size_t> walk(Place start, std::span<const Place> places,
                                            const WalkOptions& options = {});

// Metres of a walk.
[[nodiscard]] double walk_length(Place start, std::span<const Place> places,
                                 std::span<const std::size_t> order);

}  // namespace walkdown::match
