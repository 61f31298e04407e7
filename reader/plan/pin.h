// SPDX-License-Identifier: Apache-2.0
// The address of one pin: module, rail, pin, each counted from 1.
#pragma once

#include <compare>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>

namespace walkdown::plan {

inline constexpr std::uint16_t kMaxModule = 9999;
inline constexpr std::uint16_t kMaxRail = 9999;
inline constexpr std::uint16_t kMaxPin = 9999;

struct PinId {
  std::uint16_t module = 0;
  std::uint16_t rail = 0;
  std::uint16_t pin = 0;

  friend constexpr auto operator<=>(const PinId&, const PinId&) = default;
};

// "M01/R1/P05": at least two digits for module and pin.
[[nodiscard]] std::string text(PinId pin);

// Reads what text() writes, and any number of leading zeros. Nothing else is taken.
[[nodiscard]] std::optional<PinId> parse_pin(std::string_view text);

// A number of one part of an address: "7", "07", "M07" with letter 'M' (either case); 1..9999.
[[nodiscard]] std::optional<std::uint16_t> parse_part(std::string_view text, char letter);

// Order-preserving key, for sorting and hashing.
[[nodiscard]] constexpr std::uint64_t key(PinId pin) {
  return (std::uint64_t{pin.module} << 32U) | (std::uint64_t{pin.rail} << 16U) | pin.pin;
}

}  // namespace walkdown::plan

template <>
struct std::hash<walkdown::plan::PinId> {
  std::size_t operator()(walkdown::plan::PinId pin) const noexcept {
    return std::hash<std::uint64_t>{}(walkdown::plan::key(pin) * 0x9E3779B97F4A7C15U);
  }
};
