// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

namespace walkdown::check::test {

// A small but whole day, as the bytes of its record: set up, read, a fault mended, a key that goes
// from hand to hand, a hold, a release, and readings after the last signature. Made once a
// program; station() of tests/record signs it.
[[nodiscard]] const std::string& the_day();

// A day whose one open pin was waived by the lead and countersigned, and that was released so.
[[nodiscard]] const std::string& the_waived_day();

}  // namespace walkdown::check::test
