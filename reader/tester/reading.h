// SPDX-License-Identifier: Apache-2.0
// One value of one pin, as a tester sent it.
#pragma once

#include <cstdint>
#include <optional>

#include "reader/plan/pin.h"

namespace walkdown::tester {

// `micro_ohm` is exact: it is the decimal text of the line, scaled, never a rounded double.
// The tester's zero is not yet taken off. Range: -1e9 .. 1e15 micro-ohm.
struct Reading {
  plan::PinId pin;
  bool over = false;  // above the tester's range; micro_ohm is then 0
  std::int64_t micro_ohm = 0;
  std::optional<std::uint64_t> seq;  // the tester's own line number, where its lines carry one

  [[nodiscard]] double ohm() const { return static_cast<double>(micro_ohm) * 1e-6; }
};

}  // namespace walkdown::tester
