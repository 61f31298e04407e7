// SPDX-License-Identifier: Apache-2.0
// Numbers as people type them into a table. The locale never matters.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

namespace walkdown::plan {

// Spaces, tabs and no-break spaces off both ends.
[[nodiscard]] std::string_view trimmed(std::string_view text);

// "2.5", "-0.5", "3", "1e3"; with `comma` also "2,5". The whole text, finite; no thousands marks.
[[nodiscard]] std::optional<double> parse_decimal(std::string_view text, bool comma);

// Digits only, from 0 to `most`.
[[nodiscard]] std::optional<std::uint16_t> parse_count(std::string_view text, std::uint16_t most);

}  // namespace walkdown::plan
