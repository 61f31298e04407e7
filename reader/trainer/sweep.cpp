// SPDX-License-Identifier: Apache-2.0
#include "reader/trainer/sweep.h"

#include "reader/trainer/lines.h"

namespace walkdown::trainer {

std::vector<std::string> sweep(Field& field, std::span<const plan::PinId> pins, SweepForm& form) {
  std::vector<std::string> lines;
  lines.reserve(pins.size() * form.times);
  for (unsigned time = 0; time < form.times; ++time) {
    for (const plan::PinId pin : pins) {
      const auto reading = field.read(pin);
      if (!reading) continue;
      LineForm how;
      how.check = form.check;
      if (form.numbered) how.seq = form.next_seq++;
      lines.push_back(line(*reading, how));
    }
  }
  return lines;
}

}  // namespace walkdown::trainer
