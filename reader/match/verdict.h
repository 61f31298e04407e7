// SPDX-License-Identifier: Apache-2.0
// The verdict of each pin, once it is known what the field has in common and what was moved.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "reader/match/diagnose.h"
#include "reader/match/state.h"

namespace walkdown::match {

struct Judged {
  std::vector<PinVerdict> pins;     // sorted by pin
  std::vector<std::uint32_t> slot;  // of each of them
};

// `stale`: slot -> its readings do not count. `offset_ohm` was found to be in every reading and
// `lead_factor` in all wire, beyond what plan and tester allow: both go into the bands.
struct FieldShift {
  double offset_ohm = 0;
  double lead_factor = 1;
  bool doubt_all = false;                        // nothing read in this field can be believed yet
  std::optional<std::uint16_t> doubted_igniter;  // every load of this type is another
};

[[nodiscard]] Judged judge(const plan::Plan& plan, const tester::Model& tester, const Field& field,
                           const Mixture& mixture, const State& state,
                           std::span<const Sample> samples, const std::vector<bool>& stale,
                           const FieldShift& shift);

}  // namespace walkdown::match
