// SPDX-License-Identifier: Apache-2.0
// score-events: every mistake that was missed, and every one that was told and had not been made,
// with the reason: the search (what happened would have been the cheaper explanation), or the
// readings (it is the dearer one, by so many nats).
// Usage: score-events [fields of each style, 20] [first seed, 1] [pins, 480] [list: 1] [simulator:
// 1 or 2]
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <set>
#include <string>

#include "reader/match/moves.h"
#include "tests/match/many_fields.h"
#include "tests/match/reference.h"
#include "tests/match/score.h"

namespace {

using namespace walkdown;  // NOLINT: a program of one page
using match::Event;
using match::Events;

using Rails = std::set<std::uint32_t>;

// slot -> spec it ends with, where that is not what was planned.
using Ends = std::map<std::uint32_t, std::uint32_t>;

class Case {
 public:
  Case(const simulated::Bench& bench, match::Explanation explanation)
      : bench_(bench), state_(std::move(explanation.state)), made_(bench.made()) {
    for (match::Explained& e : explanation.mistakes) fast_.push_back(std::move(e.event));
  }

  [[nodiscard]] const Events& fast() const { return fast_; }
  [[nodiscard]] const Events& made() const { return made_; }

  [[nodiscard]] Rails rails_of(const Event& event) const {
    Rails out;
    for (const match::Effect& e : event.effects) out.insert(bench_.field().rail_of[e.slot]);
    return out;
  }

  // The rails of this event and of all that share a rail with these.
  [[nodiscard]] Rails around(const Event& event) const {
    Rails out = rails_of(event);
    for (std::size_t before = 0; before != out.size();) {
      before = out.size();
      for (const Events* events : {&fast_, &made_}) {
        for (const Event& other : *events) {
          const Rails of = rails_of(other);
          const bool meets =
              std::any_of(of.begin(), of.end(), [&](auto r) { return out.contains(r); });
          if (meets) out.insert(of.begin(), of.end());
        }
      }
    }
    return out;
  }

  [[nodiscard]] Events on(const Events& events, const Rails& rails) const {
    Events out;
    for (const Event& event : events) {
      if (rails.contains(*rails_of(event).begin())) out.push_back(event);
    }
    return out;
  }

  // Nats by which what happened on these rails is dearer than what was told of them.
  [[nodiscard]] double dearer(const Rails& rails) const {
    double told = 0;  // by the state: the order in which mistakes lie on each other is in it
    double planned = 0;
    for (const Event& event : on(fast_, rails)) told += event.price + event.pooled;
    for (const std::uint32_t r : rails) {
      const match::Rail& rail = bench_.field().rails[r];
      for (std::uint32_t i = rail.first; i < rail.first + rail.size; ++i) {
        told += state_.cost[i];
        planned += bench_.cost(i, bench_.field().slots[i].spec);
      }
    }
    return bench_.total(on(made_, rails)) - bench_.total({}) + planned - told;
  }

  [[nodiscard]] Ends ends(const Event& event) const {
    Ends out;
    for (const match::Effect& e : event.effects) {
      const auto& slots = bench_.field().slots;
      const std::uint32_t spec =
          e.source == match::kNowhere ? match::kNothing : slots[e.source].spec;
      if (spec != slots[e.slot].spec) out[e.slot] = spec;
    }
    return out;
  }

