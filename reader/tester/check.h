// SPDX-License-Identifier: Apache-2.0
// The checksums that a line may carry after its last '*'.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

#include "reader/tester/profile.h"

namespace walkdown::tester {

// All bytes exclusive-or'ed (NMEA 0183). A leading '$' or '!' is left out, as there.
[[nodiscard]] std::uint8_t xor8(std::string_view bytes);

// Polynomial 0x8005 reflected, start 0xFFFF. "123456789" gives 0x4B37. Written as four hex digits,
// high byte first; on a Modbus wire the same number goes out low byte first.
[[nodiscard]] std::uint16_t crc16_modbus(std::string_view bytes);

// A line cut at its last '*'. `digits` is what follows it; no '*' gives the whole line and nothing.
struct Checked {
  std::string_view body;
  std::optional<std::string_view> digits;
};
[[nodiscard]] Checked split_check(std::string_view line);

// Do the digits (either case) state the checksum of the body? Wrong length or no hex: no.
[[nodiscard]] bool check_holds(Check check, const Checked& line);

}  // namespace walkdown::tester
