// SPDX-License-Identifier: Apache-2.0
// The line form used when a profile names none. templates/testers/addressed-lines.toml states the
// same, for people to copy; a test holds the two together.
#pragma once

#include <array>
#include <string_view>

namespace walkdown::tester {

// The value is taken loosely and judged afterwards, so that a bad one is told as what it is. The
// unit is required, so that a line which was cut off inside its value can never pass.
inline constexpr std::string_view kDefaultLine =
    R"((?i)M(?P<module>\d+)[ ]*[,;\t][ ]*R(?P<rail>\d+)[ ]*[,;\t][ ]*P(?P<pin>\d+)[ ]*[,;\t][ ]*)"
    R"((?P<value>[^;\t]+?)[ ]*[,;\t][ ]*(?P<unit>[kmµμ]?(?:ohms?|Ω|Ω)))"
    R"((?:[ ]*[,;\t][ ]*(?P<seq>\d+))?)";

inline constexpr std::array<std::string_view, 11> kDefaultOver{
    "OL", "O.L", "0L", "0.L", "OL.", ".OL", "OVER", "OVLD", "OVERLOAD", "OPEN", "INF"};

}  // namespace walkdown::tester
