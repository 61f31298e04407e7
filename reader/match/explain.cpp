// SPDX-License-Identifier: Apache-2.0
#include "reader/match/explain.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

#include "reader/match/partners.h"

namespace walkdown::match {
namespace {

constexpr int kRounds = 8;
constexpr std::uint32_t kMostRails = 64;  // of a module whose rails are paired with each other
constexpr double kLarge = 12;             // nats: an exchange that is beyond doubt
constexpr double kMostly = 0.6;           // of the excess of its slots
constexpr double kTie = 1e-9;             // equal costs are normal where loads are equal
constexpr double kRivalRoom = 7;  // nats below the best that a rival may lie: a share of 1/1000
constexpr std::size_t kMostRivals = 64;

// Which of two equally good mistakes is named: modules, rails, reversal, swap, shift; then lowest
// pin.
int order(Kind kind) {
  switch (kind) {
    case Kind::modules_exchanged:
      return 0;
    case Kind::rails_exchanged:
      return 1;
    case Kind::reversed:
      return 2;
    case Kind::swapped:
      return 3;
    default:
      return 4;
  }
}

bool better(const Event& a, const Event& b) {
  if (std::abs(a.net - b.net) > kTie) return a.net > b.net;
  if (a.kind != b.kind) return order(a.kind) < order(b.kind);
  if (a.effects.size() != b.effects.size()) return a.effects.size() < b.effects.size();
  for (std::size_t i = 0; i < a.effects.size(); ++i) {
    const Effect& x = a.effects[i];
    const Effect& y = b.effects[i];
    if (x.slot != y.slot) return x.slot < y.slot;
    if (x.source != y.source) return x.source < y.source;
  }
  return a.by < b.by;
}

struct Before {
  std::uint32_t slot, spec, source;
};

struct Taken {
  Event event;
  std::vector<Before> before;
};

class Explainer {
 public:
  Explainer(const Field& field, const Mixture& mixture, const MoveRates& rates)
      : field_(field),
        mixture_(mixture),
        prices_(field, rates),
        state_(field, mixture),
        search_(field, mixture, state_, prices_),
        used_(field.slots.size(), 0),
        dirty_(field.rails.size(), true) {}

  Explanation make() {
    large();
    std::fill(dirty_.begin(), dirty_.end(), true);
    for (int round = 0; round < kRounds && grow(); ++round) {
    }
    refine();
    std::vector<Explained> mistakes;
    for (std::size_t i = 0; i < taken_.size(); ++i) mistakes.push_back(weigh(i));
    std::stable_sort(mistakes.begin(), mistakes.end(), [](const Explained& a, const Explained& b) {
      return a.event.effects.front().slot < b.event.effects.front().slot;
    });
    return {std::move(state_), std::move(mistakes)};
  }

 private:
  // Whole modules and rails first, where they explain most of what is wrong with them: it need not
  // be looked at pin by pin.
  void large() {
    search_.keep(kLarge);
    Events candidates = pairs(false);
    for (std::uint32_t r = 0; r < field_.rails.size(); ++r) search_.reversed(r, candidates);
    candidates.erase(std::remove_if(candidates.begin(), candidates.end(),
                                    [&](const Event& event) {
                                      double wrong = 0;
                                      for (const Effect& e : event.effects) {
                                        wrong += state_.excess[e.slot];
                                      }
                                      return event.net < kMostly * wrong;
                                    }),
                     candidates.end());
    accept(std::move(candidates), kLarge);
  }

  // One round: all candidates of the dirty rails, the best of those that do not touch.
  bool grow() {
    search_.keep(0);
    Events candidates = pairs(true);
    for (std::uint32_t r = 0; r < field_.rails.size(); ++r) {
      if (!dirty_[r]) continue;
      search_.rail(r, candidates);
      const Rail& rail = field_.rails[r];
      for (std::uint32_t i = rail.first; i < rail.first + rail.size; ++i) {
        if (state_.excess[i] > kBad) search_.swaps(i, candidates);
      }
    }
    return accept(std::move(candidates), kTie);
  }

