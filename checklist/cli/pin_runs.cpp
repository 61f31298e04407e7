// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/pin_runs.h"

#include <fmt/format.h>

namespace walkdown::cli {
namespace {

bool same_rail(plan::PinId a, plan::PinId b) { return a.module == b.module && a.rail == b.rail; }

std::size_t run_end(std::span<const plan::PinId> pins, std::size_t begin) {
  std::size_t end = begin + 1;
  while (end < pins.size() && same_rail(pins[end - 1], pins[end]) &&
         pins[end].pin == pins[end - 1].pin + 1) {
    ++end;
  }
  return end;
}

}  // namespace

std::string pin_runs(std::span<const plan::PinId> pins, std::size_t most) {
  std::string out;
  std::size_t written = 0;
  for (std::size_t i = 0; i < pins.size();) {
    if (written == most) return out + fmt::format(" and {} more", pins.size() - i);
    const std::size_t end = run_end(pins, i);
    if (i > 0) out += ", ";
    out += i > 0 && same_rail(pins[i - 1], pins[i]) ? fmt::format("P{:02}", pins[i].pin)
                                                    : plan::text(pins[i]);
    if (end - i > 1) out += fmt::format("-P{:02}", pins[end - 1].pin);
    i = end;
    ++written;
  }
  return out;
}

}  // namespace walkdown::cli
