// SPDX-License-Identifier: Apache-2.0
#include "reader/tester/value.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace walkdown::tester {
namespace {

constexpr int kMaxDigits = 18;
constexpr std::int64_t kMaxMicro = 1'000'000'000'000'000;
constexpr std::int64_t kMinMicro = -1'000'000'000;

bool is_digit(char c) { return c >= '0' && c <= '9'; }

// Reads the digits and the decimal sign; leaves `text` at what follows. False without any digit.
bool take_mantissa(std::string_view& text, Decimal& out) {
  int kept = 0;
  bool any = false;
  bool fraction = false;
  std::size_t i = 0;
  for (; i < text.size(); ++i) {
    const char c = text[i];
    if ((c == '.' || c == ',') && !fraction) {
      fraction = true;
      continue;
    }
    if (!is_digit(c)) break;
    any = true;
    if (kept < kMaxDigits) {
      out.digits = out.digits * 10 + static_cast<unsigned>(c - '0');
      kept += out.digits != 0 ? 1 : 0;
      out.exponent -= fraction ? 1 : 0;
    } else {
      out.exponent += fraction ? 0 : 1;
    }
  }
  text.remove_prefix(i);
  return any;
}

// Reads 'e' or 'E' and a whole number, to the end of the text.
bool take_exponent(std::string_view text, Decimal& out) {
  if (text.empty()) return true;
  if (text.front() != 'e' && text.front() != 'E') return false;
  text.remove_prefix(1);
  if (!text.empty() && text.front() == '+') {
    text.remove_prefix(1);
    if (!text.empty() && text.front() == '-') return false;
  }
  int exponent = 0;
  const char* end = text.data() + text.size();
  const auto [stop, error] = std::from_chars(text.data(), end, exponent);
  if (error != std::errc{} || stop != end || exponent < -9999 || exponent > 9999) return false;
  out.exponent += exponent;
  return true;
}

// -1, 0, 1 as digits * 10^exponent compares with mantissa * 10^power, where 1000 <= mantissa <
// 10000.
bool at_least(const Decimal& value, std::uint64_t mantissa, int power) {
  std::uint64_t digits = value.digits;
  if (digits == 0) return false;
  int exponent = value.exponent;
  std::uint64_t scaled = mantissa;
  while (digits < 100'000'000'000'000'000U) {
    digits *= 10;
    --exponent;
  }
  while (scaled < 100'000'000'000'000'000U) {
    scaled *= 10;
    --power;
  }
  return exponent != power ? exponent > power : digits >= scaled;
}

// SCPI-99: 9.9E37 is overload and 9.91E37 is not a number; halfway lies 9.905E37.
Numeral judge(const Decimal& value) {
  if (value.exponent < 18) return Numeral::number;  // 18 digits more cannot reach 1e37
  if (!at_least(value, 9800, 34)) return Numeral::number;
  const bool is_nan = at_least(value, 9905, 34) && !at_least(value, 9915, 34);
  return is_nan ? Numeral::nan : Numeral::overflow;
}

struct Prefix {
  std::string_view text;
  int exponent;
};
constexpr std::array<Prefix, 9> kPrefixes{{{"k", 3},
                                           {"K", 3},
                                           {"m", -3},
                                           {"M", 6},
                                           {"G", 9},
                                           {"u", -6},
                                           {"\xC2\xB5", -6},  // U+00B5 micro sign
                                           {"\xCE\xBC", -6},  // U+03BC Greek small mu
                                           {"", 0}}};

bool same_but_case(std::string_view text, std::string_view lower) {
  return std::equal(text.begin(), text.end(), lower.begin(), lower.end(), [](char a, char b) {
    return (a >= 'A' && a <= 'Z' ? static_cast<char>(a - 'A' + 'a') : a) == b;
  });
}

bool is_ohm(std::string_view word) {
  return same_but_case(word, "ohm") || same_but_case(word, "ohms") || word == "\xCE\xA9" ||
         word == "\xE2\x84\xA6";
}

}  // namespace

Decimal parse_decimal(std::string_view text) {
  Decimal out;
  if (!text.empty() && (text.front() == '+' || text.front() == '-')) {
    out.negative = text.front() == '-';
    text.remove_prefix(1);
  }
  if (!take_mantissa(text, out) || !take_exponent(text, out)) return {};
  out.kind = judge(out);
  return out;
}

std::optional<int> unit_exponent(std::string_view unit) {
  if (unit.empty()) return 0;
  for (const Prefix& prefix : kPrefixes) {
    if (unit.starts_with(prefix.text) && is_ohm(unit.substr(prefix.text.size()))) {
      return prefix.exponent;
    }
  }
  return std::nullopt;
}

std::optional<std::int64_t> micro_ohm(const Decimal& value, int unit_exponent) {
  std::uint64_t digits = value.digits;
  int power = value.exponent + unit_exponent + 6;
  for (; power > 0 && digits != 0; --power) {
    if (digits > static_cast<std::uint64_t>(kMaxMicro)) return std::nullopt;
    digits *= 10;
  }
  std::uint64_t dropped = 0;
  for (; power < 0 && (digits != 0 || dropped != 0); ++power) {
    dropped = digits % 10;
    digits /= 10;
  }
  // The last digit dropped alone decides half away from zero; none dropped leaves 0.
  if (power == 0 && dropped >= 5) ++digits;
  if (digits > static_cast<std::uint64_t>(kMaxMicro)) return std::nullopt;
  const auto size = static_cast<std::int64_t>(digits);
  const std::int64_t micro = value.negative ? -size : size;
  return micro < kMinMicro ? std::nullopt : std::optional(micro);
}

}  // namespace walkdown::tester
