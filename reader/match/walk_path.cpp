// SPDX-License-Identifier: Apache-2.0
#include "reader/match/walk_path.h"

#include <algorithm>
#include <cmath>

namespace walkdown::match {
namespace {

constexpr std::size_t kNear = 10;  // places looked at around each
constexpr std::size_t kMoved = 3;  // places of a piece that is moved elsewhere
constexpr double kLeast = 1e-6;    // metres

}  // namespace

// Where each node is, and which are still to be looked at.
struct WalkPath::Work {
  std::vector<Node> position;
  std::vector<char> waits;
  std::vector<Node> queue;

  void look(Node node) {
    if (waits[node] != 0) return;
    waits[node] = 1;
    queue.push_back(node);
  }
  void moved(const Path& path, std::size_t from, std::size_t to) {
    for (std::size_t i = from; i <= to; ++i) position[path[i]] = static_cast<Node>(i);
  }
};

WalkPath::WalkPath(Place start, std::span<const Place> places)
    : n_(places.size()), width_(n_ + 2), far_(width_ * width_, 0.0F), near_(width_) {
  const auto place = [&](std::size_t i) { return i == 0 ? start : places[i - 1]; };
  for (std::size_t a = 0; a <= n_; ++a) {
    for (std::size_t b = 0; b <= n_; ++b) {
      const Place p = place(a);
      const Place q = place(b);
      far_[a * width_ + b] = static_cast<float>(std::hypot(p.x_m - q.x_m, p.y_m - q.y_m));
    }
  }
  for (std::size_t a = 0; a <= n_; ++a) {
    std::vector<Node>& list = near_[a];
    for (std::size_t b = 1; b <= n_; ++b) {
      if (a != b) list.push_back(static_cast<Node>(b));
    }
    const auto closer = [&, from = static_cast<Node>(a)](Node x, Node y) {
      return far(from, x) != far(from, y) ? far(from, x) < far(from, y) : x < y;
    };
    const std::size_t keep = std::min(kNear, list.size());
    std::partial_sort(list.begin(), list.begin() + static_cast<std::ptrdiff_t>(keep), list.end(),
                      closer);
    list.resize(keep);
  }
}

double WalkPath::length(const Path& path) const {
  double sum = 0;
  for (std::size_t i = 1; i < path.size(); ++i) sum += far(path[i - 1], path[i]);
  return sum;
}

WalkPath::Path WalkPath::nearest(Node first) const {
  Path path = {0, first};
  std::vector<char> seen(width_, 0);
  seen[first] = 1;
  while (path.size() <= n_) {
    const Node here = path.back();
    Node best = 0;
    for (Node b = 1; b <= n_; ++b) {
      if (seen[b] == 0 && (best == 0 || far(here, b) < far(here, best))) best = b;
    }
    seen[best] = 1;
    path.push_back(best);
  }
  path.push_back(static_cast<Node>(n_ + 1));
  return path;
}

// Metres saved when positions i..j are walked the other way round.
double WalkPath::turn(Path& path, std::size_t i, std::size_t j) const {
  return far(path[i - 1], path[i]) + far(path[j], path[j + 1]) - far(path[i - 1], path[j]) -
         far(path[i], path[j + 1]);
}

double WalkPath::turns(Path& path, std::size_t i, Work& work) const {
  std::size_t from = 0;
  std::size_t to = 0;
  double best = kLeast;
  const auto offer = [&](std::size_t a, std::size_t b) {
    if (a < 1 || b > n_ || a >= b) return;
    const double saved = turn(path, a, b);
    if (saved > best) best = saved, from = a, to = b;
  };
  offer(i, n_);  // another end
  for (const Node c : near_[path[i]]) {
    const std::size_t j = work.position[c];
    // c comes right after, or right before, what is at i.
    i < j ? offer(i + 1, j) : offer(j + 1, i);
    i < j ? offer(i, j - 1) : offer(j, i - 1);
  }
  if (to == 0) return 0;
  for (const std::size_t k : {from - 1, from, to, to + 1}) work.look(path[k]);
  std::reverse(path.begin() + static_cast<std::ptrdiff_t>(from),
               path.begin() + static_cast<std::ptrdiff_t>(to) + 1);
  work.moved(path, from, to);
  return best;
}

// The piece that begins or ends at i goes between two other places, either way round.
double WalkPath::shifts(Path& path, std::size_t i, Work& work) const {
  struct Move {
    std::size_t first = 0, last = 0, after = 0;
    bool turned = false;
  } move;
  double best = kLeast;
  for (std::size_t size = 1; size <= kMoved && i + size - 1 <= n_; ++size) {
    const std::size_t last = i + size - 1;
    const double out = far(path[i - 1], path[i]) + far(path[last], path[last + 1]) -
                       far(path[i - 1], path[last + 1]);
    if (out <= best) continue;
    const auto offer = [&](std::size_t after) {
      if (after + 1 >= i && after <= last) return;
      const double gap = far(path[after], path[after + 1]);
      for (const bool turned : {false, true}) {
        const Node head = turned ? path[last] : path[i];
        const Node tail = turned ? path[i] : path[last];
        const double saved = out + gap - far(path[after], head) - far(tail, path[after + 1]);
        if (saved > best) best = saved, move = {i, last, after, turned};
      }
    };
    offer(n_);  // at the end
    for (const Node c : near_[path[i]]) {
      offer(work.position[c]);
      offer(work.position[c] - 1U);
    }
  }
  if (move.last == 0) return 0;
  for (const std::size_t k :
       {move.first - 1, move.first, move.last, move.last + 1, move.after, move.after + 1}) {
    work.look(path[k]);
  }
  const auto begin = path.begin();
  const auto at = [&](std::size_t k) { return begin + static_cast<std::ptrdiff_t>(k); };
  if (move.turned) std::reverse(at(move.first), at(move.last) + 1);
  if (move.after > move.last) {
    std::rotate(at(move.first), at(move.last) + 1, at(move.after) + 1);
    work.moved(path, move.first, move.after);
  } else {
    std::rotate(at(move.after) + 1, at(move.first), at(move.last) + 1);
    work.moved(path, move.after + 1, move.last);
  }
  return best;
}

double WalkPath::at(Path& path, std::size_t i, Work& work) const {
  const double saved = turns(path, i, work);
  return saved > 0 ? saved : shifts(path, i, work);
}

double WalkPath::better(Path& path, std::size_t from, std::size_t to) const {
  Work work;
  work.position.resize(width_);
  work.waits.assign(width_, 0);
  work.moved(path, 0, n_ + 1);
  for (std::size_t i = std::min(to, n_ + 1); i-- > from;) work.look(path[i]);
  double saved = 0;
  while (!work.queue.empty()) {
    const Node node = work.queue.back();
    work.queue.pop_back();
    work.waits[node] = 0;
    if (node == 0 || node > n_) continue;
    const double here = at(path, work.position[node], work);
    if (here > 0) work.look(node);
    saved += here;
  }
  return saved;
}

}  // namespace walkdown::match
