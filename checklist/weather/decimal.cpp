// SPDX-License-Identifier: Apache-2.0
#include "checklist/weather/decimal.h"

#include <algorithm>
#include <charconv>

namespace walkdown::weather {
namespace {

constexpr std::size_t kMostWhole = 9;

std::optional<std::int64_t> digits(std::string_view text) {
  const auto digit = [](char c) { return c >= '0' && c <= '9'; };
  if (text.empty() || !std::all_of(text.begin(), text.end(), digit)) return std::nullopt;
  std::int64_t value = 0;
  const auto end = text.data() + text.size();
  const auto parsed = std::from_chars(text.data(), end, value);
  if (parsed.ec != std::errc{} || parsed.ptr != end) return std::nullopt;
  return value;
}

}  // namespace

std::optional<std::int64_t> milli(std::string_view text) {
  const auto point = text.find('.');
  const auto whole = digits(text.substr(0, point));
  if (!whole || std::min(point, text.size()) > kMostWhole) return std::nullopt;
  if (point == std::string_view::npos) return *whole * 1000;
  const std::string_view decimals = text.substr(point + 1);
  if (decimals.size() > kMostWhole) return std::nullopt;
  const auto fraction = digits(decimals);
  if (!fraction) return std::nullopt;
  std::int64_t unit = 1;
  for (std::size_t i = 0; i < decimals.size(); ++i) unit *= 10;
  return *whole * 1000 + scaled(*fraction, 1000, unit);
}

std::int64_t scaled(std::int64_t value, std::int64_t numerator, std::int64_t denominator) {
  return (value * numerator + denominator / 2) / denominator;
}

}  // namespace walkdown::weather
