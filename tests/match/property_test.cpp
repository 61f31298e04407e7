// SPDX-License-Identifier: Apache-2.0
// Whatever comes in, a diagnosis comes out: no crash, no hang, no guess, and the same for the same
// readings in another order.
#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <set>

#include "reader/match/alike.h"
#include "reader/match/coverage.h"
#include "reader/match/diagnose.h"
#include "tests/match/simulator.h"

namespace walkdown {
namespace {

using match::Outcome;
using match::Sample;

// A line that repeats the one before is a sign of its own, which depends on the order: no two
// numbers are equal here.
void no_line_twice(std::vector<Sample>& samples) {
  for (std::size_t i = 0; i < samples.size(); ++i) {
    samples[i].ohm += 1e-5 * static_cast<double>(i % 601);
  }
}

simulated::Field drawn_field(std::size_t pins) {
  simulated::Setting setting;
  setting.style =
      *rc::gen::element(simulated::Style::mixed, simulated::Style::alike, simulated::Style::blocks);
  setting.seed = *rc::gen::inRange<std::uint64_t>(1, 1U << 30U);
  setting.pins = pins;
  setting.back_to_back = *rc::gen::arbitrary<bool>();
  auto field = simulated::simulate(setting);
  no_line_twice(field.samples);
  return field;
}

void check_sound(const plan::Plan& plan, const Outcome& out) {
  for (const match::PinVerdict& pin : out.pins) {
    RC_ASSERT(pin.p_ok >= 0 && pin.p_ok <= 1 + 1e-9);
    if (pin.readings == 0) RC_ASSERT(pin.verdict != match::Verdict::fits || !plan.find(pin.pin));
  }
  for (const match::Finding& finding : out.findings) {
    RC_ASSERT(finding.confidence >= 0 && finding.confidence <= 1 + 1e-9);
    RC_ASSERT(!finding.say.empty());
    RC_ASSERT(!finding.pins.empty());
    RC_ASSERT(std::is_sorted(finding.pins.begin(), finding.pins.end()));
  }
}

// Whole pins in another order.
RC_GTEST_PROP(DiagnoseProperty, TheOrderOfPinsDoesNotMatter, ()) {
  auto field = drawn_field(60);
  std::vector<std::vector<Sample>> by_pin;
  std::stable_sort(field.samples.begin(), field.samples.end(),
                   [](const Sample& a, const Sample& b) { return a.pin < b.pin; });
  for (const Sample& sample : field.samples) {
    if (by_pin.empty() || by_pin.back().front().pin != sample.pin) by_pin.emplace_back();
    by_pin.back().push_back(sample);
  }
  const auto flat = [&](bool backwards) {
    std::vector<Sample> out;
    const auto put = [&](const std::vector<Sample>& pin) {
      out.insert(out.end(), pin.begin(), pin.end());
    };
    if (backwards)
      std::for_each(by_pin.rbegin(), by_pin.rend(), put);
    else
      std::for_each(by_pin.begin(), by_pin.end(), put);
    return out;
  };
  const auto forward = flat(false);
  const auto backward = flat(true);
  const Outcome a = match::diagnose(field.plan, field.tester, forward);
  const Outcome b = match::diagnose(field.plan, field.tester, backward);
  RC_ASSERT(a.pins.size() == b.pins.size());
  for (std::size_t i = 0; i < a.pins.size(); ++i) RC_ASSERT(a.pins[i].verdict == b.pins[i].verdict);
  RC_ASSERT(a.findings.size() == b.findings.size());
  for (std::size_t i = 0; i < a.findings.size(); ++i) {
    RC_ASSERT(a.findings[i].kind == b.findings[i].kind);
    RC_ASSERT(a.findings[i].pins == b.findings[i].pins);
  }
}

RC_GTEST_PROP(DiagnoseProperty, AnyReadingsOfAnyPins, ()) {
  auto field = drawn_field(40);
  std::vector<Sample> samples;
  const auto n = *rc::gen::inRange<std::size_t>(0, 300);
  for (std::size_t i = 0; i < n; ++i) {
    Sample sample = field.samples[*rc::gen::inRange<std::size_t>(0, field.samples.size())];
    switch (*rc::gen::inRange(0, 6)) {
      case 0:
        sample.pin = {*rc::gen::arbitrary<std::uint16_t>(), *rc::gen::arbitrary<std::uint16_t>(),
                      *rc::gen::arbitrary<std::uint16_t>()};
        break;
      case 1:
        sample.ohm = *rc::gen::arbitrary<double>();
        break;
      case 2:
        sample.over = !sample.over;
        break;
      default:
        break;
    }
    samples.push_back(sample);
  }
  check_sound(field.plan, match::diagnose(field.plan, field.tester, samples));
}

// Half of the rails are never read: nothing is found on them, and they stay unread.
RC_GTEST_PROP(DiagnoseProperty, MissingRailsAreUnreadAndNotGuessedAt, ()) {
  auto field = drawn_field(80);
  std::erase_if(field.samples, [](const Sample& s) { return s.pin.rail % 2 == 0; });
  const Outcome out = match::diagnose(field.plan, field.tester, field.samples);
  check_sound(field.plan, out);
  for (const match::PinVerdict& pin : out.pins) {
    if (pin.pin.rail % 2 == 0) RC_ASSERT(pin.verdict == match::Verdict::unread);
  }
  for (const match::Finding& finding : out.findings) {
    if (finding.pins.size() == 1) RC_ASSERT(finding.pins[0].rail % 2 == 1);
  }
}

// A swap of two pins with equal loads changes nothing: nothing more is found, and the two are
// listed as alike.
RC_GTEST_PROP(DiagnoseProperty, AnInvisibleMistakeIsNotFoundAndItsPinsAreAlike, ()) {
  simulated::Setting setting;
  setting.style = simulated::Style::blocks;
  setting.seed = *rc::gen::inRange<std::uint64_t>(1, 1U << 30U);
  setting.pins = 60;
  setting.fault_scale = setting.move_scale = 0;
  auto field = simulated::simulate(setting);
  no_line_twice(field.samples);
  const auto groups = match::alike(field.plan);
  RC_PRE(!groups.empty());
  auto samples = field.samples;
  const auto& group = *rc::gen::elementOf(groups);
  for (Sample& sample : samples) {
    if (sample.pin == group.front())
      sample.pin = group.back();
    else if (sample.pin == group.back())
      sample.pin = group.front();
  }
  const auto before = match::diagnose(field.plan, field.tester, field.samples).findings.size();
  RC_ASSERT(match::diagnose(field.plan, field.tester, samples).findings.size() == before);
}

TEST(DiagnoseEdge, OnePinAndManyModules) {
  plan::Plan plan;
  plan.catalogue.igniters.push_back({"T", {1.5, 2.0}, "test", {}, {}, {}, {0, 0}});
  plan::PlannedPin pin;
  pin.id = {1, 1, 1};
  plan.pins = {pin};
  plan.layout.rails = {{1, {1}}};
  const std::vector<Sample> one = {{{1, 1, 1}, 1.8, false}};
  EXPECT_EQ(match::diagnose(plan, {}, one).pins.size(), 1U);
  EXPECT_FALSE(match::coverage(plan, {}).kinds.empty());
  plan.pins.clear();
  plan.layout.rails.clear();
  std::vector<Sample> samples;
  for (std::uint16_t m = 1; m <= 9999; ++m) {
    pin.id = {m, 1, 1};
    plan.pins.push_back(pin);
    plan.layout.rails[m] = {1};
    samples.push_back({pin.id, 1.7 + 0.0001 * (m % 7), m % 11 == 0});
  }
  const Outcome out = match::diagnose(plan, {}, samples);
  EXPECT_EQ(out.pins.size(), 9999U);
  for (const match::Finding& finding : out.findings) {
    EXPECT_FALSE(match::moves_loads(finding.kind));
  }
}

}  // namespace
}  // namespace walkdown
