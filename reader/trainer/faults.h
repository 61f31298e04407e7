// SPDX-License-Identifier: Apache-2.0
// The fault script: what to put wrong in a simulated field, as TOML. FORMAT.md has every key.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "reader/plan/plan.h"
#include "reader/result.h"
#include "reader/trainer/fault_kind.h"
#include "reader/trainer/field.h"

namespace walkdown::trainer {

// Only what the kind needs is filled.
struct Fault {
  FaultKind kind = FaultKind::none;
  std::vector<plan::PinId> pins;       // one; two for swapped
  std::vector<RailId> rails;           // one for shifted and reversed, two for rails_exchanged
  std::vector<std::uint16_t> modules;  // two
  std::uint16_t first = 0;             // the block of shifted
  std::uint16_t last = 0;
  int by = 0;
  double amount = 0;     // ohm, or a factor for wrong_lead and wire_differs
  std::string igniter;   // for wrong_igniter and stray; empty: another than planned
  std::size_t line = 0;  // of the script; 0 for one that was drawn
};

inline constexpr std::size_t kMaxScriptBytes = 1U << 20U;

// Error (bad_input): every mistake of the file with its line.
[[nodiscard]] Result<std::vector<Fault>> read_faults(std::string_view toml,
                                                     std::string_view file_name);

// First the faults of single loads, then the moves, in the order of the list: so every pin that a
// load fault names is the pin that the load is planned for. Error: names the line that the plan
// does not allow; faults before it have then been made.
[[nodiscard]] Done apply_faults(const std::vector<Fault>& faults, Field& field);

// A plausible evening: about one load fault in thirty pins, and one move in a hundred and fifty.
[[nodiscard]] std::vector<Fault> random_faults(const plan::Plan& plan, std::uint64_t seed);

}  // namespace walkdown::trainer