  bool accept(Events candidates, double least) {
    std::sort(candidates.begin(), candidates.end(), better);
    std::fill(dirty_.begin(), dirty_.end(), false);
    std::vector<bool> touched(field_.slots.size(), false);
    bool any = false;
    for (Event& event : candidates) {
      if (event.net <= least) break;
      const bool clash = std::any_of(event.effects.begin(), event.effects.end(),
                                     [&](const Effect& e) { return touched[e.slot]; });
      for (const Effect& e : event.effects) {
        touched[e.slot] = touched[e.slot] || !clash;
        dirty_[field_.rail_of[e.slot]] = true;
      }
      if (clash) continue;
      take(std::move(event));
      any = true;
    }
    return any;
  }

  // Exchanges of rails and modules, and, if asked, swaps between modules.
  Events pairs(bool far_swaps) {
    Events out;
    for (const Module& module : field_.modules) {
      for (std::uint32_t r = module.first; r < module.first + module.rails; ++r) {
        for (std::uint32_t q = r + 1; q < module.first + std::min(module.rails, kMostRails); ++q) {
          if (dirty_[r] || dirty_[q]) search_.rail_pair(r, q, out);
        }
      }
    }
    const Partners partners = find_partners(field_, mixture_, state_);
    for (const auto& [a, b] : partners.rails) {
      if (dirty_[a] || dirty_[b]) search_.rail_pair(a, b, out);
    }
    for (const auto& [a, b] : partners.modules) search_.module_pair(a, b, out);
    if (!far_swaps) return out;
    for (const auto& [a, b] : partners.slots) search_.swap(a, b, out);
    return out;
  }

  void take(Event event) {
    Taken taken;
    std::vector<std::pair<std::uint32_t, std::uint32_t>> next;
    for (const Effect& e : event.effects) {
      taken.before.push_back({e.slot, state_.on[e.slot], state_.from[e.slot]});
      const bool bare = e.source == kNowhere;
      next.emplace_back(bare ? kNothing : state_.on[e.source],
                        bare ? kNowhere : state_.from[e.source]);
      ++used_[e.slot];
    }
    for (std::size_t i = 0; i < next.size(); ++i) {
      state_.set(field_, mixture_, event.effects[i].slot, next[i].first, next[i].second);
    }
    taken.event = std::move(event);
    taken_.push_back(std::move(taken));
  }

  // Only a mistake whose slots no other has touched can be lifted out on its own.
  [[nodiscard]] bool alone(const Taken& taken) const {
    return std::all_of(taken.event.effects.begin(), taken.event.effects.end(),
                       [&](const Effect& e) { return used_[e.slot] == 1; });
  }

  void lift(std::size_t i) {
    for (const Before& b : taken_[i].before) {
      state_.set(field_, mixture_, b.slot, b.spec, b.source);
      --used_[b.slot];
    }
  }

  // Greedy takes the largest first; look once more at each with the others in place.
  void refine() {
    for (std::size_t i = 0; i < taken_.size();) {
      if (!alone(taken_[i])) {
        ++i;
        continue;
      }
      lift(i);
      Event best = taken_[i].event;
      best.net = search_.net(best);
      for (Event& rival : around(best, best.net)) {
        if (rival.net > best.net + kTie && free_of_others(rival)) best = std::move(rival);
      }
      taken_.erase(taken_.begin() + static_cast<std::ptrdiff_t>(i));
      if (best.net <= kTie) continue;
      take(std::move(best));
      std::rotate(taken_.begin() + static_cast<std::ptrdiff_t>(i), taken_.end() - 1, taken_.end());
      ++i;
    }
  }

  [[nodiscard]] bool free_of_others(const Event& event) const {
    return std::all_of(event.effects.begin(), event.effects.end(),
                       [&](const Effect& e) { return used_[e.slot] == 0; });
  }

  // All candidates that touch a slot of `event` and are not worse than `floor`, in the present
  // state, from which the event has been lifted.
  Events around(const Event& event, double floor) {
    Events found;
    search_.keep(floor);
    std::set<std::uint32_t> rails;
    std::set<std::uint32_t> modules;
    for (const Effect& e : event.effects) {
      rails.insert(field_.rail_of[e.slot]);
      modules.insert(field_.module_of[field_.rail_of[e.slot]]);
    }
    for (const std::uint32_t r : rails) {
      search_.rail(r, found);
      const Module& module = field_.modules[field_.module_of[r]];
      for (std::uint32_t q = module.first; q < module.first + module.rails; ++q) {
        if (q > r || (q < r && !rails.contains(q))) {
          search_.rail_pair(std::min(r, q), std::max(r, q), found);
        }
      }
    }
    across(rails, modules, found);
    if (event.effects.size() <= 6) {
      for (const Effect& e : event.effects) {
        if (state_.excess[e.slot] > kBad) search_.swaps(e.slot, found);
      }
    }
    found.erase(std::remove_if(found.begin(), found.end(),
                               [&](const Event& other) { return !meets(event, other); }),
                found.end());
    std::sort(found.begin(), found.end(), better);
    return found;
  }

