// SPDX-License-Identifier: Apache-2.0
// What is wrong with the field as a whole, taken out before the pins are judged: leads not zeroed,
// another wire, another igniter throughout, or a field that does not answer at all.
//
// Each is weighed against "nothing of the kind" by the mixture's cost over the field, before
// anything is moved; diagnose() weighs it once more against moved loads, which in a small field
// look alike. In a field of equal loads an offset, another wire and another igniter are one number:
// then the finding says so, and no pin counts as good until the cause is known.
#pragma once

#include <memory>
#include <optional>
#include <span>

#include "reader/match/diagnose.h"
#include "reader/match/mixture.h"
#include "reader/match/outcome.h"
#include "reader/match/verdict.h"

namespace walkdown::match {

// Below this confidence in a cause of the whole field no pin counts as good.
inline constexpr double kSure = 0.8;

struct FieldWide {
  SpecTable table;  // as it is after what was found
  Shared shared;
  FieldShift shift;  // for the bands
  std::optional<Finding> finding;
  double price = 0;     // nats: of the finding's prior
  bool silent = false;  // more than half of the field is over range: explaining pins is idle
};

[[nodiscard]] FieldWide judge_field(const plan::Plan& plan, const tester::Model& tester,
                                    const Field& field, SpecTable table,
                                    std::span<const Sample> samples, const Priors& priors);

// The same field with nothing wrong as a whole.
[[nodiscard]] FieldWide nothing_wide(const plan::Plan& plan, const tester::Model& tester,
                                     const Field& field, SpecTable table);

}  // namespace walkdown::match
