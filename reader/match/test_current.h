// SPDX-License-Identifier: Apache-2.0
// Whether a tester may be connected to the igniters of a plan at all: the current it drives into a
// short against the lowest limit that applies. The most sensitive igniter of the plan decides, as
// any load may hang on any pin.
//
//   50 mA, the lesser of this and a share of the no-fire current: WAC 212-17-317(6)
//   1/10 of the no-fire current: 14 CFR 417, appendix D. The default share; WAC allows 20 %
//   test_max_a: the maker's own figure
//
// Local codes and the maker's sheet replace these; a site may lower the share.
#pragma once

#include <cstdint>
#include <string>

#include "reader/plan/plan.h"
#include "reader/result.h"
#include "reader/tester/model.h"

namespace walkdown::match {

inline constexpr double kMostTestA = 0.050;
inline constexpr double kNoFireShare = 0.10;

enum class CurrentWord : std::uint8_t {
  within,          // known, and not above the limit
  above,           // reading with this tester is refused
  cannot_be_told,  // a figure is missing; this never counts as within
};

struct TestCurrent {
  CurrentWord word = CurrentWord::cannot_be_told;
  double limit_a = kMostTestA;  // the lowest of those that are known
  std::string rule;             // which one that is, with the igniter's name
  std::string say;              // one sentence for the person
};

// `no_fire_share`: 0..1.
[[nodiscard]] TestCurrent judge_test_current(const plan::Plan& plan, const tester::Model& tester,
                                             double no_fire_share = kNoFireShare);

// Error (refused) where the tester is above the limit. Missing figures do not refuse: say the
// sentence of judge_test_current() before reading.
Done may_read(const plan::Plan& plan, const tester::Model& tester,
              double no_fire_share = kNoFireShare);

}  // namespace walkdown::match
