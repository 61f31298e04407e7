// SPDX-License-Identifier: Apache-2.0
#include "reader/trainer/fault_kind.h"

#include <array>

namespace walkdown::trainer {
namespace {

constexpr std::array<std::string_view, 18> kWords{"",
                                                  "open",
                                                  "short",
                                                  "missing-igniter",
                                                  "extra-igniter",
                                                  "poor-joint",
                                                  "leak",
                                                  "intermittent",
                                                  "stray",
                                                  "wrong-lead",
                                                  "wrong-igniter",
                                                  "swapped",
                                                  "shifted",
                                                  "reversed",
                                                  "rails-exchanged",
                                                  "modules-exchanged",
                                                  "tester-offset",
                                                  "wire-differs"};

}  // namespace

std::string_view word(FaultKind kind) { return kWords.at(static_cast<std::size_t>(kind)); }

std::optional<FaultKind> fault_kind(std::string_view word) {
  for (std::size_t i = 1; i < kWords.size(); ++i) {
    if (kWords.at(i) == word) return static_cast<FaultKind>(i);
  }
  return std::nullopt;
}

}  // namespace walkdown::trainer
