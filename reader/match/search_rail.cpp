// SPDX-License-Identifier: Apache-2.0
// Within one rail: turned round, or shifted by k.
//
// A shift is one of two things. *Slide*: from some pin on, every load sits k pins too far, until
// free pins have taken them in or the rail ends and the last ones hang loose. *Wrap*: a block of
// loads is rotated by k within itself. Gains along a diagonal (slot t under the load of t - k) are
// summed once; every slide and wrap is then a difference of sums.
#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <functional>

#include "reader/match/search.h"

namespace walkdown::match {
namespace {

constexpr int kMostShift = 12;
constexpr double kStrayToo =
    8;  // nats: a shift leaves its first pins bare; one stray may be on them
constexpr double kUnknown = 1e300;
constexpr double kOneOfThree = 1.0986122886681098;  // ln 3
constexpr double kLeastBody = 0.5;  // nats that a ring saves beside its head: the longer part of it
                                    // lies there, or it is a shorter one the other way round
constexpr double kMostMild = 1.5;   // nats
constexpr int kMostBlock = 160;     // pins of a wrapped block at most
constexpr std::size_t kFewBad = 6;  // bad pins of a rail that are held against each of its loads

}  // namespace

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

  void run() {
    const double least = std::min({search_.prices_.reversal(), shift_price(1), shift_price(-1)});
    if (!hope(least)) return;
    prepare();
    reversal();
    for (int size = 1; size <= std::min(kMostShift, n_ - 1); ++size) {
      if (size > 2 && room_.bad.size() < 3) break;
      for (const int by : {size, -size}) shifts(by);
    }
  }

  void turn() {
    if (!hope(search_.prices_.reversal())) return;
    prepare();
    reversal();
  }

 private:
  // The least that a shift by so many costs.
  [[nodiscard]] double shift_price(int by) const {
    return std::min(search_.prices_.slide(rail_.length, by),
                    search_.prices_.wrap(rail_.length, by));
  }

  // Whether any mistake at this price could pay. Most rails end here.
  bool hope(double price) {
    std::size_t bad = 0;
    for (int t = 0; t < n_; ++t) {
      const double excess = state_.excess[slot(t)];
      (excess > kBad ? excess_ : mild_) += excess;
      bad += excess > kBad ? 1 : 0;
    }
    // Middling readings that another load would suit by chance add up to little.
    excess_ += std::min(mild_, kMostMild);
    if (bad == 0 || excess_ - price < search_.keep_) return false;
    bounds_.lay_out(field_, search_.mixture_, state_, rail_.first, n_);
    few_ = bad <= kFewBad;
    room_.bad.clear();
    room_.heads.clear();
    for (int t = 0; t < n_; ++t) {
      if (bounds_.excess(t) <= kBad) continue;
      room_.bad.push_back(t);
      room_.heads.push_back(few_ ? bounds_.recovered(t) : bounds_.excess(t));
      excess_ += room_.heads.back() - bounds_.excess(t);
    }
    return excess_ - price >= search_.keep_;
  }

  void prepare() {
    room_.wrong.assign(static_cast<std::size_t>(n_) + 1, 0.0);
    room_.bare.assign(static_cast<std::size_t>(n_) + 1, 0.0);
    for (int t = 0; t < n_; ++t) {
      const auto i = static_cast<std::size_t>(t);
      room_.wrong[i + 1] = room_.wrong[i] + bounds_.excess(t);
      room_.bare[i + 1] = room_.bare[i] + bounds_.bare(t);
    }
    room_.bares.clear();
    for (const int t : room_.bad) {
      if (field_.slots[slot(t)].seen.open()) room_.bares.push_back(bounds_.excess(t));
    }
    std::sort(room_.heads.begin(), room_.heads.end(), std::greater<>());
    std::sort(room_.bares.begin(), room_.bares.end(), std::greater<>());
    room_.bare_gain.clear();
  }

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

  void add(Event event) {
    finish(event, field_, state_);
    // Where nothing is planned, another rail's loads may have been plugged in askew.
    if (event.members.empty()) {
      for (const Effect& e : event.effects) event.members.push_back(e.slot);
    }
    if (!event.effects.empty()) out_.push_back(std::move(event));
  }

