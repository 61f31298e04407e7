// SPDX-License-Identifier: Apache-2.0
// score-reference: what the fast search loses against the slow one on the same fields, with the
// same likelihoods, and how often even what really happened is the dearer explanation: the ceiling.
// Usage: score-reference [fields of each style, 20] [first seed, 1] [pins, 240] [moves, 6]
#include <cstdio>
#include <cstdlib>
#include <numeric>
#include <string>

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

void one(const simulated::Field& field, bool talk, Tally& tally) {
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
  count_findings(field, told(bench, fast), tally.fast);
  count_findings(field, told(bench, slow), tally.slow);
  if (!talk || a <= b + 1e-6) return;
  std::printf("   fast %.2f slow %.2f truth %.2f\n", a, b, t);
  list("fast", bench.field(), fast);
  list("slow", bench.field(), slow);
}

void line(const char* name, const simulated::Score& s) {
  std::printf("  %-10s found %.3f named %.3f of %.0f, right %.3f of %.0f\n", name,
              s.moves_found.value(), s.moves_named.value(), s.moves_found.all,
              s.moves_right.value(), s.moves_right.all);
}

}  // namespace

int main(int argc, char** argv) {
  const int fields = argc > 1 ? std::atoi(argv[1]) : 20;
  simulated::Setting setting;
  setting.seed = argc > 2 ? std::strtoull(argv[2], nullptr, 10) : 1;
  setting.pins = argc > 3 ? std::strtoull(argv[3], nullptr, 10) : 240;
  setting.move_scale = argc > 4 ? std::atof(argv[4]) : 6;
  for (const auto& [name, style] : simulated::kStyles) {
    setting.style = style;
    Tally tally;
    simulated::many_fields(setting, fields, 1, [&](const simulated::Field& field, std::uint64_t) {
      one(field, argc > 5, tally);
    });
    std::printf(
        "%s: %d fields; fast search dearer than slow in %d (sum %.1f, worst %.1f nats), "
        "cheaper in %d; truth cheaper than slow in %d, dearer in %d\n",
        name, tally.fields, tally.fast_dearer, tally.lost, tally.worst, tally.reference_dearer,
        tally.truth_cheaper, tally.truth_dearer);
    line("fast", tally.fast);
    line("slow", tally.slow);
  }
  return 0;
}
