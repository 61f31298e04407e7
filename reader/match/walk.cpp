// SPDX-License-Identifier: Apache-2.0
#include "reader/match/walk.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "reader/match/walk_path.h"

namespace walkdown::match {
namespace {

using Node = WalkPath::Node;
using Path = WalkPath::Path;

constexpr std::size_t kMostExact = 14;
constexpr std::size_t kMostPlaces = 5000;  // beyond, in the order given: no crew walks so many
constexpr std::size_t kHops = 10;          // first hops tried
constexpr std::size_t kWindow = 50;        // places that one kick stirs

// Held and Karp: the shortest way through a set that ends at one of it.
Path exact(const WalkPath& walk) {
  const std::size_t n = walk.places();
  const std::size_t sets = std::size_t{1} << n;
  std::vector<double> least(sets * n, std::numeric_limits<double>::infinity());
  std::vector<std::uint8_t> before(sets * n, 0);
  for (std::size_t i = 0; i < n; ++i) {
    least[(std::size_t{1} << i) * n + i] = walk.far(0, static_cast<Node>(i + 1));
  }
  for (std::size_t set = 1; set < sets; ++set) {
    for (std::size_t last = 0; last < n; ++last) {
      if ((set >> last & 1U) == 0) continue;
      const double here = least[set * n + last];
      for (std::size_t next = 0; next < n; ++next) {
        if ((set >> next & 1U) != 0) continue;
        const std::size_t to = (set | std::size_t{1} << next) * n + next;
        const double there =
            here + walk.far(static_cast<Node>(last + 1), static_cast<Node>(next + 1));
        if (there < least[to]) least[to] = there, before[to] = static_cast<std::uint8_t>(last);
      }
    }
  }
  std::size_t set = sets - 1;
  std::size_t last = 0;
  for (std::size_t i = 1; i < n; ++i) {
    if (least[set * n + i] < least[set * n + last]) last = i;
  }
  Path path = {static_cast<Node>(n + 1)};
  for (std::size_t left = n; left > 0; --left) {
    path.push_back(static_cast<Node>(last + 1));
    const std::size_t previous = before[set * n + last];
    set &= ~(std::size_t{1} << last);
    last = previous;
  }
  path.push_back(0);
  std::reverse(path.begin(), path.end());
  return path;
}

// A fixed sequence: the same field gives the same walk.
class Sequence {
 public:
  std::size_t below(std::size_t n) {
    bits_ = bits_ * 6364136223846793005U + 1442695040888963407U;
    return static_cast<std::size_t>(bits_ >> 33U) % n;
  }

 private:
  std::uint64_t bits_ = 0x9E3779B97F4A7C15U;
};

// Two neighbouring pieces within a window change places; then the neighbourhood is bettered.
double kick(const WalkPath& walk, Path& path, Sequence& dice) {
  const std::size_t n = walk.places();
  const std::size_t window = std::min(kWindow, n);
  const std::size_t low = 1 + dice.below(n - window + 1);
  std::size_t cut[3] = {low + dice.below(window), low + dice.below(window),
                        low + dice.below(window)};
  std::sort(std::begin(cut), std::end(cut));
  if (cut[0] == cut[1] || cut[1] == cut[2]) return 0;
  const auto at = [&](std::size_t k) { return path.begin() + static_cast<std::ptrdiff_t>(k); };
  const auto around = [&] {
    return walk.far(path[cut[0] - 1], path[cut[0]]) + walk.far(path[cut[2] - 1], path[cut[2]]);
  };
  const double before = around() + walk.far(path[cut[1] - 1], path[cut[1]]);
  const std::size_t middle = cut[0] + cut[2] - cut[1];
  std::rotate(at(cut[0]), at(cut[1]), at(cut[2]));
  const double after = around() + walk.far(path[middle - 1], path[middle]);
  double saved = before - after;
  for (const std::size_t k : {cut[0], middle, cut[2]}) {
    saved += walk.better(path, k - 1, std::min(k + 1, n + 1));
  }
  return saved;
}

// From several first hops: which row to begin with is a choice that no local move can mend.
Path first_guess(const WalkPath& walk) {
  const std::size_t n = walk.places();
  std::vector<Node> hops = walk.near(0);
  for (std::size_t k = 0; k < kHops; ++k) hops.push_back(static_cast<Node>(1 + k * n / kHops));
  Path best;
  double least = std::numeric_limits<double>::infinity();
  for (const Node hop : hops) {
    Path path = walk.nearest(hop);
    walk.better(path, 1, n + 1);
    const double length = walk.length(path);
    if (length < least) least = length, best = std::move(path);
  }
  return best;
}

Path kicked(const WalkPath& walk, std::size_t kicks) {
  Path here = first_guess(walk);
  Path best = here;
  double longer = 0;  // of `here` than of `best`
  Sequence dice;
  const double step = walk.length(best) / static_cast<double>(walk.places() + 1);
  for (std::size_t k = 0; k < kicks; ++k) {
    Path next = here;
    const double saved = kick(walk, next, dice);
    const double allowed = 0.3 * step * static_cast<double>(kicks - k) / static_cast<double>(kicks);
    if (longer - saved > allowed) continue;
    here = std::move(next);
    longer -= saved;
    if (longer < -1e-6) best = here, longer = 0;
  }
  return best;
}

bool real(Place p) { return std::isfinite(p.x_m) && std::isfinite(p.y_m); }

}  // namespace

std::vector<std::size_t> walk(Place start, std::span<const Place> places,
                              const WalkOptions& options) {
  std::vector<std::size_t> order;
  std::vector<std::size_t> lost;
  std::vector<Place> known;
  for (std::size_t i = 0; i < places.size(); ++i) {
    const bool takes_part = real(places[i]) && real(start) && known.size() < kMostPlaces;
    (takes_part ? order : lost).push_back(i);
    if (takes_part) known.push_back(places[i]);
  }
  if (known.size() > 1) {
    const WalkPath ways(start, known);
    const bool few = known.size() <= std::min(options.exact_up_to, kMostExact);
    const Path path = few ? exact(ways) : kicked(ways, options.kicks);
    std::vector<std::size_t> sorted;
    for (std::size_t i = 1; i + 1 < path.size(); ++i) sorted.push_back(order[path[i] - 1U]);
    order = std::move(sorted);
  }
  order.insert(order.end(), lost.begin(), lost.end());
  return order;
}

double walk_length(Place start, std::span<const Place> places, std::span<const std::size_t> order) {
  double sum = 0;
  Place here = start;
  for (const std::size_t i : order) {
    sum += std::hypot(places[i].x_m - here.x_m, places[i].y_m - here.y_m);
    here = places[i];
  }
  return sum;
}

}  // namespace walkdown::match
