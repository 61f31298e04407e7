// SPDX-License-Identifier: Apache-2.0
// A walk of the simulated tester over pins, as the lines it would send.
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "reader/plan/pin.h"
#include "reader/trainer/field.h"

namespace walkdown::trainer {

struct SweepForm {
  unsigned times = 1;    // readings of each pin, one sweep after the other
  bool check = true;     // "*hh" behind each line
  bool numbered = true;  // a line number in each line, from `next_seq` on
  std::uint64_t next_seq = 1;
};

// In the order of `pins`; pins that the layout does not have are passed over. `form.next_seq` is
// moved on.
[[nodiscard]] std::vector<std::string> sweep(Field& field, std::span<const plan::PinId> pins,
                                             SweepForm& form);

}  // namespace walkdown::trainer
