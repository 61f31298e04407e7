// SPDX-License-Identifier: Apache-2.0
// The value of a line: decimal text and a unit -> exact micro-ohm. No double is involved.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

namespace walkdown::tester {

// What the decimal text says, before its unit is known.
enum class Numeral : std::uint8_t {
  number,    // a finite decimal number
  overflow,  // |x| >= 9.8E37: above range, in the words of SCPI-99 (9.9E37)
  nan,       // 9.91E37: not a number, in the words of SCPI-99
  not_one,   // no decimal number at all
};

// digits * 10^exponent. More than 18 digits are cut, which is far below one micro-ohm in range.
struct Decimal {
  Numeral kind = Numeral::not_one;
  bool negative = false;
  std::uint64_t digits = 0;
  int exponent = 0;
};

// Takes an optional sign, digits with at most one '.' or ',', and an optional exponent. "1.234,5"
// and "1,234.5" are not numbers: which of the two is the decimal sign cannot be known.
[[nodiscard]] Decimal parse_decimal(std::string_view text);

// The power of ten of a unit of resistance against the ohm: "" 0, "ohm" 0, "kohm" 3, "mOhm" -3,
// "MOhm" 6, "uohm" -6. Both code points of the ohm sign (U+2126, U+03A9) and of micro (U+00B5,
// U+03BC). The case of the prefix decides milli from mega, as in UCUM; the case of the word ohm
// does not matter. Empty for any other unit.
[[nodiscard]] std::optional<int> unit_exponent(std::string_view unit);

// Rounded half away from zero to whole micro-ohm. Empty outside -1e9 .. 1e15 micro-ohm.
// Precondition: kind is number.
[[nodiscard]] std::optional<std::int64_t> micro_ohm(const Decimal& value, int unit_exponent);

}  // namespace walkdown::tester
