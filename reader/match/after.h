// SPDX-License-Identifier: Apache-2.0
// After the show: what the readings of a sweep say of each pin that was to fire.
//
// A pin that still reads its load did not fire. An open pin proves nothing: the current may have
// gone through, and the effect still not have worked. So no word here says "fired".
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "reader/match/sample.h"
#include "reader/plan/plan.h"
#include "reader/tester/model.h"

namespace walkdown::match {

enum class AfterWord : std::uint8_t {
  did_not_fire,   // reads its load as before: live
  some_left,      // a parallel group reads as a part of its igniters: live
  treat_as_live,  // a number that is neither: residue, damage, a leak, a shunt
  open,           // over range after it fitted before: no proof that the effect worked
  open_series,    // over range, two or more in series: one at least went, the others unknown
  no_statement,   // over range before and after, or not read before
  unread,         // no reading: treat as live
};

// "did-not-fire", "some-left", "treat-as-live", "open", "open-series", "no-statement", "unread".
[[nodiscard]] std::string_view text(AfterWord word);

struct AfterPin {
  plan::PinId pin;
  AfterWord word = AfterWord::unread;
  std::optional<double> before_ohm;  // median of numbers; zero taken off
  std::optional<double> after_ohm;
  unsigned left = 0;  // some_left: igniters that are left, most likely
  double p_live = 1;  // probability that an igniter of this pin did not fire
  std::string say;    // what to do, one sentence
};

struct After {
  std::vector<AfterPin> pins;                  // every planned load, sorted by pin
  std::vector<plan::PinId> possible_misfires;  // for the lead: all that is not plainly open
};

// `before`: readings of the last sweep before the show; may be empty, then nothing can be said of
// an open pin. Rates behind p_live (0.5 % misfires, cut cables on 3 % of those, residue on 2.5 %
// and fused leads on 0.5 % of the fired): common practice, no source.
[[nodiscard]] After after_show(const plan::Plan& plan, const tester::Model& tester,
                               std::span<const Sample> before, std::span<const Sample> after);

}  // namespace walkdown::match
