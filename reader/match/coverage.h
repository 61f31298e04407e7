// SPDX-License-Identifier: Apache-2.0
// What this test of this plan can show, and what it cannot: from plan and tester alone, before a
// single reading is taken.
//
// A mistake counts as shown when, with probability 0.95 or more, either a pin that it touches does
// not fit, or the mistake itself is named. It is invisible when it changes no pin electrically: no
// meter can ever show it.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "reader/match/diagnose.h"

namespace walkdown::match {

// Single mistakes of one kind on this plan.
struct KindCoverage {
  Kind kind = Kind::swapped;
  std::string what;  // "neighbours swapped", "two pins of a module swapped", ...
  std::size_t possible = 0;
  double shown = 0;  // of them; estimated where `weighed` is smaller than `possible`
  double invisible = 0;
  std::size_t weighed = 0;  // looked at one by one: all, or an even sample

  [[nodiscard]] double share() const {
    return possible == 0 ? 0 : shown / static_cast<double>(possible);
  }
};

// What one load lets through. Pins of one spec share it.
struct LoadCoverage {
  plan::PinId example;
  std::size_t pins = 0;
  double least_joint_ohm = 0;   // the smallest poor joint shown at 95 %
  double largest_leak_ohm = 0;  // the largest leak shown at 95 %; 0 where none is
  double missing_shown = 0;     // share of cases in which a missing igniter shows; 1 if n/a
};

struct Coverage {
  std::vector<KindCoverage> kinds;
  std::vector<LoadCoverage> loads;             // by pins, most first; at most 200
  std::vector<std::vector<plan::PinId>> hard;  // neighbours, not alike, whose swap does not show
  std::vector<std::string> advice;  // sentences; what raises the coverage most comes first
};

struct CoverageOptions {
  unsigned readings = 2;             // of each pin
  std::size_t most_weighed = 20000;  // swaps looked at one by one; beyond, an even sample
  Priors priors;
};

// Work: about half a second for 24,000 pins. An empty plan gives kinds with nothing possible.
[[nodiscard]] Coverage coverage(const plan::Plan& plan, const tester::Model& tester,
                                const CoverageOptions& options = {});

}  // namespace walkdown::match
