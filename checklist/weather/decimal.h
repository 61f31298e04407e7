// SPDX-License-Identifier: Apache-2.0
// Exact decimal text to whole numbers. The locale never matters and nothing is rounded but once.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

namespace walkdown::weather {

// "12.4" -> 12400: plain decimal digits, at most one point, at most 9 digits before it. Digits
// beyond the third decimal are rounded half up. Empty for a sign, an exponent or anything else.
[[nodiscard]] std::optional<std::int64_t> milli(std::string_view text);

// value * numerator / denominator, rounded half up; value >= 0, denominator > 0.
[[nodiscard]] std::int64_t scaled(std::int64_t value, std::int64_t numerator,
                                  std::int64_t denominator);

}  // namespace walkdown::weather
