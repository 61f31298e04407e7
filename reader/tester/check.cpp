// SPDX-License-Identifier: Apache-2.0
#include "reader/tester/check.h"

#include <array>
#include <charconv>
#include <cstddef>

namespace walkdown::tester {
namespace {

constexpr std::array<std::uint16_t, 256> make_crc_table() {
  std::array<std::uint16_t, 256> table{};
  for (std::size_t i = 0; i < table.size(); ++i) {
    auto crc = static_cast<unsigned>(i);
    for (int bit = 0; bit < 8; ++bit) crc = (crc & 1U) != 0 ? (crc >> 1U) ^ 0xA001U : crc >> 1U;
    table[i] = static_cast<std::uint16_t>(crc);
  }
  return table;
}

constexpr std::array<std::uint16_t, 256> kCrcTable = make_crc_table();

std::optional<unsigned> hex(std::string_view digits, std::size_t length) {
  if (digits.size() != length) return std::nullopt;
  unsigned value = 0;
  const char* end = digits.data() + digits.size();
  const auto [stop, error] = std::from_chars(digits.data(), end, value, 16);
  if (error != std::errc{} || stop != end) return std::nullopt;
  return value;
}

}  // namespace

std::uint8_t xor8(std::string_view bytes) {
  if (!bytes.empty() && (bytes.front() == '$' || bytes.front() == '!')) bytes.remove_prefix(1);
  unsigned sum = 0;
  for (const char c : bytes) sum ^= static_cast<unsigned char>(c);
  return static_cast<std::uint8_t>(sum);
}

std::uint16_t crc16_modbus(std::string_view bytes) {
  unsigned crc = 0xFFFFU;
  for (const char c : bytes) {
    crc = (crc >> 8U) ^ kCrcTable[(crc ^ static_cast<unsigned char>(c)) & 0xFFU];
  }
  return static_cast<std::uint16_t>(crc);
}

Checked split_check(std::string_view line) {
  const std::size_t star = line.rfind('*');
  if (star == std::string_view::npos) return {line, std::nullopt};
  return {line.substr(0, star), line.substr(star + 1)};
}

bool check_holds(Check check, const Checked& line) {
  if (check == Check::none || !line.digits) return false;
  if (check == Check::xor8) return hex(*line.digits, 2) == xor8(line.body);
  return hex(*line.digits, 4) == crc16_modbus(line.body);
}

}  // namespace walkdown::tester