 private:
  const simulated::Bench& bench_;
  match::State state_;
  Events fast_, made_;
};

std::string name(const Event& event) {
  std::string out(match::text(event.kind));
  if (event.by != 0) out.append(" by ").append(std::to_string(event.by));
  return out;
}

void print(const char* who, const Case& c, const simulated::Bench& bench, const Event& event) {
  std::printf("      %s %s price %.1f:", who, name(event).c_str(), event.price);
  int n = 0;
  for (const auto& [slot, spec] : c.ends(event)) {
    if (++n > 8) continue;
    const match::Slot& held = bench.field().slots[slot];
    std::printf(" %s %u<-%u(%.1f)", plan::text(held.pin).c_str(), held.spec, spec,
                bench.cost(slot, held.spec) - bench.cost(slot, spec));
  }
  std::printf(" [%d]\n", n);
}

struct Tally {
  std::map<std::string, std::array<int, 4>> missed;  // by kind: all, search, readings < 3, more
  std::map<std::string, std::array<int, 4>> wrong;
  int made = 0, told = 0;
};

void count(std::map<std::string, std::array<int, 4>>& table, const std::string& kind,
           double dearer) {
  auto& row = table[kind];
  ++row[0];
  ++row[dearer < -1e-6 ? 1 : dearer < 3 ? 2 : 3];
}

void one(const simulated::Field& field, std::uint64_t seed, bool talk, Tally& tally) {
  simulated::Bench bench(field);
  match::Explanation explanation = match::explain(bench.field(), bench.mixture(), {});
  bench.ease(explanation.eased);
  const Case c(bench, std::move(explanation));
  const auto told = [&](const Events& events, const Event& event) {
    return std::any_of(events.begin(), events.end(),
                       [&](const Event& e) { return c.ends(e) == c.ends(event); });
  };
  const auto show = [&](const char* what, const Event& event, const Rails& rails) {
    if (!talk) return;
    std::printf("   %s %s; what happened is dearer by %.2f (seed %llu)\n", what,
                name(event).c_str(), c.dearer(rails), static_cast<unsigned long long>(seed));
    for (const Event& e : c.on(c.made(), rails)) print("made", c, bench, e);
    for (const Event& e : c.on(c.fast(), rails)) print("told", c, bench, e);
  };
  tally.made += static_cast<int>(c.made().size());
  tally.told += static_cast<int>(c.fast().size());
  for (const Event& event : c.made()) {
    if (told(c.fast(), event)) continue;
    const Rails rails = c.around(event);
    count(tally.missed, std::string(match::text(event.kind)), c.dearer(rails));
    show("missed", event, rails);
  }
  for (const Event& event : c.fast()) {
    if (told(c.made(), event)) continue;
    const Rails rails = c.around(event);
    count(tally.wrong, std::string(match::text(event.kind)), c.dearer(rails));
    show("wrong", event, rails);
  }
}

void print(const char* title, const std::map<std::string, std::array<int, 4>>& table) {
  std::printf("  %-20s all  search  within 3 nats  dearer\n", title);
  for (const auto& [kind, row] : table) {
    std::printf("   %-18s %4d %6d %10d %10d\n", kind.c_str(), row[0], row[1], row[2], row[3]);
  }
}

double share(const std::map<std::string, std::array<int, 4>>& table, int of) {
  int n = 0;
  for (const auto& [kind, row] : table) n += row[0];
  return of > 0 ? static_cast<double>(n) / of : 0;
}

}  // namespace

int main(int argc, char** argv) {
  const int fields = argc > 1 ? std::atoi(argv[1]) : 20;
  simulated::Setting setting;
  setting.seed = argc > 2 ? std::strtoull(argv[2], nullptr, 10) : 1;
  if (argc > 3) setting.pins = std::strtoull(argv[3], nullptr, 10);
  const bool talk = argc > 4 && std::atoi(argv[4]) == 1;
  const int simulator = argc > 5 ? std::atoi(argv[5]) : 1;
  for (const auto& [title, style] : simulated::kStyles) {
    setting.style = style;
    Tally tally;
    simulated::many_fields(
        setting, fields, simulator,
        [&](const simulated::Field& field, std::uint64_t seed) { one(field, seed, talk, tally); });
    std::printf("%s: %.3f of %d mistakes told, %.3f of %d told were made\n", title,
                1 - share(tally.missed, tally.made), tally.made, 1 - share(tally.wrong, tally.told),
                tally.told);
    print("missed", tally.missed);
    print("told, not made", tally.wrong);
  }
  return 0;
}
