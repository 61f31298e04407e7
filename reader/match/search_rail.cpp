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

}  // namespace

class RailSearch {
 public:
  RailSearch(const Search& search, std::uint32_t rail, Events& out)
      : search_(search),
        state_(search.state_),
        field_(search.field_),
        rail_(field_.rails[rail]),
        n_(static_cast<int>(rail_.length)),
        out_(out) {}

  void run() {
    prepare();
    if (bad_.empty()) return;
    reversal();
    for (int size = 1; size <= std::min(kMostShift, n_ - 1); ++size) {
      if (size > 2 && bad_.size() < 3) break;
      for (const int by : {size, -size}) shifts(by);
    }
  }

  void turn() {
    prepare();
    if (!bad_.empty()) reversal();
  }

 private:
  void prepare() {
    for (int t = 0; t < n_; ++t) {
      excess_ += state_.excess[slot(t)];
      if (state_.excess[slot(t)] > kBad)
        bad_.push_back(t);
      else
        mild_ += state_.excess[slot(t)];
    }
    for (const int t : bad_) {
      heads_.push_back(state_.excess[slot(t)]);
      if (field_.slots[slot(t)].seen.open()) bares_.push_back(heads_.back());
    }
    std::sort(heads_.begin(), heads_.end(), std::greater<>());
    std::sort(bares_.begin(), bares_.end(), std::greater<>());
    if (bad_.empty()) return;
    wrong_.assign(static_cast<std::size_t>(n_) + 1, 0.0);
    bare_.assign(static_cast<std::size_t>(n_) + 1, 0.0);
    for (std::size_t t = 0; t < wrong_.size() - 1; ++t) {
      const std::uint32_t here = slot(static_cast<int>(t));
      wrong_[t + 1] = wrong_[t] + state_.excess[here];
      bare_[t + 1] = bare_[t] + search_.most(here, kNothing);
    }
    // Middling readings that another load would suit by chance add up to little.
    excess_ += std::min(mild_, kMostMild) - mild_;
  }

  [[nodiscard]] std::uint32_t slot(int t) const {
    return rail_.first + static_cast<std::uint32_t>(t);
  }

  [[nodiscard]] std::uint32_t spec(int t) const {
    return t < 0 || t >= n_ ? kNothing : state_.on[slot(t)];
  }

