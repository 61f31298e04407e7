// SPDX-License-Identifier: Apache-2.0
#include "reader/tester/value.h"

#include <gtest/gtest.h>

#include <optional>
#include <string>

namespace walkdown::tester {
namespace {

std::optional<std::int64_t> micro(std::string_view text, std::string_view unit = "ohm") {
  const Decimal value = parse_decimal(text);
  const std::optional<int> exponent = unit_exponent(unit);
  if (value.kind != Numeral::number || !exponent) return std::nullopt;
  return micro_ohm(value, *exponent);
}

TEST(Value, IsExactToOneMicroOhm) {
  EXPECT_EQ(micro("2.31"), 2'310'000);
  EXPECT_EQ(micro("0.000001"), 1);
  EXPECT_EQ(micro("123456.789012"), 123'456'789'012);
  EXPECT_EQ(micro("-0.02"), -20'000);
  EXPECT_EQ(micro("+5"), 5'000'000);
  EXPECT_EQ(micro(".5"), 500'000);
  EXPECT_EQ(micro("5."), 5'000'000);
  EXPECT_EQ(micro("0"), 0);
  EXPECT_EQ(micro("-0"), 0);
  // 0.1 and its like have no exact double; the micro-ohm must still be exact.
  for (int i = 0; i < 1000; ++i) {
    const std::string text =
        std::to_string(i / 100) + "." + std::to_string(i / 10 % 10) + std::to_string(i % 10);
    EXPECT_EQ(micro(text), i * 10'000) << text;
  }
}

TEST(Value, RoundsBelowOneMicroOhmHalfAwayFromZero) {
  EXPECT_EQ(micro("0.0000005"), 1);
  EXPECT_EQ(micro("0.00000049999"), 0);
  EXPECT_EQ(micro("-0.0000005"), -1);
  EXPECT_EQ(micro("2.3145678915E+00"), 2'314'568);
  EXPECT_EQ(micro("0.00000000000000000000009"), 0);
}

TEST(Value, TakesADecimalComma) {
  EXPECT_EQ(micro("9,99"), 9'990'000);  // never 999
  EXPECT_EQ(micro("0,5"), 500'000);
}

TEST(Value, RefusesWhatIsAmbiguousOrNoNumber) {
  for (const char* bad :
       {"",      "+",   "-",    ".",   ",",   "1.234,5", "1,234.5", "1.2.3", "1e",  "1e+",
        "1e+-2", "1 2", "0x10", "abc", "nan", "inf",     "1e99999", "2.31x", "--1", "1e1.5"}) {
    EXPECT_EQ(parse_decimal(bad).kind, Numeral::not_one) << bad;
  }
}

TEST(Value, ReadsExponents) {
  EXPECT_EQ(micro("+2.310000E+00"), 2'310'000);
  EXPECT_EQ(micro("231e-2"), 2'310'000);
  EXPECT_EQ(micro("2.31E3"), 2'310'000'000);
  EXPECT_EQ(micro("0E5000"), 0);
}

// SCPI-99, 7.2.1: 9.9E37 is overload, 9.91E37 not a number (section from memory).
TEST(Value, KnowsTheScpiNumbers) {
  for (const char* over : {"9.9E37", "+9.90000E+37", "9.90000000E+37", "-9.9E37", "9.8E37", "1e300",
                           "99000000000000000000000000000000000000", "9.95e37"}) {
    EXPECT_EQ(parse_decimal(over).kind, Numeral::overflow) << over;
  }
  for (const char* nan : {"9.91E37", "9.91000E+37", "+9.910000e37"}) {
    EXPECT_EQ(parse_decimal(nan).kind, Numeral::nan) << nan;
  }
  EXPECT_EQ(parse_decimal("9.7E37").kind, Numeral::number);
  EXPECT_EQ(micro("9.7E37"), std::nullopt);
}

TEST(Value, StaysWithinItsRange) {
  EXPECT_EQ(micro("1e9"), 1'000'000'000'000'000);
  EXPECT_EQ(micro("1000000000.000001"), std::nullopt);
  EXPECT_EQ(micro("-1000"), -1'000'000'000);
  EXPECT_EQ(micro("-1000.000001"), std::nullopt);
  EXPECT_EQ(micro("1e36"), std::nullopt);
  EXPECT_EQ(micro("18446744073709551616"), std::nullopt);
}

// Prefixes and their case: UCUM, table 4 (Ohm) and the metric prefixes (c/s column).
TEST(Unit, CaseDecidesMilliFromMega) {
  EXPECT_EQ(unit_exponent("mOhm"), -3);
  EXPECT_EQ(unit_exponent("MOhm"), 6);
  EXPECT_EQ(unit_exponent("kOhm"), 3);
  EXPECT_EQ(unit_exponent("kohm"), 3);
  EXPECT_EQ(unit_exponent("KOHM"), 3);
  EXPECT_EQ(unit_exponent("Ohm"), 0);
  EXPECT_EQ(unit_exponent("ohms"), 0);
  EXPECT_EQ(unit_exponent(""), 0);
  EXPECT_EQ(micro("2310", "mOhm"), 2'310'000);
  EXPECT_EQ(micro("0.00231", "kohm"), 2'310'000);
  EXPECT_EQ(micro("0.00000231", "MOhm"), 2'310'000);
}

// U+2126 decomposes to U+03A9 (Unicode data): both are met in the field.
TEST(Unit, TakesBothOhmSigns) {
  EXPECT_EQ(unit_exponent("\xE2\x84\xA6"), 0);
  EXPECT_EQ(unit_exponent("\xCE\xA9"), 0);
  EXPECT_EQ(unit_exponent("k\xCE\xA9"), 3);
  EXPECT_EQ(unit_exponent("M\xE2\x84\xA6"), 6);
  EXPECT_EQ(unit_exponent("\xC2\xB5\xCE\xA9"), -6);
  EXPECT_EQ(unit_exponent("\xCE\xBC\xCE\xA9"), -6);
}

TEST(Unit, RefusesOthers) {
  for (const char* bad : {"V", "A", "mV", "oh", "ohmm", "k", "M", "degC", "kkohm", "ohm "}) {
    EXPECT_EQ(unit_exponent(bad), std::nullopt) << bad;
  }
}

}  // namespace
}  // namespace walkdown::tester
