// SPDX-License-Identifier: Apache-2.0
// Plans, testers and readings that nobody means: whatever they are, a diagnosis comes out, every
// number in it is one, and what was not read does not fit.
#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>
#include <set>

#include "reader/match/alike.h"
#include "reader/match/coverage.h"
#include "reader/match/diagnose.h"
#include "reader/match/firing_current.h"

namespace walkdown {
namespace {

using match::Outcome;
using match::Sample;

constexpr double kNan = std::numeric_limits<double>::quiet_NaN();
constexpr double kInfinite = std::numeric_limits<double>::infinity();

double odd_ohm() {
  return *rc::gen::element(0.0, -0.02, -5.0, 1e-12, 0.31, 1.7, 1.7, 3.4, 21.0, 199.99, 1e6, 1e9,
                           1e300, -1e300, kNan, kInfinite, -kInfinite);
}

plan::Interval odd_interval() {
  const double lo = *rc::gen::element(0.0, 1e-6, 0.5, 1.4, 1.4, 100.0);
  return {lo, lo + *rc::gen::element(0.0, 1e-9, 0.5, 0.5, 10.0)};
}

plan::Load odd_load() {
  plan::Load load;
  load.igniter = *rc::gen::element<std::uint16_t>(0, 0, 1);
  load.count = *rc::gen::element<std::uint16_t>(0, 1, 1, 1, 2, 3, 40, 65535);
  load.join = *rc::gen::element(plan::Join::series, plan::Join::parallel);
  load.wire = *rc::gen::element<std::uint16_t>(0, 1, plan::kNoWire);
  load.lead_m = *rc::gen::element(0.0, 0.0, 1e-9, 3.0, 30.0, 1e6);
  return load;
}

// Rails of one pin, rails with holes, lone pins far out; the layout as planned, longer, or none.
plan::Plan odd_plan() {
  plan::Plan plan;
  for (const char* name : {"A", "B"}) {
    plan.catalogue.igniters.push_back({name, odd_interval(), "test", {}, {}, {}, odd_interval()});
  }
  plan.catalogue.wires.push_back({"W", odd_interval(), 0.00393, "test"});
  plan.catalogue.wires.push_back({"zero", {0, 0}, 0, "test"});
  std::set<plan::PinId> ids;
  const auto pins = *rc::gen::inRange(0, 60);
  for (int i = 0; i < pins; ++i) {
    ids.insert({*rc::gen::element<std::uint16_t>(1, 1, 2, 3, 9999),
                *rc::gen::element<std::uint16_t>(1, 1, 2, 40),
                *rc::gen::element<std::uint16_t>(1, 2, 3, 4, 5, 6, 7, 8, 16, 9999)});
  }
  for (const plan::PinId id : ids) {
    plan::PlannedPin pin;
    pin.id = id;
    pin.load = odd_load();
    plan.pins.push_back(pin);
    if (*rc::gen::inRange(0, 4) == 0) continue;
    auto& rails = plan.layout.rails[id.module];
    if (rails.size() < id.rail) rails.resize(id.rail);
    rails[id.rail - 1U] = std::max(rails[id.rail - 1U], id.pin);
  }
  return plan;
}

tester::Model odd_tester() {
  tester::Model model;
  const auto odd = [] { return *rc::gen::element(0.0, 0.0, 1e-12, 0.01, 0.02, 1.0, 1e9); };
  model.accuracy_pct = odd();
  model.accuracy_ohm = odd();
  model.resolution_ohm = odd();
  model.noise_ohm = odd();
  model.range_ohm = odd();
  model.zero_ohm = odd();
  return model;
}

std::vector<Sample> odd_samples(const plan::Plan& plan) {
  std::vector<Sample> samples;
  const auto n = *rc::gen::inRange(0, 200);
  for (int i = 0; i < n; ++i) {
    Sample sample;
    if (!plan.pins.empty()) {
      sample.pin = plan.pins[*rc::gen::inRange<std::size_t>(0, plan.pins.size())].id;
    }
    if (*rc::gen::inRange(0, 8) == 0) sample.pin.pin = *rc::gen::arbitrary<std::uint16_t>();
    sample.ohm = odd_ohm();
    sample.over = *rc::gen::inRange(0, 5) == 0;
    const auto times = *rc::gen::element(1, 1, 2, 5);  // duplicates
    samples.insert(samples.end(), static_cast<std::size_t>(times), sample);
  }
  return samples;
}

bool is_number(const std::optional<double>& value) { return !value || std::isfinite(*value); }

void check(const plan::Plan& plan, const Outcome& out) {
  std::set<plan::PinId> seen;
  for (const match::PinVerdict& pin : out.pins) {
    RC_ASSERT(seen.insert(pin.pin).second);
    RC_ASSERT(pin.p_ok >= 0 && pin.p_ok <= 1 + 1e-9);
    RC_ASSERT(is_number(pin.ohm));
    if (pin.readings == 0) {
      RC_ASSERT(pin.verdict == match::Verdict::unread || pin.verdict == match::Verdict::stale);
    }
  }
  for (const plan::PlannedPin& pin : plan.pins) RC_ASSERT(seen.contains(pin.id));
  for (const match::Finding& finding : out.findings) {
    RC_LOG() << match::text(finding.kind) << ": " << finding.say << '\n';
    RC_ASSERT(finding.confidence >= 0 && finding.confidence <= 1 + 1e-9);
    RC_ASSERT(!finding.say.empty());
    RC_ASSERT(!finding.pins.empty());
    RC_ASSERT(finding.say.find("module 0") == std::string::npos);
    std::set<std::pair<std::uint16_t, std::uint16_t>> rails;
    for (const plan::PinId pin : finding.pins) rails.insert({pin.module, pin.rail});
    if (finding.kind == match::Kind::rails_exchanged) RC_ASSERT(rails.size() == 2U);
  }
}

RC_GTEST_PROP(Extremes, AnyPlanAnyTesterAnyReadings, ()) {
  const plan::Plan plan = odd_plan();
  const tester::Model tester = odd_tester();
  const std::vector<Sample> samples = odd_samples(plan);
  check(plan, match::diagnose(plan, tester, samples));
}

RC_GTEST_PROP(Extremes, AnyPlanWithASoundTester, ()) {
  const plan::Plan plan = odd_plan();
  const std::vector<Sample> samples = odd_samples(plan);
  const Outcome out = match::diagnose(plan, {}, samples);
  check(plan, out);
  // A current that nobody can work out is not told as one that is enough.
  for (const auto& loop : match::firing_currents(plan, match::measured_loops(out))) {
    RC_ASSERT(loop.word == match::FiringWord::cannot_be_told);
  }
}

RC_GTEST_PROP(Extremes, CoverageOfAnyPlan, ()) {
  const plan::Plan plan = odd_plan();
  for (const auto& kind : match::coverage(plan, {}).kinds) {
    RC_ASSERT(kind.share() >= 0 && kind.share() <= 1 + 1e-9);
  }
  for (const auto& group : match::alike(plan)) RC_ASSERT(group.size() >= 2);
}

TEST(Extremes, AValueBeyondAnyRangeIsNeverGood) {
  plan::Plan plan;
  plan.catalogue.igniters.push_back({"T", {1.5, 2.0}, "test", {}, {}, {}, {0, 0}});
  for (std::uint16_t p = 1; p <= 8; ++p) {
    plan::PlannedPin pin;
    pin.id = {1, 1, p};
    plan.pins.push_back(pin);
  }
  plan.layout.rails = {{1, {8}}};
  const double odd[] = {1e9, -1e9, 1e300, -0.5, kNan, kInfinite, 0};
  for (const double ohm : odd) {
    std::vector<Sample> samples;
    for (std::uint16_t p = 1; p <= 8; ++p) samples.push_back({{1, 1, p}, 1.75, false});
    samples[4].ohm = ohm;
    const Outcome out = match::diagnose(plan, {}, samples);
    EXPECT_NE(out.pins[4].verdict, match::Verdict::fits) << ohm;
    EXPECT_EQ(out.pins[3].verdict, match::Verdict::fits) << ohm;
    EXPECT_EQ(out.left_out, std::isfinite(ohm) ? 0U : 1U) << ohm;
  }
}

}  // namespace
}  // namespace walkdown
