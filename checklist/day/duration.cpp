// SPDX-License-Identifier: Apache-2.0
#include "checklist/day/duration.h"

#include <fmt/format.h>

#include <array>
#include <charconv>

namespace walkdown::day {
namespace {

struct Unit {
  char letter;
  std::int64_t ms;
};
constexpr std::array<Unit, 3> kUnits = {{{'h', 3'600'000}, {'m', 60'000}, {'s', 1'000}}};
constexpr std::int64_t kLongest_ms = 48 * std::int64_t{3'600'000};

}  // namespace

std::optional<std::int64_t> parse_duration(std::string_view text, bool negative) {
  const bool minus = negative && text.starts_with('-');
  if (minus) text.remove_prefix(1);
  if (text.empty()) return std::nullopt;
  std::int64_t total = 0;
  std::size_t unit = 0;
  while (!text.empty()) {
    std::uint32_t count = 0;
    const auto parsed = std::from_chars(text.data(), text.data() + text.size(), count);
    if (parsed.ec != std::errc{}) return std::nullopt;
    text.remove_prefix(static_cast<std::size_t>(parsed.ptr - text.data()));
    if (text.empty()) return std::nullopt;
    while (unit < kUnits.size() && kUnits.at(unit).letter != text.front()) ++unit;
    if (unit == kUnits.size()) return std::nullopt;
    total += count * kUnits.at(unit++).ms;
    text.remove_prefix(1);
    if (total > kLongest_ms) return std::nullopt;
  }
  return minus ? -total : total;
}

std::string say_duration(std::int64_t ms) {
  const std::int64_t seconds = (ms < 0 ? -ms : ms) / 1000;
  if (seconds < 60) return fmt::format("{} s", seconds);
  const std::int64_t minutes = seconds / 60;
  if (minutes < 60) return fmt::format("{} min", minutes);
  if (minutes % 60 == 0) return fmt::format("{} h", minutes / 60);
  return fmt::format("{} h {} min", minutes / 60, minutes % 60);
}

std::string say_clock(std::int64_t at_ms, std::int64_t utc_offset_min) {
  constexpr std::int64_t kDay_min = 1440;
  const std::int64_t minutes = ((at_ms / 60'000 + utc_offset_min) % kDay_min + kDay_min) % kDay_min;
  return fmt::format("{:02}:{:02}", minutes / 60, minutes % 60);
}

}  // namespace walkdown::day