  void across(const std::set<std::uint32_t>& rails, const std::set<std::uint32_t>& modules,
              Events& found) {
    if (modules.size() != 2) return;
    const std::uint32_t a = *modules.begin();
    const std::uint32_t b = *modules.rbegin();
    search_.module_pair(a, b, found);
    if (rails.size() == 2) search_.rail_pair(*rails.begin(), *rails.rbegin(), found);
  }

  [[nodiscard]] bool changes(const Effect& e) const {
    const std::uint32_t next = e.source == kNowhere ? kNothing : state_.on[e.source];
    return next != state_.on[e.slot];
  }

  // They explain the same readings: some slot is changed electrically by both.
  [[nodiscard]] bool meets(const Event& a, const Event& b) const {
    auto x = a.effects.begin();
    auto y = b.effects.begin();
    while (x != a.effects.end() && y != b.effects.end()) {
      if (x->slot < y->slot)
        ++x;
      else if (y->slot < x->slot)
        ++y;
      else if (changes(*x) && changes(*y))
        return true;
      else
        ++x, ++y;
    }
    return false;
  }

  // slot -> spec it would have, where that is another one: what the readings can see of an event.
  [[nodiscard]] std::vector<std::pair<std::uint32_t, std::uint32_t>> seen_of(const Event& a) const {
    std::vector<std::pair<std::uint32_t, std::uint32_t>> out;
    for (const Effect& e : a.effects) {
      if (changes(e))
        out.emplace_back(e.slot, e.source == kNowhere ? kNothing : state_.on[e.source]);
    }
    return out;
  }

  static bool same_event(const Event& a, const Event& b) {
    return a.kind == b.kind && a.effects == b.effects;
  }

  Explained weigh(std::size_t i) {
    Explained out;
    out.event = taken_[i].event;
    if (!alone(taken_[i])) {
      out.confidence = 1 / (1 + std::exp(-out.event.net));
      return out;
    }
    lift(i);
    out.event.net = search_.net(out.event);
    const auto seen = seen_of(out.event);
    double sum = 1 + std::exp(out.event.net);
    Events others = around(out.event, out.event.net - kRivalRoom);
    for (std::size_t k = 0; k < others.size() && k < kMostRivals; ++k) {
      Event& other = others[k];
      if (same_event(other, out.event) || duplicate(out, other)) continue;
      sum += std::exp(other.net);
      (seen_of(other) == seen ? out.same : out.rivals).push_back(std::move(other));
    }
    out.confidence = std::exp(out.event.net) / sum;
    for (const Event& rival : out.rivals) out.shares.push_back(std::exp(rival.net) / sum);
    const Event event = taken_[i].event;
    taken_.erase(taken_.begin() + static_cast<std::ptrdiff_t>(i));
    take(event);
    std::rotate(taken_.begin() + static_cast<std::ptrdiff_t>(i), taken_.end() - 1, taken_.end());
    return out;
  }

  static bool duplicate(const Explained& held, const Event& event) {
    const auto equal = [&](const Event& e) { return e.effects == event.effects; };
    return event.effects == held.event.effects ||
           std::any_of(held.same.begin(), held.same.end(), equal) ||
           std::any_of(held.rivals.begin(), held.rivals.end(), equal);
  }

  const Field& field_;
  const Mixture& mixture_;
  Prices prices_;
  State state_;
  Search search_;
  std::vector<std::uint16_t> used_;  // how many mistakes have touched a slot
  std::vector<bool> dirty_;
  std::vector<Taken> taken_;
};

}  // namespace

Explanation explain(const Field& field, const Mixture& mixture, const MoveRates& rates) {
  return Explainer(field, mixture, rates).make();
}

}  // namespace walkdown::match