  // Nats saved when slot t gets the load of slot s; while bounding, at most.
  [[nodiscard]] double gain(int t, int s) const {
    return bounding_ ? search_.most(slot(t), spec(s)) : search_.gain(slot(t), spec(s));
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
    double room = wrong_.back() - price;
    double bound = room;
    for (int t = 0; t < n_; ++t) {
      bound -= state_.excess[slot(t)] - search_.most(slot(t), spec(n_ - 1 - t));
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

  [[nodiscard]] Bound at_most() {
    double least = 0;
    double best = 0;
    for (const double sum : sum_) {
      least = std::min(least, sum);
      best = std::max(best, sum - least);
    }
    const auto ends = static_cast<std::size_t>(size_);
    return {best + largest(bares_, ends), best > kLeastBody ? best + largest(heads_, ends) : 0};
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
    if (bounding_) return search_.most(slot(t), kNothing);
    if (bare_gain_.empty()) bare_gain_.assign(static_cast<std::size_t>(n_), kUnknown);
    double& known = bare_gain_[static_cast<std::size_t>(t)];
    if (known == kUnknown) known = search_.gain(slot(t), kNothing);
    return known;
  }

  // Downward shifts are upward ones on the rail seen from its other end: position u is slot
  // flip(u).
  [[nodiscard]] int flip(int u) const { return dir_ > 0 ? u : n_ - 1 - u; }

  // Sums of gains of positions under the load `size_` before them; [u + 1] is the sum up to u.
  void diagonal() {
    sum_.resize(static_cast<std::size_t>(n_) + 1);
    std::fill_n(sum_.begin(), size_ + 1, 0.0);
    double sum = 0;
    for (int u = size_; u < n_; ++u) {
      sum += gain(flip(u), flip(u - size_));
      sum_[static_cast<std::size_t>(u) + 1] = sum;
    }
  }

  // Of the sums from each position on.
  void tops() {
    top_ = sum_;
    for (std::size_t u = top_.size() - 1; u > 0; --u) top_[u - 1] = std::max(top_[u - 1], top_[u]);
  }

  // The best that positions from `from` on give, whatever the end, that end not before `end`.
  [[nodiscard]] double at_best(int from, int end) const {
    return top_[static_cast<std::size_t>(end)] - sum_[static_cast<std::size_t>(from)];
  }

  [[nodiscard]] double along(int from, int to) const {  // positions [from, to)
    if (to <= from) return 0;
    return sum_[static_cast<std::size_t>(to)] - sum_[static_cast<std::size_t>(from)];
  }
  // Of sums up to each slot, what positions [from, to) have.
  [[nodiscard]] double over(const std::vector<double>& sums, int from, int to) const {
    const int first = dir_ > 0 ? from : n_ - to;
    const int past = dir_ > 0 ? to : n_ - from;
    return sums[static_cast<std::size_t>(past)] - sums[static_cast<std::size_t>(first)];
  }
  [[nodiscard]] double wrong(int from, int to) const { return over(wrong_, from, to); }

  // Positions [from, to) left bare; not worked out where it is beyond hope.
  [[nodiscard]] double bared(int from, int to) {
    const double most = over(bare_, from, to);
    if (most < -kStrayToo || bounding_) return most;
    double sum = 0;
    for (int u = from; u < to; ++u) sum += bare(flip(u));
    return sum;
  }

  [[nodiscard]] bool loaded(int u) const { return spec(flip(u)) != kNothing; }

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
    for (int u = lo; u < end; ++u) {
      event.effects.push_back(effect(flip(u), u - size_ < lo ? -1 : flip(u - size_)));
      member(event, u);
    }
    add(std::move(event));
  }

  // Each load in turn goes to the next pin: a free pin of the plan is skipped, and the rest is one
  // pin less behind.
  void sequence(int lo, double price) {
    auto& moves = moves_;
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
    filled_.assign(static_cast<std::size_t>(n_), 0);
    for (const auto& [to, from] : moves) {
      net += gain(flip(to), flip(from));
      filled_[static_cast<std::size_t>(to)] = 1;
      if (net + excess_ < search_.keep_) return;
    }
    for (int v = lo; v < u; ++v) {
      if (filled_[static_cast<std::size_t>(v)] == 0) net += bare(flip(v));
    }
    if (net < search_.keep_) return;
    slide_hope_ = true;
    if (bounding_) return;
    Event event = shift_event(net, price);
    for (const auto& [to, from] : moves) event.effects.push_back(effect(flip(to), flip(from)));
    for (int v = lo; v < u; ++v) {
      if (filled_[static_cast<std::size_t>(v)] == 0)
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
      hope += search_.most(slot(flip(u)), spec(flip(u + length - size_)));
    }
    if (hope < search_.keep_) return;
    for (int u = lo; u < lo + size_; ++u) net += gain(flip(u), flip(u + length - size_));
    if (net < search_.keep_) return;
    wrap_hope_ = true;
    if (bounding_) return;
    Event event = shift_event(net, price);
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
  double excess_ = 0;
  std::vector<double> wrong_, bare_;  // sums up to each slot: of excess; of what it gives bare
  double mild_ = 0;                   // what the other slots could give back
  std::vector<int> bad_;
  std::vector<double> bares_,
      heads_;              // excess of the bad slots, largest first; bare: the open ones
  bool bounding_ = false;  // gains are bounds, and no event is made
  bool slide_hope_ = false, wrap_hope_ = false;
  int by_ = 1, dir_ = 1, size_ = 1;
  std::vector<double> sum_, top_;           // along the diagonal; the largest from there on
  std::vector<double> bare_gain_;           // by slot
  std::vector<std::pair<int, int>> moves_;  // of a sequence: position, source position
  std::vector<char> filled_;
};

void Search::rail(std::uint32_t rail, Events& out) const { RailSearch(*this, rail, out).run(); }

void Search::reversed(std::uint32_t rail, Events& out) const {
  RailSearch(*this, rail, out).turn();
}

}  // namespace walkdown::match
