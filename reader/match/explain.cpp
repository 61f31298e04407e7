// SPDX-License-Identifier: Apache-2.0
#include "reader/match/explain.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <utility>

#include "reader/match/hypothesis.h"
#include "reader/match/partners.h"
#include "reader/match/rail_set.h"
#include "reader/match/replacement.h"
#include "reader/match/rivals.h"
#include "reader/match/simplify.h"

namespace walkdown::match {
namespace {

constexpr int kRounds = 8;
constexpr int kRefinings = 3;
constexpr double kShape = 0.5;      // of the gamma prior: as sure of the rates as of half a mistake
constexpr double kUnchanged = 1.2;  // rates below this factor stay
constexpr double kMostOften = 10;   // and never rise above this one
constexpr std::uint32_t kMostRails = 64;  // of a module whose rails are paired with each other
constexpr double kLarge = 12;             // nats: an exchange that is beyond doubt
constexpr double kMostly = 0.6;           // of the excess of its slots
constexpr double kTie = 1e-9;
constexpr double kPooled = 1.5;   // nats: as much as alike mistakes may add together
constexpr double kRivalRoom = 7;  // nats below the best that a rival may lie: a share of 1/1000
constexpr std::size_t kMostRivals = 64;
constexpr double kWorthwhile = 0.5;     // of what is saved now, that a restart must save by itself
constexpr double kWorthwhileOne = 0.8;  // where one mistake saves it: refining has tried the rest
constexpr int kMostStarts = 2;          // of one kind on the same rails
constexpr std::size_t kMostRegrown = 48;  // rails of one restart

class Explainer {
 public:
  Explainer(const Field& field, const Mixture& mixture, const MoveRates& rates)
      : field_(field),
        mixture_(mixture),
        prices_(field, rates),
        held_(field, mixture),
        state_(held_.state()),
        search_(field, mixture, state_, prices_),
        rivals_(field, state_, search_),
        dirty_(field.rails.size()),
        near_(field.rails.size()),
        changed_(field.rails.size()),
        touched_(field.slots.size(), 0) {}

  Explanation make() {
    dirty_.add_all();
    large();
    dirty_.add_all();
    settle(true);
    if (learn()) settle(false);
    restarts();
    simplify(held_);
    std::vector<Explained> mistakes;
    for (std::size_t i = 0; i < held_.size(); ++i) {
      if (held_.held(i)) mistakes.push_back(weigh(i));
    }
    std::stable_sort(mistakes.begin(), mistakes.end(), [](const Explained& a, const Explained& b) {
      return a.event.effects.front().slot < b.event.effects.front().slot;
    });
    return {std::move(state_), std::move(mistakes), eased_};
  }

 private:
  void settle(bool first) {
    for (int pass = 0; pass < kRefinings; ++pass) {
      for (int round = 0; round < kRounds && grow(first); ++round) first = false;
      dirty_.clear();
      if (!refine()) break;
    }
  }

  // A crew that has made more mistakes than usual has made more of the doubtful ones too: one
  // factor on all rates, its prior a gamma distribution with mean 1. True where it changed.
  bool learn() {
    double made = 0;
    for (std::size_t i = 0; i < held_.size(); ++i) made += held_.held(i) ? 1 : 0;
    const double factor = (made + kShape) / (prices_.expected() + kShape);
    if (factor < kUnchanged) return false;
    const double nats = std::log(std::min(factor, kMostOften));
    eased_ = nats;
    prices_.ease(nats);
    held_.ease(nats);
    for (Event& event : losers_) {
      event.price -= nats;
      event.net += nats;
    }
    dirty_ = near_;
    return true;
  }

  // Whole modules and rails first, where they explain most of what is wrong with them: it need not
  // be looked at pin by pin.
  void large() {
    search_.keep(kLarge);
    Events candidates = pairs(false);
    for (std::uint32_t r = 0; r < field_.rails.size(); ++r) search_.reversed(r, candidates);
    const auto doubtful = [&](const Event& event) {
      double wrong = 0;
      for (const Effect& e : event.effects) wrong += state_.excess[e.slot];
      return event.net < kMostly * wrong;
    };
    const auto middle = std::stable_partition(candidates.begin(), candidates.end(),
                                              [&](const Event& e) { return !doubtful(e); });
    std::move(middle, candidates.end(), std::back_inserter(losers_));
    candidates.erase(middle, candidates.end());
    std::sort(candidates.begin(), candidates.end(), better);
    accept(std::move(candidates), kLarge, true);
  }

