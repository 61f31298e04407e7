// SPDX-License-Identifier: Apache-2.0
// Mistakes on top of each other: the later one was taken with the earlier one in place, and may
// have made it idle.
#pragma once

#include <cstddef>

#include "reader/match/hypothesis.h"

namespace walkdown::match {

// Drops every mistake that shares a slot with another, alone or together with that one, where the
// rest explains the field better.
void simplify(Hypothesis& held);

// Nats that mistake `i` saves among the others, as they are now.
[[nodiscard]] double worth(Hypothesis& held, std::size_t i);

}  // namespace walkdown::match
