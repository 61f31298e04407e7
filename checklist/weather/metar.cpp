// SPDX-License-Identifier: Apache-2.0
#include "checklist/weather/metar.h"

#include <algorithm>
#include <charconv>
#include <string>
#include <vector>

#include "checklist/weather/decimal.h"

namespace walkdown::weather {
namespace {

constexpr std::size_t kLongestReport = 1000;

std::vector<std::string_view> words(std::string_view text) {
  std::vector<std::string_view> list;
  while (!text.empty()) {
    const auto space = std::min(text.find(' '), text.size());
    if (space > 0) list.push_back(text.substr(0, space));
    text.remove_prefix(std::min(space + 1, text.size()));
  }
  return list;
}

// Takes `least`..`most` digits off the front of the text.
std::optional<std::int32_t> take(std::string_view& text, std::size_t least, std::size_t most) {
  std::size_t length = 0;
  while (length < text.size() && length < most && text[length] >= '0' && text[length] <= '9') {
    ++length;
  }
  if (length < least) return std::nullopt;
  std::int32_t value = 0;
  std::from_chars(text.data(), text.data() + length, value);
  text.remove_prefix(length);
  return value;
}

bool take(std::string_view& text, std::string_view word) {
  if (!text.starts_with(word)) return false;
  text.remove_prefix(word.size());
  return true;
}

std::optional<std::int64_t> to_mm_per_s(std::int64_t value, std::string_view unit) {
  if (unit == "KT") return scaled(value * 1000, 1852, 3600);
  if (unit == "MPS") return value * 1000;
  if (unit == "KMH") return scaled(value * 1000, 1000, 3600);
  return std::nullopt;
}

std::optional<Metar> group(std::string_view text) {
  Metar metar;
  if (!take(text, "VRB")) {
    metar.from_deg = take(text, 3, 3);
    if (!metar.from_deg || *metar.from_deg > 360) return std::nullopt;
  }
  metar.above = take(text, "P");
  const auto mean = take(text, 2, 3);
  if (!mean) return std::nullopt;
  std::optional<std::int32_t> gust;
  if (take(text, "G")) {
    metar.above = take(text, "P") || metar.above;
    gust = take(text, 2, 3);
    if (!gust) return std::nullopt;
  }
  const auto scale = to_mm_per_s(*mean, text);
  if (!scale) return std::nullopt;
  metar.mean_mm_per_s = *scale;
  if (gust) metar.gust_mm_per_s = to_mm_per_s(*gust, text);
  return metar;
}

bool variation(std::string_view text, Metar& metar) {
  const auto from = take(text, 3, 3);
  if (!from || !take(text, "V")) return false;
  const auto to = take(text, 3, 3);
  if (!to || !text.empty() || *from > 360 || *to > 360) return false;
  metar.varies_from_deg = from;
  metar.varies_to_deg = to;
  return true;
}

// Looks like a variation, so that a wrong one is an error and not just the next word.
bool meant_as_variation(std::string_view text) {
  return text.size() == 7 && take(text, 3, 3).has_value();
}

}  // namespace

Result<Metar> parse_metar_wind(std::string_view text) {
  const auto list = words(text.substr(0, kLongestReport));
  for (std::size_t i = 0; i < list.size(); ++i) {
    auto metar = group(list[i]);
    if (!metar) continue;
    if (i + 1 < list.size() && !variation(list[i + 1], *metar) && meant_as_variation(list[i + 1])) {
      return Error{Code::bad_input, "the variation of the wind's direction is not dddVddd",
                   std::string(list[i + 1]), "copy the report as it was sent"};
    }
    return *metar;
  }
  return Error{Code::bad_input, "no wind group such as 24008KT in this report",
               std::string(text.substr(0, 80)), "copy the report as it was sent"};
}

}  // namespace walkdown::weather
