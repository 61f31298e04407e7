// SPDX-License-Identifier: Apache-2.0
#include "tests/match/reference.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "tests/match/every_mistake.h"

namespace walkdown::simulated {
namespace {

using match::Event;
using match::Events;
using match::Kind;

constexpr double kLosing = -12;  // nats: block mistakes from here on are worth a start
constexpr int kMostPasses = 6;
constexpr std::size_t kMostStarts = 60;

bool touch(const Event& a, const Event& b) {
  return std::any_of(a.effects.begin(), a.effects.end(), [&](const match::Effect& x) {
    return std::any_of(b.effects.begin(), b.effects.end(),
                       [&](const match::Effect& y) { return x.slot == y.slot; });
  });
}

class Slow {
 public:
  explicit Slow(const Bench& bench) : bench_(bench), every_(bench) {}

  Events search() {
    Events best = stable({});
    double least = bench_.total(best);
    for (const Event& start : starts()) {
      Events with = best;
      std::erase_if(with, [&](const Event& held) { return touch(held, start); });
      with.push_back(start);
      with = stable(std::move(with));
      const double cost = bench_.total(with);
      if (cost >= least - 1e-9) continue;
      least = cost;
      best = std::move(with);
    }
    return best;
  }

 private:
  [[nodiscard]] On after(const Events& events, std::size_t without) const {
    On on;
    for (const match::Slot& slot : bench_.field().slots) on.push_back(slot.spec);
    for (std::size_t i = 0; i < events.size(); ++i) {
      if (i != without) apply(events[i], on);
    }
    return on;
  }

  [[nodiscard]] Events starts() const {
    Events out;
    every_.blocks(after({}, 0), kLosing, [&](const Event& event) {
      if (event.net <= 0) out.push_back(event);
    });
    std::sort(out.begin(), out.end(), [](const Event& a, const Event& b) { return a.net > b.net; });
    if (out.size() > kMostStarts) out.resize(kMostStarts);
    return out;
  }

  [[nodiscard]] Event best(const On& on) const {
    Event best;
    best.net = 1e-9;
    const auto keep = [&](const Event& event) {
      if (event.net > best.net) best = event;
    };
    every_.blocks(on, best.net, keep);
    every_.swaps(on, best.net, keep);
    return best;
  }

  bool add(Events& held) const {
    bool any = false;
    for (Event next = best(after(held, held.size())); !next.effects.empty();
         next = best(after(held, held.size()))) {
      held.push_back(std::move(next));
      any = true;
    }
    return any;
  }

  // Each mistake in turn is left out, and the best one that remains is put in its place.
  bool renew(Events& held) const {
    bool any = false;
    for (std::size_t i = 0; i < held.size(); ++i) {
      Events others = held;
      others.erase(others.begin() + static_cast<std::ptrdiff_t>(i));
      add(others);
      if (bench_.total(others) < bench_.total(held) - 1e-9) {
        held = std::move(others);
        any = true;
      }
    }
    return any;
  }

  [[nodiscard]] Events stable(Events held) const {
    add(held);
    for (int pass = 0; pass < kMostPasses && renew(held); ++pass) {
    }
    return held;
  }

  const Bench& bench_;
  EveryMistake every_;
};

match::SpecTable specs_of(const Field& simulated) { return match::make_specs(simulated.plan); }

}  // namespace

void apply(const Event& event, On& on) {
  std::vector<std::uint32_t> next;
  for (const match::Effect& e : event.effects) {
    next.push_back(e.source == match::kNowhere ? match::kNothing : on[e.source]);
  }
  for (std::size_t i = 0; i < next.size(); ++i) on[event.effects[i].slot] = next[i];
}

Bench::Bench(const Field& simulated)
    : simulated_(simulated),
      planned_(specs_of(simulated)),
      field_(match::make_field(simulated.plan, planned_.of_pin, simulated.samples, simulated.tester,
                               false)),
      wide_(match::judge_field(simulated.plan, simulated.tester, field_, planned_,
                               simulated.samples, priors_)),
      mixture_(field_, wide_.table, wide_.shared, priors_, simulated.samples, simulated.tester),
      prices_(field_, priors_.move),
      known_(field_.slots.size() * wide_.table.specs.size(),
             std::numeric_limits<double>::quiet_NaN()) {}

double Bench::cost(std::uint32_t slot, std::uint32_t spec) const {
  double& held = known_[slot * wide_.table.specs.size() + spec];
  if (std::isnan(held)) held = mixture_.cost(field_.slots[slot], spec);
  return held;
}

double Bench::total(const Events& mistakes) const {
  On on;
  for (const match::Slot& slot : field_.slots) on.push_back(slot.spec);
  double sum = 0;
  for (const Event& event : mistakes) {
    sum += event.price;
    apply(event, on);
  }
  for (std::uint32_t i = 0; i < on.size(); ++i) sum += cost(i, on[i]);
  return sum;
}

Events Bench::made() const {
  Events out;
  for (const Moved& moved : simulated_.moves) {
    if (!moved.visible) continue;
    Event event;
    event.kind = moved.kind;
    event.by = moved.by;
    for (const auto& [pin, source] : moved.effect) {
      const auto slot = field_.find(pin);
      const auto from = source == plan::PinId{} ? std::nullopt : field_.find(source);
      if (slot) event.effects.push_back({*slot, from.value_or(match::kNowhere)});
    }
    if (event.effects.empty()) continue;
    const std::uint32_t a = event.effects.front().slot;
    const std::uint32_t b = event.effects.back().slot;
    const match::Rail& rail = field_.rails[field_.rail_of[a]];
    switch (moved.kind) {
      case Kind::swapped:
        event.price = prices_.swap(a, b);
        break;
      case Kind::reversed:
        event.price = prices_.reversal();
        break;
      case Kind::rails_exchanged:
        event.price = prices_.rails(field_.rail_of[a], field_.rail_of[b]);
        break;
      case Kind::modules_exchanged:
        event.price = prices_.modules();
        break;
      default:
        event.price = moved.wrapped ? prices_.wrap(rail.length, moved.by)
                                    : prices_.slide(rail.length, moved.by) +
                                          (std::abs(moved.by) > 1 ? std::log(3.0) : 0);
    }
    out.push_back(std::move(event));
  }
  return out;
}

std::vector<match::PinVerdict> Bench::verdicts(const match::State& state) const {
  const std::vector<bool> stale(field_.slots.size(), false);
  return match::judge(simulated_.plan, simulated_.tester, field_, mixture_, state,
                      simulated_.samples, stale, wide_.shift)
      .pins;
}

double Bench::truth() const { return total(made()); }

Events reference_search(const Bench& bench) { return Slow(bench).search(); }

}  // namespace walkdown::simulated