  // One round: all candidates of the dirty rails, the best of those that do not touch.
  bool grow(bool first) {
    search_.keep(-kPooled);
    Events candidates = pairs(true);
    for (std::uint32_t r = 0; r < field_.rails.size(); ++r) {
      if (dirty_.has(r)) inside(r, candidates);
    }
    pool(candidates, state_);
    return accept(std::move(candidates), kTie, first);
  }

  void inside(std::uint32_t r, Events& out) {
    search_.rail(r, out);
    const Rail& rail = field_.rails[r];
    for (std::uint32_t i = rail.first; i < rail.first + rail.size; ++i) {
      if (state_.excess[i] > kBad) search_.swaps(i, out);
    }
  }

  // Sorted by better(): the first of those that touch wins.
  bool accept(Events candidates, double least, bool remember) {
    dirty_.clear();
    std::vector<std::uint32_t> taken_slots;
    bool any = false;
    for (Event& event : candidates) {
      if (event.net <= least) {
        for (const Effect& e : event.effects) near_.add(field_.rail_of[e.slot]);
        continue;
      }
      const bool clash = std::any_of(event.effects.begin(), event.effects.end(),
                                     [&](const Effect& e) { return touched_[e.slot] != 0; });
      for (const Effect& e : event.effects) dirty_.add(field_.rail_of[e.slot]);
      if (clash) {
        if (remember && event.kind != Kind::swapped) losers_.push_back(std::move(event));
        continue;
      }
      for (const Effect& e : event.effects) {
        touched_[e.slot] = 1;
        changed_.add(field_.rail_of[e.slot]);
        taken_slots.push_back(e.slot);
      }
      held_.take(std::move(event));
      any = true;
    }
    for (const std::uint32_t slot : taken_slots) touched_[slot] = 0;
    return any;
  }

  // Exchanges of rails and modules, and, if asked, swaps between modules.
  Events pairs(bool far_swaps) {
    Events out;
    for (const Module& module : field_.modules) {
      const std::uint32_t end = module.first + std::min(module.rails, kMostRails);
      for (std::uint32_t r = module.first; r < end; ++r) {
        for (std::uint32_t q = r + 1; q < end; ++q) {
          if (dirty_.has(r) || dirty_.has(q)) search_.rail_pair(r, q, out);
        }
      }
    }
    const Partners partners = find_partners(field_, mixture_, state_, prices_, dirty_.flags());
    for (const auto& [a, b] : partners.rails) search_.rail_pair(a, b, out);
    for (const auto& [a, b] : partners.modules) search_.module_pair(a, b, out);
    if (!far_swaps) return out;
    for (const auto& [a, b] : partners.slots) search_.swap(a, b, out);
    return out;
  }

  [[nodiscard]] bool on_any(std::size_t i, const RailSet& rails) const {
    const Event& event = held_.event(i);
    return std::any_of(event.effects.begin(), event.effects.end(),
                       [&](const Effect& e) { return rails.has(field_.rail_of[e.slot]); });
  }

  // Greedy takes the largest first; look once more at each with the others in place. True where
  // something changed.
  bool refine() {
    bool any = false;
    const RailSet changed = std::exchange(changed_, RailSet(field_.rails.size()));
    for (std::size_t i = 0; i < held_.size(); ++i) {
      if (!held_.held(i) || !held_.alone(i) || !on_any(i, changed)) continue;
      held_.lift(i);
      Event best = held_.event(i);
      best.net = search_.net(best);
      bool other = false;
      Events others = rivals_.around(best, std::max(best.net, kTie) - kPooled);
      pool(others, state_);
      for (Event& rival : others) {
        if (rival.net <= best.net + kTie || !held_.untouched(rival)) continue;
        best = std::move(rival);
        other = true;
      }
      if (other || best.net <= kTie) {
        any = true;
        // Something else may fit here now.
        for (const Effect& e : held_.event(i).effects) {
          dirty_.add(field_.rail_of[e.slot]);
          changed_.add(field_.rail_of[e.slot]);
        }
      }
      if (best.net <= kTie) continue;
      if (other)
        held_.put_instead(i, std::move(best));
      else
        held_.put_back(i);
    }
    return any;
  }

