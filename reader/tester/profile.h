// SPDX-License-Identifier: Apache-2.0
// A tester profile: how its port is set, how its lines look, and what it is as an instrument.
// Read from TOML; FORMAT.md beside this file has every key. A crew writes one per kind of meter.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "reader/result.h"
#include "reader/tester/model.h"

namespace walkdown::tester {

enum class Parity : std::uint8_t { none, even, odd, mark, space };

struct PortSettings {
  int baud = 9600;  // 50..4,000,000
  int bits = 8;     // 5..8
  Parity parity = Parity::none;
  int stop = 1;  // 1 or 2
};

// Written after the last '*' of a line, over all bytes before it. FORMAT.md tells both forms.
enum class Check : std::uint8_t { none, xor8, crc16_modbus };

struct Profile {
  PortSettings port;
  std::string line;  // an RE2 pattern; it has been compiled once and does compile
  Check check = Check::none;
  bool check_optional = false;    // take a line without a checksum; a wrong one is never taken
  std::vector<std::string> over;  // tokens that mean above range, compared without case
  Model model;
};

inline constexpr std::size_t kMaxProfileBytes = 1U << 20U;
inline constexpr std::size_t kMaxPatternBytes = 4096;

// Keys that are left out keep the default: the line, check and over tokens of
// templates/testers/addressed-lines.toml as far as `line` is not given, and Model's figures.
// Error (bad_input): lists every mistake at once, each with its line; `file_name` names the file.
[[nodiscard]] Result<Profile> read_profile(std::string_view toml, std::string_view file_name);

// The profile used when none is named: an empty profile file.
[[nodiscard]] Profile default_profile();

}  // namespace walkdown::tester
