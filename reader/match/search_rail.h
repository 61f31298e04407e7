// SPDX-License-Identifier: Apache-2.0
// Within one rail: turned round, or shifted by k.
//
// A shift is one of two things. *Slide*: from some pin on, every load sits k pins too far, until
// free pins have taken them in or the rail ends and the last ones hang loose. *Wrap*: a block of
// loads is rotated by k within itself. Gains along a diagonal (slot t under the load of t - k) are
// summed once; every slide and wrap is then a difference of sums.
#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

#include "reader/match/search.h"

namespace walkdown::match {

class RailSearch {
 public:
  RailSearch(const Search& search, std::uint32_t rail, Events& out)
      : search_(search),
        state_(search.state_),
        field_(search.field_),
        rail_(field_.rails[rail]),
        n_(static_cast<int>(rail_.length)),
        out_(out),
        room_(search.room_),
        bounds_(room_.bounds) {}

  // Turned round or shifted; turned round only. Adds to the events.
  void run();
  void turn();

 private:
  [[nodiscard]] double shift_price(int by) const;
  bool hope(double price);
  void prepare();

  [[nodiscard]] std::uint32_t slot(int t) const {
    return rail_.first + static_cast<std::uint32_t>(t);
  }
  [[nodiscard]] std::uint32_t spec(int t) const {
    return t < 0 || t >= n_ ? kNothing : state_.on[slot(t)];
  }
  // Nats saved when slot t gets the load of slot s; while bounding, at most.
  [[nodiscard]] double gain(int t, int s) const {
    return bounding_ ? bounds_.most(t, s) : search_.gain(slot(t), spec(s));
  }
  [[nodiscard]] Effect effect(int t, int s) const {
    return {slot(t), s < 0 || s >= n_ ? kNowhere : slot(s)};
  }
  void add(Event event);
  void reversal();

  // What a shift could give back at best: the best run along the diagonal, and at its end as many
  // slots as the shift is long. Those end bare in a slide, and take in the loads of the block's
  // other end in a wrap.
  struct Bound {
    double slide = 0;
    double wrap = 0;
  };
  [[nodiscard]] Bound at_most() const;
  void shifts(int by);
  void diagonal();
  void tops();
  [[nodiscard]] double bare(int t);
  [[nodiscard]] double bared(int from, int to);

  // Downward shifts are upward ones on the rail seen from its other end: position u is slot
  // flip(u).
  [[nodiscard]] int flip(int u) const { return dir_ > 0 ? u : n_ - 1 - u; }
  [[nodiscard]] bool loaded(int u) const { return bounds_.loaded(flip(u)); }

  // The best that positions from `from` on give, whatever the end, that end not before `end`.
  [[nodiscard]] double at_best(int from, int end) const {
    return room_.top[static_cast<std::size_t>(end)] - room_.sum[static_cast<std::size_t>(from)];
  }
  [[nodiscard]] double along(int from, int to) const {  // positions [from, to)
    if (to <= from) return 0;
    return room_.sum[static_cast<std::size_t>(to)] - room_.sum[static_cast<std::size_t>(from)];
  }
  // Of sums up to each slot, what positions [from, to) have.
  [[nodiscard]] double over(const std::vector<double>& sums, int from, int to) const {
    const int first = dir_ > 0 ? from : n_ - to;
    const int past = dir_ > 0 ? to : n_ - from;
    return sums[static_cast<std::size_t>(past)] - sums[static_cast<std::size_t>(first)];
  }
  [[nodiscard]] double wrong(int from, int to) const { return over(room_.wrong, from, to); }

  void slides(double price);
  void slides_from(int lo, double price);
  [[nodiscard]] int end_of_run(int lo) const;
  [[nodiscard]] int end_by_count(int lo) const;
  void slide(int lo, int end, double net);
  int lay_sequence(int lo);
  void sequence(int lo, double price);
  void wraps(double price);
  void wrap(int lo, int end, double net);
  void add_found(double price);
  void add_shift(const RailRoom::Shift& shift, double price);
  void add_sequence(int lo, int end, Event& event);

  const Search& search_;
  const State& state_;
  const Field& field_;
  const Rail& rail_;
  int n_;
  Events& out_;
  RailRoom& room_;
  RailBounds& bounds_;
  double excess_ = 0;
  double mild_ = 0;        // what the other slots could give back
  bool bounding_ = false;  // gains are bounds, and no event is made
  bool slide_hope_ = false, wrap_hope_ = false;
  int by_ = 1, dir_ = 1, size_ = 1;
};

}  // namespace walkdown::match