  // A mistake that lost its place to several smaller ones, each of which saves more for its size,
  // may still be the better start: tried again from the plan.
  void restarts() {
    std::sort(losers_.begin(), losers_.end(), better);
    std::map<std::array<std::uint32_t, 3>, int> tried;  // the best of each kind on the same rails
    for (const Event& start : losers_) {
      const std::array<std::uint32_t, 3> key = {field_.rail_of[start.effects.front().slot],
                                                field_.rail_of[start.effects.back().slot],
                                                static_cast<std::uint32_t>(start.kind)};
      if (++tried[key] <= kMostStarts) restart(start);
    }
  }

  void restart(const Event& start) {
    std::vector<std::uint32_t> rails;
    for (const Effect& e : start.effects) rails.push_back(field_.rail_of[e.slot]);
    std::sort(rails.begin(), rails.end());
    rails.erase(std::unique(rails.begin(), rails.end()), rails.end());
    const std::vector<std::size_t> old = held_.closed(rails, kMostRegrown);
    if (rails.empty() || old.empty() || part_of_one(start, old)) return;
    double saved = 0;
    for (const std::size_t i : old) saved += held_.event(i).net;
    if (start.net < saved * (old.size() == 1 ? kWorthwhileOne : kWorthwhile)) return;
    Event event = start;
    Replacement tried(held_, field_, old, rails);
    event.net = search_.net(event);
    tried.put(std::move(event));
    regrow(tried);
    tried.settle();
  }

  // The same mistake over fewer pins than one that is held.
  [[nodiscard]] bool part_of_one(const Event& start, const std::vector<std::size_t>& old) const {
    return std::any_of(old.begin(), old.end(), [&](std::size_t i) {
      const Event& event = held_.event(i);
      if (event.kind != start.kind || event.by != start.by) return false;
      return std::includes(event.effects.begin(), event.effects.end(), start.effects.begin(),
                           start.effects.end(), [](const Effect& a, const Effect& b) {
                             return a.slot != b.slot ? a.slot < b.slot : a.source < b.source;
                           });
    });
  }

  void regrow(const Replacement& tried) {
    const std::vector<std::uint32_t>& rails = tried.rails();
    search_.keep(-kPooled);
    for (const std::uint32_t r : rails) dirty_.add(r);
    for (int round = 0; round < kRounds && !tried.hopeless(); ++round) {
      Events found;
      for (const std::uint32_t r : rails) {
        if (dirty_.has(r)) inside(r, found);
        for (const std::uint32_t q : rails) {
          if (q > r && (dirty_.has(r) || dirty_.has(q))) search_.rail_pair(r, q, found);
        }
      }
      std::erase_if(found, [&](const Event& event) {
        return !std::all_of(event.effects.begin(), event.effects.end(), [&](const Effect& e) {
          return std::binary_search(rails.begin(), rails.end(), field_.rail_of[e.slot]);
        });
      });
      pool(found, state_);
      if (!accept(std::move(found), kTie, false)) return;
    }
  }

  Explained weigh(std::size_t i) {
    Explained out;
    out.event = held_.event(i);
    if (!held_.alone(i)) {
      out.event.net = worth(held_, i);
      out.confidence = 1 / (1 + std::exp(std::min(700.0, -out.event.net)));
      return out;
    }
    held_.lift(i);
    out.event.net = search_.net(out.event);
    const auto seen = rivals_.seen_of(out.event);
    // Weights against the event's own: the evidence for a whole module is beyond what exp() holds.
    const double own = out.event.net;
    const auto weight = [&](double net) { return std::exp(std::clamp(net - own, -700.0, 700.0)); };
    double sum = weight(0) + 1;
    Events others = rivals_.around(out.event, out.event.net - kRivalRoom);
    for (std::size_t k = 0; k < others.size() && k < kMostRivals; ++k) {
      Event& other = others[k];
      if (duplicate(out, other)) continue;
      sum += weight(other.net);
      (rivals_.seen_of(other) == seen ? out.same : out.rivals).push_back(std::move(other));
    }
    out.confidence = 1 / sum;
    for (const Event& rival : out.rivals) out.shares.push_back(weight(rival.net) / sum);
    held_.put_back(i);
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
  Hypothesis held_;
  State& state_;
  Search search_;
  Rivals rivals_;
  RailSet dirty_;              // to look at in the next round
  RailSet near_;               // on these a mistake was all but taken
  RailSet changed_;            // on these one was taken since refine() looked
  std::vector<char> touched_;  // slots taken in this one
  double eased_ = 0;
  Events losers_;  // of the first round: clashed with what was taken
};

}  // namespace

Explanation explain(const Field& field, const Mixture& mixture, const MoveRates& rates) {
  return Explainer(field, mixture, rates).make();
}

}  // namespace walkdown::match
