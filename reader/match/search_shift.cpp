// SPDX-License-Identifier: Apache-2.0
// The shifts of one rail.
#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <tuple>
#include <utility>

#include "reader/match/search_rail.h"

namespace walkdown::match {
namespace {

constexpr double kStrayToo =
    8;  // nats: a shift leaves its first pins bare; one stray may be on them
constexpr double kUnknown = 1e300;
constexpr double kOneOfThree = 1.0986122886681098;  // ln 3
constexpr double kLeastBody = 0.5;  // nats that a ring saves beside its head: the longer part of it
                                    // lies there, or it is a shorter one the other way round
constexpr double kPoorCopy = 15;    // nats below a better one: far beyond the room that rivals have
constexpr int kMostBlock = 160;     // pins of a wrapped block at most

// Sum of the first n of values that fall.
double largest(const std::vector<double>& values, std::size_t n) {
  double sum = 0;
  for (std::size_t i = 0; i < std::min(n, values.size()); ++i) sum += values[i];
  return sum;
}

}  // namespace

RailSearch::Bound RailSearch::at_most() const {
  double least = 0;
  double best = 0;
  for (const double sum : room_.sum) {
    least = std::min(least, sum);
    best = std::max(best, sum - least);
  }
  const auto ends = static_cast<std::size_t>(size_);
  return {best + largest(room_.bares, ends),
          best > kLeastBody ? best + largest(room_.heads, ends) : 0};
}

// All shifts by so many, first with bounds in place of gains: these cost next to nothing, and
// where none of them leaves hope, no reading is weighed.
void RailSearch::shifts(int by) {
  by_ = by;
  dir_ = by > 0 ? 1 : -1;
  size_ = std::abs(by);
  const double price = search_.prices_.slide(rail_.length, by);
  const double wrap_price = search_.prices_.wrap(rail_.length, by);
  if (excess_ - std::min(price, wrap_price) < search_.keep_) return;
  bounding_ = true;
  slide_hope_ = wrap_hope_ = false;
  diagonal();
  const Bound bound = at_most();
  const bool may_slide = bound.slide - price >= search_.keep_;
  const bool may_wrap = bound.wrap - wrap_price >= search_.keep_;
  if (may_slide || may_wrap) tops();
  if (may_slide) slides(price);
  if (may_wrap) wraps(wrap_price);
  bounding_ = false;
  if (!slide_hope_ && !wrap_hope_) return;
  diagonal();
  tops();
  if (slide_hope_) slides(price);
  if (wrap_hope_) wraps(wrap_price);
}

// Nats saved when slot t is left bare; worked out once.
double RailSearch::bare(int t) {
  if (bounding_) return bounds_.bare(t);
  if (room_.bare_gain.empty()) room_.bare_gain.assign(static_cast<std::size_t>(n_), kUnknown);
  double& known = room_.bare_gain[static_cast<std::size_t>(t)];
  if (known == kUnknown) known = search_.gain(slot(t), kNothing);
  return known;
}

// Sums of gains of positions under the load `size_` before them; [u + 1] is the sum up to u.
void RailSearch::diagonal() {
  room_.sum.resize(static_cast<std::size_t>(n_) + 1);
  std::fill_n(room_.sum.begin(), size_ + 1, 0.0);
  double sum = 0;
  for (int u = size_; u < n_; ++u) {
    sum += gain(flip(u), flip(u - size_));
    room_.sum[static_cast<std::size_t>(u) + 1] = sum;
  }
}

// Of the sums from each position on.
void RailSearch::tops() {
  room_.top = room_.sum;
  for (std::size_t u = room_.top.size() - 1; u > 0; --u)
    room_.top[u - 1] = std::max(room_.top[u - 1], room_.top[u]);
}

// Positions [from, to) left bare; not worked out where it is beyond hope.
double RailSearch::bared(int from, int to) {
  const double most = over(room_.bare, from, to);
  if (most < -kStrayToo || bounding_) return most;
  double sum = 0;
  for (int u = from; u < to; ++u) sum += bare(flip(u));
  return sum;
}

// Three readings of "until free pins have taken them in"; for a shift by one they are the same.
void RailSearch::slides(double price) {
  const double shared = price + (size_ > 1 ? kOneOfThree : 0);
  room_.found.clear();
  for (int lo = 0; lo < n_ && !(bounding_ && slide_hope_); ++lo) slides_from(lo, shared);
  add_found(shared);
}

void RailSearch::slides_from(int lo, double price) {
  if (!loaded(lo) || wrong(lo, n_) - price < search_.keep_) return;
  const int after = std::min(n_, lo + size_);
  const double start = bared(lo, after);
  if (start < -kStrayToo || start + excess_ - price < search_.keep_) return;
  if (start + at_best(after, after) - price >= search_.keep_) {
    const int run = end_of_run(lo);
    slide(lo, run, start + along(after, run) - price);
    const int count = size_ == 1 ? run : end_by_count(lo);
    if (count != run) slide(lo, count, start + along(after, count) - price);
  }
  if (size_ > 1) sequence(lo, price);
}

// The first place where `size` free pins lie side by side, or the rail's end.
int RailSearch::end_of_run(int lo) const {
  int free = 0;
  for (int u = lo + 1; u < n_; ++u) {
    free = loaded(u) ? 0 : free + 1;
    if (free == size_) return u + 1;
  }
  return n_;
}

// The place by which `size` free pins have gone by.
int RailSearch::end_by_count(int lo) const {
  int free = 0;
  for (int u = lo + 1; u < n_; ++u) {
    free += loaded(u) ? 0 : 1;
    if (free == size_) return u + 1;
  }
  return n_;
}

void RailSearch::slide(int lo, int end, double net) {
  if (net < search_.keep_) return;
  slide_hope_ = true;
  if (!bounding_) room_.found.push_back({lo, end, net, RailRoom::Form::slide});
}

// Each load in turn goes to the next pin: a free pin of the plan is skipped, and the rest is one
// pin less behind. Returns the position behind the last that takes part.
int RailSearch::lay_sequence(int lo) {
  auto& moves = room_.moves;
  moves.clear();
  int behind = size_;
  int u = lo;
  for (; u < n_ && behind > 0; ++u) {
    if (!loaded(u))
      --behind;
    else if (u + behind < n_)
      moves.emplace_back(u + behind, u);
  }
  room_.filled.assign(static_cast<std::size_t>(n_), 0);
  for (const auto& [to, from] : moves) room_.filled[static_cast<std::size_t>(to)] = 1;
  return u;
}

void RailSearch::sequence(int lo, double price) {
  const int end = lay_sequence(lo);
  double net = -price;
  for (const auto& [to, from] : room_.moves) {
    net += gain(flip(to), flip(from));
    if (net + excess_ < search_.keep_) return;
  }
  for (int v = lo; v < end; ++v) {
    if (room_.filled[static_cast<std::size_t>(v)] == 0) net += bare(flip(v));
  }
  if (net < search_.keep_) return;
  slide_hope_ = true;
  if (!bounding_) room_.found.push_back({lo, end, net, RailRoom::Form::sequence});
}

void RailSearch::wraps(double price) {
  room_.found.clear();
  for (int lo = 0; lo + size_ + 1 < n_ && !(bounding_ && wrap_hope_); ++lo) {
    const double least = std::max(kLeastBody, search_.keep_ + price - wrong(lo, lo + size_));
    if (at_best(lo + size_, lo + size_ + 1) < least) continue;
    const int last = std::min(n_, lo + kMostBlock);
    for (int end = lo + size_ + 2; end <= last; ++end) {
      if (at_best(lo + size_, end) < least) break;
      const double body = along(lo + size_, end);
      if (body >= least) wrap(lo, end, body - price);
    }
  }
  add_found(price);
}

void RailSearch::wrap(int lo, int end, double net) {
  const int length = end - lo;
  double hope = net;
  for (int u = lo; u < lo + size_ && !bounding_; ++u) {
    hope += bounds_.most(flip(u), flip(u + length - size_));
  }
  if (hope < search_.keep_) return;
  for (int u = lo; u < lo + size_; ++u) net += gain(flip(u), flip(u + length - size_));
  if (net < search_.keep_) return;
  wrap_hope_ = true;
  if (!bounding_) room_.found.push_back({lo, end, net, RailRoom::Form::wrap});
}

// A rail that has little in common with its plan holds thousands of shifts that would pay, nearly
// all of them poor copies of a few: those that lie over a much better one are no rivals of it.
void RailSearch::add_found(double price) {
  auto& found = room_.found;
  std::sort(found.begin(), found.end(), [](const RailRoom::Shift& a, const RailRoom::Shift& b) {
    return a.net != b.net ? a.net > b.net : std::tie(a.lo, a.end) < std::tie(b.lo, b.end);
  });
  // Those up to here lie beside each other, and each is the best where it is.
  std::size_t apart = 0;
  for (std::size_t i = 0; i < found.size(); ++i) {
    const RailRoom::Shift shift = found[i];
    const auto last = found.begin() + static_cast<std::ptrdiff_t>(apart);
    const auto over = std::find_if(found.begin(), last, [&](const RailRoom::Shift& other) {
      return shift.lo < other.end && other.lo < shift.end;
    });
    if (over != last && over->net - shift.net > kPoorCopy) continue;
    add_shift(shift, price);
    if (over == last) found[apart++] = shift;
  }
}

void RailSearch::add_shift(const RailRoom::Shift& shift, double price) {
  const int length = shift.end - shift.lo;
  Event event;
  event.kind = Kind::shifted;
  event.by = by_;
  event.price = price;
  event.net = shift.net;
  event.effects.reserve(static_cast<std::size_t>(length));
  event.members.reserve(static_cast<std::size_t>(length));
  if (shift.form == RailRoom::Form::sequence) {
    add_sequence(shift.lo, shift.end, event);
  } else {
    const bool ring = shift.form == RailRoom::Form::wrap;
    for (int u = shift.lo; u < shift.end; ++u) {
      const bool head = u < shift.lo + size_;
      const int source = !head ? flip(u - size_) : ring ? flip(u + length - size_) : -1;
      event.effects.push_back(effect(flip(u), source));
    }
  }
  for (int u = shift.lo; u < shift.end; ++u) {
    if (field_.slots[slot(flip(u))].spec != kNothing) event.members.push_back(slot(flip(u)));
  }
  add(std::move(event));
}

void RailSearch::add_sequence(int lo, int end, Event& event) {
  lay_sequence(lo);
  for (const auto& [to, from] : room_.moves) {
    event.effects.push_back(effect(flip(to), flip(from)));
  }
  for (int v = lo; v < end; ++v) {
    if (room_.filled[static_cast<std::size_t>(v)] != 0) continue;
    event.effects.push_back({slot(flip(v)), kNowhere});
  }
}

}  // namespace walkdown::match
