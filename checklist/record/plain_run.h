// SPDX-License-Identifier: Apache-2.0
// How far a text goes on without a byte that JSON must escape inside a string.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <cstring>
#include <string_view>

namespace walkdown::record {

// Bytes that end the plain run of a string: quote, backslash, and what must not stand there raw.
inline constexpr std::array<bool, 256> kStops = [] {
  std::array<bool, 256> stops{};
  for (std::size_t i = 0; i < 0x20; ++i) stops[i] = true;
  stops['"'] = stops['\\'] = true;
  return stops;
}();

// Whether none of eight bytes ends the plain run of a string.
inline bool is_plain_block(const char* text) {
  constexpr std::uint64_t kOnes = 0x0101010101010101, kHigh = 0x8080808080808080;
  std::uint64_t block = 0;
  std::memcpy(&block, text, sizeof block);
  const auto has_zero = [](std::uint64_t bytes) { return (bytes - kOnes) & ~bytes & kHigh; };
  const std::uint64_t control = (block - kOnes * 0x20) & ~block & kHigh;
  return (control | has_zero(block ^ kOnes * '"') | has_zero(block ^ kOnes * '\\')) == 0;
}

// Where the plain run that begins at `at` ends.
inline std::size_t plain_run(std::string_view text, std::size_t at) {
  while (at + 8 <= text.size() && is_plain_block(text.data() + at)) at += 8;
  while (at < text.size() && !kStops[static_cast<unsigned char>(text[at])]) ++at;
  return at;
}

}  // namespace walkdown::record
