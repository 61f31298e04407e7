// SPDX-License-Identifier: Apache-2.0
// Why a pin reads what it reads.
#pragma once

#include <array>
#include <cstddef>

namespace walkdown::match {

enum class Cause : std::size_t {
  sound,
  open,
  shorted,
  missing,
  extra,
  poor_joint,
  leak,
  intermittent,
  wrong_igniter,
  wrong_lead,
  repeated,   // the tester sent the line before once more: nothing is known of the pin
  unplanned,  // somebody's load where none is planned
  unknown,
};
inline constexpr std::size_t kCauses = 13;

// Probability of each cause; adds to 1.
using Posterior = std::array<double, kCauses>;

// Rate times likelihood of each cause.
using Weights = std::array<double, kCauses>;

[[nodiscard]] inline double& at(Weights& w, Cause cause) {
  return w[static_cast<std::size_t>(cause)];
}

}  // namespace walkdown::match
