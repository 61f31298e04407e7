// SPDX-License-Identifier: Apache-2.0
#include "reader/match/simplify.h"

#include <algorithm>
#include <array>
#include <utility>
#include <vector>

namespace walkdown::match {
namespace {

constexpr std::size_t kMostRails = 64;   // of one knot
constexpr std::size_t kMostEvents = 12;  // in it
constexpr double kGain = 1e-9;

// All mistakes that hang together with one, lifted out for as long as this lives.
class Knot {
 public:
  Knot(Hypothesis& held, std::size_t i) : held_(held), rails_(held.rails_of(i)) {
    events_ = held.closed(rails_, kMostRails);
    if (events_.size() > kMostEvents) events_.clear();
    for (const std::size_t e : events_) whole_ += held.event(e).price;
    whole_ += held.cost(rails_);
    held_.lift_all(events_);
  }
  Knot(const Knot&) = delete;
  Knot& operator=(const Knot&) = delete;
  ~Knot() { held_.put_all_back(events_); }

  [[nodiscard]] const std::vector<std::size_t>& events() const { return events_; }

  // Nats by which the field is dearer when two of them (or one, named twice) are left out.
  double dearer_without(std::size_t a, std::size_t b) {
    const std::vector<std::size_t> rest = without(a, b);
    held_.put_all_back(rest);
    double cost = held_.cost(rails_);
    for (const std::size_t e : rest) cost += held_.event(e).price;
    held_.lift_all(rest);
    return cost - whole_;
  }

  void drop(std::size_t a, std::size_t b) { events_ = without(a, b); }

 private:
  [[nodiscard]] std::vector<std::size_t> without(std::size_t a, std::size_t b) const {
    std::vector<std::size_t> rest;
    for (const std::size_t e : events_) {
      if (e != a && e != b) rest.push_back(e);
    }
    return rest;
  }

  Hypothesis& held_;
  std::vector<std::uint32_t> rails_;
  std::vector<std::size_t> events_;
  double whole_ = 0;
};

void simplify_at(Hypothesis& held, std::size_t i) {
  Knot knot(held, i);
  double least = -kGain;
  std::size_t with = i;
  bool any = false;
  for (const std::size_t other : knot.events()) {
    const double dearer = knot.dearer_without(i, other);
    if (dearer >= least) continue;
    least = dearer;
    with = other;
    any = true;
  }
  if (any) knot.drop(i, with);
}

}  // namespace

void simplify(Hypothesis& held) {
  for (std::size_t i = 0; i < held.size(); ++i) {
    if (held.held(i) && !held.alone(i)) simplify_at(held, i);
  }
}

double worth(Hypothesis& held, std::size_t i) {
  Knot knot(held, i);
  return knot.events().empty() ? held.event(i).net : knot.dearer_without(i, i);
}

}  // namespace walkdown::match
