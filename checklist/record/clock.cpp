// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/clock.h"

#include <date/date.h>
#include <time.h>  // NOLINT: clock_gettime() is POSIX

#include <array>
#include <chrono>
#include <cstring>
#include <limits>

namespace walkdown::record {

namespace {

using Milliseconds = std::chrono::milliseconds;

std::int64_t read(clockid_t clock) {
  timespec now{};
  clock_gettime(clock, &now);
  return std::int64_t{now.tv_sec} * 1000 + now.tv_nsec / 1'000'000;
}

void put(std::string& out, std::size_t at, std::size_t width, std::int64_t value) {
  for (std::size_t i = width; i > 0; --i, value /= 10) {
    out[at + i - 1] = static_cast<char>('0' + value % 10);
  }
}

// Exactly `width` digits at `at`; -1 where there is anything else.
inline int digits(std::string_view text, std::size_t at, std::size_t width) {
  if (text.size() < at + width) return -1;
  int value = 0;
  bool all = true;
  for (std::size_t i = at; i < at + width; ++i) {
    all = all && text[i] >= '0' && text[i] <= '9';
    value = value * 10 + (text[i] - '0');
  }
  return all ? value : -1;
}

struct Fields {
  date::year_month_day day{};
  int hour = -1, minute = -1, second = -1;
};

// The first 19 characters: YYYY-MM-DDThh:mm:ss, second up to 60.
std::optional<Fields> parse_fields(std::string_view text) {
  if (text.size() < 20 || text[4] != '-' || text[7] != '-' || text[13] != ':' || text[16] != ':') {
    return std::nullopt;
  }
  const int year = digits(text, 0, 4), month = digits(text, 5, 2), day = digits(text, 8, 2);
  Fields fields;
  fields.hour = digits(text, 11, 2);
  fields.minute = digits(text, 14, 2);
  fields.second = digits(text, 17, 2);
  if (year < 0 || month < 1 || day < 1 || fields.hour < 0 || fields.minute < 0) return std::nullopt;
  if (fields.second < 0 || fields.hour > 23 || fields.minute > 59 || fields.second > 60) {
    return std::nullopt;
  }
  fields.day = date::year{year} / month / day;
  if (!fields.day.ok()) return std::nullopt;
  return fields;
}

std::int64_t milliseconds(const Fields& fields) {
  const auto days = date::sys_days{fields.day}.time_since_epoch();
  return std::chrono::duration_cast<Milliseconds>(days + std::chrono::hours{fields.hour} +
                                                  std::chrono::minutes{fields.minute} +
                                                  std::chrono::seconds{fields.second})
      .count();
}

// Nearly every time in a record falls into the minute of the one before it: "YYYY-MM-DDThh:mm:".
struct LastMinute {
  std::array<char, 17> text{};
  std::int64_t at_ms = 0;
};

std::optional<std::int64_t> minute_of(std::string_view text) {
  thread_local LastMinute last;
  if (std::memcmp(text.data(), last.text.data(), last.text.size()) == 0) return last.at_ms;
  auto fields = parse_fields(text);
  if (!fields) return std::nullopt;
  fields->second = 0;
  std::memcpy(last.text.data(), text.data(), last.text.size());
  last.at_ms = milliseconds(*fields);
  return last.at_ms;
}

// "Z", "z", "+hh:mm" or "-hh:mm", in milliseconds east.
std::optional<std::int64_t> parse_zone(std::string_view zone) {
  if (zone == "Z" || zone == "z") return 0;
  if (zone.size() != 6 || zone[3] != ':' || (zone[0] != '+' && zone[0] != '-')) return std::nullopt;
  const int hours = digits(zone, 1, 2), minutes = digits(zone, 4, 2);
  if (hours < 0 || hours > 23 || minutes < 0 || minutes > 59) return std::nullopt;
  const std::int64_t east = (hours * std::int64_t{60} + minutes) * 60'000;
  return zone[0] == '-' ? -east : east;
}

// After ":60" is carried over, a leap second is the first second of a month.
bool starts_a_month(std::int64_t at_ms) {
  const date::sys_time<Milliseconds> at{Milliseconds{at_ms}};
  const auto day = date::floor<date::days>(at);
  return date::year_month_day{day}.day() == date::day{1} && at - day < std::chrono::seconds{1};
}

}  // namespace

std::int64_t SystemClock::at_ms() const { return read(CLOCK_REALTIME); }
std::int64_t SystemClock::up_ms() const { return read(CLOCK_BOOTTIME); }

std::string rfc3339(std::int64_t at_ms) {
  // As with reading: nearly every time falls into the minute of the one before it.
  thread_local std::int64_t last_minute = std::numeric_limits<std::int64_t>::min();
  thread_local std::string out = "0000-00-00T00:00:00.000Z";
  const date::sys_time<Milliseconds> at{Milliseconds{at_ms}};
  const std::int64_t minute = date::floor<std::chrono::minutes>(at).time_since_epoch().count();
  if (minute != last_minute) {
    const auto day = date::floor<date::days>(at);
    const date::year_month_day date{day};
    const std::int64_t of_day = (at - day).count();
    put(out, 0, 4, int{date.year()});
    put(out, 5, 2, unsigned{date.month()});
    put(out, 8, 2, unsigned{date.day()});
    put(out, 11, 2, of_day / 3'600'000);
    put(out, 14, 2, of_day / 60'000 % 60);
    last_minute = minute;
  }
  const std::int64_t of_minute = at_ms - minute * 60'000;
  put(out, 17, 2, of_minute / 1000);
  put(out, 20, 3, of_minute % 1000);
  return out;
}

std::optional<std::int64_t> parse_at(std::string_view text) {
  if (text.size() != 24 || text[10] != 'T' || text[19] != '.' || text[23] != 'Z') {
    return std::nullopt;
  }
  const auto minute = minute_of(text);
  const int seconds = digits(text, 17, 2), thousandths = digits(text, 20, 3);
  if (!minute || seconds < 0 || seconds > 59 || thousandths < 0) return std::nullopt;
  return *minute + seconds * std::int64_t{1000} + thousandths;
}

std::optional<std::int64_t> parse_rfc3339(std::string_view text) {
  const auto fields = parse_fields(text);
  if (!fields || (text[10] != 'T' && text[10] != 't')) return std::nullopt;
  std::string_view rest = text.substr(19);
  std::int64_t fraction = 0;
  if (rest.front() == '.') {
    rest.remove_prefix(1);
    std::size_t count = 0;
    for (; count < rest.size() && rest[count] >= '0' && rest[count] <= '9'; ++count) {
      if (count < 3) fraction = fraction * 10 + (rest[count] - '0');
    }
    if (count == 0) return std::nullopt;
    for (std::size_t i = count; i < 3; ++i) fraction *= 10;
    rest.remove_prefix(count);
  }
  const auto east = parse_zone(rest);
  if (!east) return std::nullopt;
  const std::int64_t at = milliseconds(*fields) - *east;
  if (fields->second == 60 && !starts_a_month(at)) return std::nullopt;
  return at + fraction;
}

}  // namespace walkdown::record
