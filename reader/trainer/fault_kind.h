// SPDX-License-Identifier: Apache-2.0
// What can be put wrong in the simulated field, in the words that findings use.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

namespace walkdown::trainer {

enum class FaultKind : std::uint8_t {
  none,
  // of one load; it goes where the load goes
  open,
  short_circuit,
  missing_igniter,
  extra_igniter,
  poor_joint,
  leak,
  intermittent,
  stray,
  wrong_lead,
  wrong_igniter,
  // of where loads hang
  swapped,
  shifted,
  reversed,
  rails_exchanged,
  modules_exchanged,
  // of the whole field
  tester_offset,
  wire_differs,
};

// "poor-joint", "short", ...; empty for none.
[[nodiscard]] std::string_view word(FaultKind kind);
[[nodiscard]] std::optional<FaultKind> fault_kind(std::string_view word);
[[nodiscard]] constexpr bool is_of_one_load(FaultKind kind) {
  return kind >= FaultKind::open && kind <= FaultKind::wrong_igniter;
}

}  // namespace walkdown::trainer