  void reversal() {
    const double price = search_.prices_.reversal();
    if (excess_ - price < search_.keep_ || n_ < 3) return;
    double room = room_.wrong.back() - price;
    double bound = room;
    for (int t = 0; t < n_; ++t) {
      bound -= state_.excess[slot(t)] - bounds_.most(t, n_ - 1 - t);
      if (bound < search_.keep_) return;
    }
    for (int t = 0; t < n_; ++t) {
      room -= state_.excess[slot(t)] - gain(t, n_ - 1 - t);
      if (room < search_.keep_) return;
    }
    Event event;
    event.kind = Kind::reversed;
    event.price = price;
    event.net = room;
    for (int t = 0; t < n_; ++t) {
      event.effects.push_back(effect(t, n_ - 1 - t));
      if (field_.slots[slot(t)].spec != kNothing) event.members.push_back(slot(t));
    }
    add(std::move(event));
  }

  // What a shift could give back at best: the best run along the diagonal, and at its end as many
  // slots as the shift is long. Those end bare in a slide, and take in the loads of the block's
  // other end in a wrap.
  struct Bound {
    double slide = 0;
    double wrap = 0;
  };

  [[nodiscard]] Bound at_most() const {
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

  // Sum of the first n of values that fall.
  static double largest(const std::vector<double>& values, std::size_t n) {
    double sum = 0;
    for (std::size_t i = 0; i < std::min(n, values.size()); ++i) sum += values[i];
    return sum;
  }

  // All shifts by so many, first with bounds in place of gains: these cost next to nothing, and
  // where none of them leaves hope, no reading is weighed.
  void shifts(int by) {
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
  [[nodiscard]] double bare(int t) {
    if (bounding_) return bounds_.bare(t);
    if (room_.bare_gain.empty()) room_.bare_gain.assign(static_cast<std::size_t>(n_), kUnknown);
    double& known = room_.bare_gain[static_cast<std::size_t>(t)];
    if (known == kUnknown) known = search_.gain(slot(t), kNothing);
    return known;
  }

  // Downward shifts are upward ones on the rail seen from its other end: position u is slot
  // flip(u).
  [[nodiscard]] int flip(int u) const { return dir_ > 0 ? u : n_ - 1 - u; }

  // Sums of gains of positions under the load `size_` before them; [u + 1] is the sum up to u.
  void diagonal() {
    room_.sum.resize(static_cast<std::size_t>(n_) + 1);
    std::fill_n(room_.sum.begin(), size_ + 1, 0.0);
    double sum = 0;
    for (int u = size_; u < n_; ++u) {
      sum += gain(flip(u), flip(u - size_));
      room_.sum[static_cast<std::size_t>(u) + 1] = sum;
    }
  }

  // Of the sums from each position on.
  void tops() {
    room_.top = room_.sum;
    for (std::size_t u = room_.top.size() - 1; u > 0; --u)
      room_.top[u - 1] = std::max(room_.top[u - 1], room_.top[u]);
  }

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

  // Positions [from, to) left bare; not worked out where it is beyond hope.
  [[nodiscard]] double bared(int from, int to) {
    const double most = over(room_.bare, from, to);
    if (most < -kStrayToo || bounding_) return most;
    double sum = 0;
    for (int u = from; u < to; ++u) sum += bare(flip(u));
    return sum;
  }

  [[nodiscard]] bool loaded(int u) const { return bounds_.loaded(flip(u)); }

  // Three readings of "until free pins have taken them in"; for a shift by one they are the same.
  void slides(double price) {
    for (int lo = 0; lo < n_ && !(bounding_ && slide_hope_); ++lo) slides_from(lo, price);
  }

  void slides_from(int lo, double price) {
    if (!loaded(lo)) return;
    const double shared = price + (size_ > 1 ? kOneOfThree : 0);
    if (wrong(lo, n_) - shared < search_.keep_) return;
    const int after = std::min(n_, lo + size_);
    const double start = bared(lo, after);
    if (start < -kStrayToo || start + excess_ - shared < search_.keep_) return;
    if (start + at_best(after, after) - shared >= search_.keep_) {
      const int run = end_of_run(lo);
      slide(lo, run, start + along(after, run) - shared, shared);
      const int count = size_ == 1 ? run : end_by_count(lo);
      if (count != run) slide(lo, count, start + along(after, count) - shared, shared);
    }
    if (size_ > 1) sequence(lo, shared);
  }

  // The first place where `size` free pins lie side by side, or the rail's end.
  [[nodiscard]] int end_of_run(int lo) const {
    int free = 0;
    for (int u = lo + 1; u < n_; ++u) {
      free = loaded(u) ? 0 : free + 1;
      if (free == size_) return u + 1;
    }
    return n_;
  }

  // The place by which `size` free pins have gone by.
  [[nodiscard]] int end_by_count(int lo) const {
    int free = 0;
    for (int u = lo + 1; u < n_; ++u) {
      free += loaded(u) ? 0 : 1;
      if (free == size_) return u + 1;
    }
    return n_;
  }

  void slide(int lo, int end, double net, double price) {
    if (net < search_.keep_) return;
    slide_hope_ = true;
    if (bounding_) return;
    Event event = shift_event(net, price);
    event.effects.reserve(static_cast<std::size_t>(end - lo));
    event.members.reserve(static_cast<std::size_t>(end - lo));
    for (int u = lo; u < end; ++u) {
      event.effects.push_back(effect(flip(u), u - size_ < lo ? -1 : flip(u - size_)));
      member(event, u);
    }
    add(std::move(event));
  }

  // Each load in turn goes to the next pin: a free pin of the plan is skipped, and the rest is one
  // pin less behind.
  void sequence(int lo, double price) {
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
    double net = -price;
    room_.filled.assign(static_cast<std::size_t>(n_), 0);
    for (const auto& [to, from] : moves) {
      net += gain(flip(to), flip(from));
      room_.filled[static_cast<std::size_t>(to)] = 1;
      if (net + excess_ < search_.keep_) return;
    }
    for (int v = lo; v < u; ++v) {
      if (room_.filled[static_cast<std::size_t>(v)] == 0) net += bare(flip(v));
    }
    if (net < search_.keep_) return;
    slide_hope_ = true;
    if (bounding_) return;
    Event event = shift_event(net, price);
    for (const auto& [to, from] : moves) event.effects.push_back(effect(flip(to), flip(from)));
    for (int v = lo; v < u; ++v) {
      if (room_.filled[static_cast<std::size_t>(v)] == 0)
        event.effects.push_back({slot(flip(v)), kNowhere});
      member(event, v);
    }
    add(std::move(event));
  }

  [[nodiscard]] Event shift_event(double net, double price) const {
    Event event;
    event.kind = Kind::shifted;
    event.by = by_;
    event.price = price;
    event.net = net;
    return event;
  }

  void member(Event& event, int u) const {
    if (field_.slots[slot(flip(u))].spec != kNothing) event.members.push_back(slot(flip(u)));
  }

  void wraps(double price) {
    for (int lo = 0; lo + size_ + 1 < n_ && !(bounding_ && wrap_hope_); ++lo) {
      const double least = std::max(kLeastBody, search_.keep_ + price - wrong(lo, lo + size_));
      if (at_best(lo + size_, lo + size_ + 1) < least) continue;
      const int last = std::min(n_, lo + kMostBlock);
      for (int end = lo + size_ + 2; end <= last; ++end) {
        if (at_best(lo + size_, end) < least) break;
        const double body = along(lo + size_, end);
        if (body >= least) wrap(lo, end, body - price, price);
      }
    }
  }

  void wrap(int lo, int end, double net, double price) {
    const int length = end - lo;
    double hope = net;
    for (int u = lo; u < lo + size_ && !bounding_; ++u) {
      hope += bounds_.most(flip(u), flip(u + length - size_));
    }
    if (hope < search_.keep_) return;
    for (int u = lo; u < lo + size_; ++u) net += gain(flip(u), flip(u + length - size_));
    if (net < search_.keep_) return;
    wrap_hope_ = true;
    if (bounding_) return;
    Event event = shift_event(net, price);
    event.effects.reserve(static_cast<std::size_t>(length));
    event.members.reserve(static_cast<std::size_t>(length));
    for (int u = lo; u < end; ++u) {
      const int source = u < lo + size_ ? u + length - size_ : u - size_;
      event.effects.push_back(effect(flip(u), flip(source)));
      member(event, u);
    }
    add(std::move(event));
  }

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
  bool few_ = false;       // bad slots
  bool bounding_ = false;  // gains are bounds, and no event is made
  bool slide_hope_ = false, wrap_hope_ = false;
  int by_ = 1, dir_ = 1, size_ = 1;
};

void Search::rail(std::uint32_t rail, Events& out) const { RailSearch(*this, rail, out).run(); }

void Search::reversed(std::uint32_t rail, Events& out) const {
  RailSearch(*this, rail, out).turn();
}

}  // namespace walkdown::match
