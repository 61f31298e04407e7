// SPDX-License-Identifier: Apache-2.0
#include "checklist/desk/slept.h"

#include <ctime>

namespace walkdown::desk {
namespace {

std::int64_t clock_ms(clockid_t clock) {
  timespec at{};
  clock_gettime(clock, &at);
  return std::int64_t{at.tv_sec} * 1000 + at.tv_nsec / 1'000'000;
}

}  // namespace

std::int64_t system_slept_ms() { return clock_ms(CLOCK_BOOTTIME) - clock_ms(CLOCK_MONOTONIC); }

}  // namespace walkdown::desk
