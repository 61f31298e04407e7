// SPDX-License-Identifier: Apache-2.0
#include "reader/match/diagnose.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <iterator>
#include <numeric>
#include <optional>
#include <utility>

#include "reader/match/explain.h"
#include "reader/match/faults.h"
#include "reader/match/field.h"
#include "reader/match/field_wide.h"
#include "reader/match/mixture.h"
#include "reader/match/moves.h"
#include "reader/match/shared_fit.h"
#include "reader/match/spec.h"
#include "reader/match/state.h"
#include "reader/match/verdict.h"

namespace walkdown::match {
namespace {

constexpr double kMany = 2.5;     // faults against their rates, from which on these are raised
constexpr double kMostOften = 6;  // and by no more than this: all rates together stay below a third

std::vector<bool> stale_slots(const Field& field, const std::vector<plan::PinId>& stale) {
  std::vector<bool> out(field.slots.size(), false);
  for (const plan::PinId pin : stale) {
    if (const auto at = field.find(pin)) out[*at] = true;
  }
  return out;
}

Explanation explained(const Field& field, const Mixture& mixture, bool structure,
                      const MoveRates& rates) {
  if (structure) return explain(field, mixture, rates);
  return {State(field, mixture), {}, 0};
}

// A silent field has been told once.
void drop_opens(std::vector<Finding>& findings) {
  findings.erase(std::remove_if(findings.begin(), findings.end(),
                                [](const Finding& f) { return f.kind == Kind::open; }),
                 findings.end());
}

double mean(const std::vector<double>& values) {
  if (values.empty()) return 1;
  return std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size());
}

std::vector<bool> moved_slots(const Field& field, const State& state) {
  std::vector<bool> out(field.slots.size(), false);
  for (std::uint32_t i = 0; i < field.slots.size(); ++i)
    out[i] = state.on[i] != field.slots[i].spec;
  return out;
}

double total(const Explanation& explanation) {
  const auto& cost = explanation.state.cost;
  double sum = std::accumulate(cost.begin(), cost.end(), 0.0);
  for (const Explained& mistake : explanation.mistakes) sum += mistake.event.price;
  return sum;
}

LoadRates times(const LoadRates& rates, double factor) {
  LoadRates out = rates;
  for (double* rate :
       {&out.open, &out.poor_joint, &out.missing, &out.wrong_lead, &out.shorted, &out.leak,
        &out.intermittent, &out.wrong_igniter, &out.extra, &out.repeated, &out.unplanned}) {
    *rate *= factor;
  }
  return out;
}

// What is wrong as a whole, and the explanation of the rest under it. The mixture refers to the
// other two: it is made where they have come to rest.
struct Reading {
  FieldWide wide;
  std::optional<Mixture> mixture;
  std::optional<Explanation> explanation;

  void explain_rest(const Field& field, const tester::Model& tester,
                    std::span<const Sample> samples, const Options& options) {
    mixture.emplace(field, wide.table, wide.shared, options.priors, samples, tester);
    explanation =
        explained(field, *mixture, options.structure && !wide.silent, options.priors.move);
  }

  // What was moved once more, with faults so many times as frequent; the pins are judged at the
  // rates as they are, so that a field of many faults gives no more false alarms.
  void explain_moves(const Field& field, const tester::Model& tester,
                     std::span<const Sample> samples, const Options& options, double factor) {
    Priors priors = options.priors;
    priors.load = times(priors.load, factor);
    SpecTable table = wide.table;  // a mixture leaves its levels in its table
    const Mixture often(field, table, wide.shared, priors, samples, tester);
    Explanation anew = explained(field, often, options.structure, priors.move);
    State state(field, *mixture);
    for (std::uint32_t i = 0; i < field.slots.size(); ++i) {
      if (anew.state.from[i] == state.from[i]) continue;
      state.set(field, *mixture, i, anew.state.on[i], anew.state.from[i]);
    }
    anew.state = std::move(state);
    explanation = std::move(anew);
  }
};

// Loads that are faulty where they are, against what the rates say: a crew with many faults has
// made more of the doubtful ones too, and two faults explain what one moved load would. Below kMany
// the rates stay; also where most of the field does not fit, which is another plan and no crew.
double faults_against_rates(const Field& field, const Mixture& mixture, const State& state) {
  constexpr double kShape = 2;  // of the gamma prior: as sure of the rates as of two faults
  double faulty = kShape;
  double expected = kShape;
  std::size_t read = 0;
  for (std::uint32_t i = 0; i < field.slots.size(); ++i) {
    if (state.on[i] == kNothing || field.slots[i].seen.unread()) continue;
    ++read;
    faulty += state.excess[i] > kBad ? 1 : 0;
    expected += mixture.table().specs[state.on[i]].faults;
  }
  return 2 * (faulty - kShape) > static_cast<double>(read) ? 1 : faulty / expected;
}

// A cause in the whole field, against a field with nothing of the kind in which loads were moved.
void weigh_against_moves(Reading& best, const Reading& plain) {
  const double gain = total(*plain.explanation) - total(*best.explanation) - best.wide.price;
  best.wide.finding->confidence /= 1 + std::exp(std::clamp(-gain, -700.0, 700.0));
  if (best.wide.finding->confidence < kSure) best.wide.shift.doubt_all = true;
}

}  // namespace

Outcome diagnose(const plan::Plan& plan, const tester::Model& tester,
                 std::span<const Sample> samples, const Options& options) {
  SpecTable specs = make_specs(plan);
  const Field field = make_field(plan, specs.of_pin, samples, tester, options.layout_known);
  Reading with;
  with.wide = judge_field(plan, tester, field, specs, samples, options.priors);
  with.explain_rest(field, tester, samples, options);
  Reading plain;
  if (with.wide.finding && !with.wide.silent && options.structure) {
    plain.wide = nothing_wide(plan, tester, field, std::move(specs));
    plain.explain_rest(field, tester, samples, options);
    weigh_against_moves(with, plain);
  }
  const bool moved_instead = plain.explanation && with.wide.finding->confidence < 0.5;
  Reading& best = moved_instead ? plain : with;
  const double factor = faults_against_rates(field, *best.mixture, best.explanation->state);
  if (factor > kMany && !best.wide.silent) {
    best.explain_moves(field, tester, samples, options, std::min(factor, kMostOften));
  }
  FieldWide& wide = best.wide;
  const Mixture& mixture = *best.mixture;
  const Explanation& explanation = *best.explanation;
  const State& state = explanation.state;
  const std::vector<bool> moved = moved_slots(field, state);
  Judged judged = judge(plan, tester, field, mixture, state, samples,
                        stale_slots(field, options.stale), wide.shift);
  Outcome out;
  out.findings = moves(field, explanation);
  std::vector<Finding> single = faults(field, mixture, state, judged, moved);
  if (wide.silent) drop_opens(single);
  std::move(single.begin(), single.end(), std::back_inserter(out.findings));
  if (wide.finding) out.findings.insert(out.findings.begin(), std::move(*wide.finding));
  for (const PinVerdict& pin : judged.pins) {
    if (pin.verdict == Verdict::fits && pin.p_ok < options.look_below) out.look.push_back(pin.pin);
  }
  out.pins = std::move(judged.pins);
  out.field = {wide.shared.offset, wide.shared.gain, mean(wide.shared.lead_factor),
               wide.shared.residual, wide.shared.jumps};
  out.left_out = field.left_out;
  return out;
}

}  // namespace walkdown::match
