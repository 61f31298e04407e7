// SPDX-License-Identifier: Apache-2.0
// score-reference: what the fast search loses against the slow one on the same fields, with the
// same likelihoods: the four rates of both, and their difference; and how often even what really
// happened is the dearer explanation: the ceiling.
// Usage: score-reference [fields of each style, 20] [first seed, 1] [pins, 240] [moves, 6]
// [simulator: 1 or 2, 0 for both] [1: list the fields in which the fast search lost]
// [style: "mixed", "all alike" or "blocks"; all three]
#include <fmt/format.h>

#include <array>
#include <cstdio>
#include <cstdlib>
#include <numeric>
#include <string>

#include "reader/match/hypothesis.h"
#include "reader/match/moves.h"
#include "tests/match/many_fields.h"
#include "tests/match/reference.h"
#include "tests/match/score.h"

namespace {

using namespace walkdown;  // NOLINT: a program of one page
using match::Events;

std::vector<match::Finding> told(const simulated::Bench& bench, const Events& events) {
  match::Explanation explanation{match::State(bench.field(), bench.mixture()), {}, 0};
  for (const match::Event& event : events) explanation.mistakes.push_back({event, 1, {}, {}, {}});
  return match::moves(bench.field(), explanation);
}

struct Tally {
  int fields = 0, fast_dearer = 0, truth_cheaper = 0, truth_dearer = 0, reference_dearer = 0;
  double lost = 0, worst = 0;
  simulated::Score fast, slow;
};

match::State state_of(const simulated::Bench& bench, const Events& events) {
  match::Hypothesis held(bench.field(), bench.mixture());
  for (const match::Event& event : events) held.take(event);
  return held.state();
}

void count(const simulated::Field& field, const simulated::Bench& bench, const Events& events,
           const match::State& state, simulated::Score& score) {
  match::Outcome outcome;
  outcome.pins = bench.verdicts(state);
  count_flags(field, simulated::flags(outcome), score);
  count_findings(field, told(bench, events), score);
}

void list(const char* who, const match::Field& field, const Events& events) {
  for (const match::Event& event : events) {
    std::printf("    %s %s by %d net %.2f price %.2f:", who,
                std::string(match::text(event.kind)).c_str(), event.by, event.net, event.price);
    for (std::size_t i = 0; i < event.members.size() && i < 6; ++i) {
      std::printf(" %s", plan::text(field.slots[event.members[i]].pin).c_str());
    }
    std::printf(" (%zu)\n", event.members.size());
  }
}

void one(const simulated::Field& field, std::uint64_t seed, bool talk, Tally& tally) {
  simulated::Bench bench(field);
  match::Explanation explanation = match::explain(bench.field(), bench.mixture(), {});
  // By the state: the order in which mistakes lie on each other is in it.
  double a = std::accumulate(explanation.state.cost.begin(), explanation.state.cost.end(), 0.0);
  Events fast;
  for (match::Explained& e : explanation.mistakes) {
    a += e.event.price + e.event.pooled;
    fast.push_back(std::move(e.event));
  }
  bench.ease(explanation.eased);
  const Events slow = simulated::reference_search(bench);
  const double b = bench.total(slow);
  const double t = bench.truth();
  ++tally.fields;
  tally.fast_dearer += a > b + 1e-6 ? 1 : 0;
  tally.reference_dearer += b > a + 1e-6 ? 1 : 0;
  tally.truth_cheaper += t < b - 1e-6 ? 1 : 0;
  tally.truth_dearer += t > b + 1e-6 ? 1 : 0;
  tally.lost += std::max(0.0, a - b);
  tally.worst = std::max(tally.worst, a - b);
  count(field, bench, fast, explanation.state, tally.fast);
  count(field, bench, slow, state_of(bench, slow), tally.slow);
  if (!talk || a <= b + 1e-6) return;
  std::printf("   seed %llu fast %.2f slow %.2f truth %.2f\n",
              static_cast<unsigned long long>(seed), a, b, t);
  list("fast", bench.field(), fast);
  list("slow", bench.field(), slow);
  std::fflush(stdout);
}

using Rates = std::array<double, 4>;

Rates rates(const simulated::Score& s) {
  return {s.wrong_flagged.value(), 1000 * s.sound_flagged.value(), s.moves_found.value(),
          s.moves_right.value()};
}

void line(const char* name, const Rates& rates, const std::string& more) {
  std::printf("  %-12s %8.3f %10.2f %8.3f %8.3f  %s\n", name, rates[0], rates[1], rates[2],
              rates[3], more.c_str());
}

std::string counts(const simulated::Score& s) {
  return fmt::format("({:.0f} made, {:.0f} told)", s.moves_found.all, s.moves_right.all);
}

void print(const char* name, int simulator, const Tally& tally) {
  std::printf(
      "%s, simulator %d: %d fields; fast search dearer than slow in %d (sum %.1f, worst %.1f "
      "nats), cheaper in %d; truth cheaper than slow in %d, dearer in %d\n",
      name, simulator, tally.fields, tally.fast_dearer, tally.lost, tally.worst,
      tally.reference_dearer, tally.truth_cheaper, tally.truth_dearer);
  std::printf("  %-12s %8s %10s %8s %8s\n", "", "flagged", "alarms/1k", "recall", "precise");
  const Rates fast = rates(tally.fast);
  const Rates slow = rates(tally.slow);
  Rates difference{};
  for (std::size_t i = 0; i < fast.size(); ++i) difference[i] = fast[i] - slow[i];
  line("fast", fast, counts(tally.fast));
  line("slow", slow, counts(tally.slow));
  line("difference", difference, "");
  std::fflush(stdout);
}

}  // namespace

int main(int argc, char** argv) {
  const int fields = argc > 1 ? std::atoi(argv[1]) : 20;
  simulated::Setting setting;
  setting.seed = argc > 2 ? std::strtoull(argv[2], nullptr, 10) : 1;
  setting.pins = argc > 3 ? std::strtoull(argv[3], nullptr, 10) : 240;
  setting.move_scale = argc > 4 ? std::atof(argv[4]) : 6;
  const int only = argc > 5 ? std::atoi(argv[5]) : 0;
  const bool talk = argc > 6 && std::atoi(argv[6]) == 1;
  const std::string wanted = argc > 7 ? argv[7] : "";
  for (const int by : {1, 2}) {
    if (only != 0 && only != by) continue;
    for (const auto& [name, style] : simulated::kStyles) {
      if (!wanted.empty() && wanted != name) continue;
      setting.style = style;
      Tally tally;
      simulated::many_fields(setting, fields, by,
                             [&](const simulated::Field& field, std::uint64_t seed) {
                               one(field, seed, talk, tally);
                             });
      print(name, by, tally);
    }
  }
  return 0;
}
