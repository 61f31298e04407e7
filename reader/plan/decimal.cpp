// SPDX-License-Identifier: Apache-2.0
#include "reader/plan/decimal.h"

#include <array>
#include <charconv>
#include <cmath>
#include <cstddef>

namespace walkdown::plan {
namespace {

constexpr std::string_view kNoBreakSpace = "\xC2\xA0";

bool drop_front(std::string_view& text) {
  if (text.starts_with(' ') || text.starts_with('\t')) {
    text.remove_prefix(1);
  } else if (text.starts_with(kNoBreakSpace)) {
    text.remove_prefix(kNoBreakSpace.size());
  } else {
    return false;
  }
  return true;
}

bool drop_back(std::string_view& text) {
  if (text.ends_with(' ') || text.ends_with('\t')) {
    text.remove_suffix(1);
  } else if (text.ends_with(kNoBreakSpace)) {
    text.remove_suffix(kNoBreakSpace.size());
  } else {
    return false;
  }
  return true;
}

std::optional<double> parse_point(std::string_view text) {
  double value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc{} || end != text.data() + text.size() || !std::isfinite(value)) {
    return std::nullopt;
  }
  return value;
}

}  // namespace

std::string_view trimmed(std::string_view text) {
  while (drop_front(text)) {
  }
  while (drop_back(text)) {
  }
  return text;
}

std::optional<double> parse_decimal(std::string_view text, bool comma) {
  if (text.starts_with('+')) {
    text.remove_prefix(1);
    if (text.starts_with('-')) return std::nullopt;
  }
  // from_chars takes "inf" and "nan" and hexadecimal letters; a table does not.
  if (text.empty() || text.find_first_not_of("0123456789.,-+eE") != std::string_view::npos) {
    return std::nullopt;
  }
  const std::size_t at = text.find(',');
  if (at == std::string_view::npos) return parse_point(text);
  std::array<char, 64> point{};
  if (!comma || text.size() > point.size() ||
      text.find_first_of(",.", at + 1) != std::string_view::npos ||
      text.substr(0, at).find('.') != std::string_view::npos) {
    return std::nullopt;
  }
  text.copy(point.data(), text.size());
  point.at(at) = '.';
  return parse_point({point.data(), text.size()});
}

std::optional<std::uint16_t> parse_count(std::string_view text, std::uint16_t most) {
  unsigned value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc{} || end != text.data() + text.size() || value > most) {
    return std::nullopt;
  }
  return static_cast<std::uint16_t>(value);
}

}  // namespace walkdown::plan
