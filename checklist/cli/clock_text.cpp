// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/clock_text.h"

#include <array>
#include <ctime>

#include "checklist/record/clock.h"
#include "checklist/weather/decimal.h"

namespace walkdown::cli {
namespace {

constexpr std::int64_t kDay_ms = 86'400'000;

std::int64_t offset_min_at(std::int64_t at_ms) {
  const auto seconds = static_cast<std::time_t>(at_ms / 1000);
  std::tm local{};
  if (localtime_r(&seconds, &local) == nullptr) return 0;
  return local.tm_gmtoff / 60;
}

bool digit(char c) { return c >= '0' && c <= '9'; }

// Minutes after midnight; empty where the text is no "hh:mm".
std::optional<std::int64_t> minutes(const std::string& text) {
  if (text.size() != 5 || text[2] != ':') return std::nullopt;
  for (const std::size_t i : {0U, 1U, 3U, 4U}) {
    if (!digit(text[i])) return std::nullopt;
  }
  const int hour = (text[0] - '0') * 10 + (text[1] - '0');
  const int minute = (text[3] - '0') * 10 + (text[4] - '0');
  if (hour > 23 || minute > 59) return std::nullopt;
  return std::int64_t{hour} * 60 + minute;
}

// The offset that an RFC 3339 text ends with, in minutes.
std::int64_t written_offset_min(const std::string& text) {
  if (text.size() < 6 || text.back() == 'Z' || text.back() == 'z') return 0;
  const auto of = minutes(text.substr(text.size() - 5)).value_or(0);
  return text[text.size() - 6] == '-' ? -of : of;
}

}  // namespace

Result<TypedTime> typed_time(const std::string& text, std::int64_t now_ms) {
  if (const auto at_ms = record::parse_rfc3339(text)) {
    return TypedTime{*at_ms, written_offset_min(text)};
  }
  const auto wanted_min = minutes(text);
  if (!wanted_min) {
    return Error{Code::usage, "this is no time", text,
                 "write it as 21:45, or as 2026-07-04T21:45:00+02:00"};
  }
  const std::int64_t offset_min = offset_min_at(now_ms);
  const std::int64_t local_ms = now_ms + offset_min * 60'000;
  const std::int64_t midnight_ms = local_ms - local_ms % kDay_ms;
  std::int64_t at_ms = midnight_ms + *wanted_min * 60'000 - offset_min * 60'000;
  if (at_ms < now_ms) at_ms += kDay_ms;
  return TypedTime{at_ms, offset_min};
}

Result<std::int64_t> typed_milli(const std::string& text, const std::string& what) {
  if (const auto value = weather::milli(text)) return *value;
  return Error{Code::usage, what + " is no plain number", text, "write it as 4.2"};
}

}  // namespace walkdown::cli
