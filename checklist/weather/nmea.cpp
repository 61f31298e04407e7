// SPDX-License-Identifier: Apache-2.0
#include "checklist/weather/nmea.h"

#include <charconv>
#include <string>
#include <utility>
#include <vector>

#include "checklist/weather/decimal.h"

namespace walkdown::weather {
namespace {

constexpr std::size_t kLongestSentence = 82;  // NMEA 0183, with CR LF

Error bad(std::string what, std::string_view line) {
  return Error{Code::bad_input, std::move(what), std::string(line.substr(0, kLongestSentence)),
               "check the instrument and its cable"};
}

std::vector<std::string_view> fields(std::string_view text) {
  std::vector<std::string_view> list;
  while (true) {
    const auto comma = text.find(',');
    list.push_back(text.substr(0, comma));
    if (comma == std::string_view::npos) return list;
    text.remove_prefix(comma + 1);
  }
}

// The text between '$' and '*', where the two hex digits after '*' are its exclusive or.
std::optional<std::string_view> checked(std::string_view line) {
  while (!line.empty() && (line.back() == '\n' || line.back() == '\r')) line.remove_suffix(1);
  if (line.size() < 5 || line.size() > kLongestSentence || line.front() != '$') return std::nullopt;
  if (line[line.size() - 3] != '*') return std::nullopt;
  unsigned stated = 0;
  const auto end = line.data() + line.size();
  const auto parsed = std::from_chars(end - 2, end, stated, 16);
  if (parsed.ec != std::errc{} || parsed.ptr != end) return std::nullopt;
  const std::string_view body = line.substr(1, line.size() - 4);
  unsigned sum = 0;
  for (const char c : body) sum ^= static_cast<unsigned char>(c);
  if (sum != stated) return std::nullopt;
  return body;
}

std::optional<std::int64_t> speed(std::string_view value, std::string_view unit) {
  const auto thousandths = milli(value);
  if (!thousandths || *thousandths > 1'000'000) return std::nullopt;
  if (unit == "M") return *thousandths;
  if (unit == "N") return scaled(*thousandths, 1852, 3600);
  if (unit == "K") return scaled(*thousandths, 1000, 3600);
  if (unit == "S") return scaled(*thousandths, 1'609'344, 3'600'000);
  return std::nullopt;
}

std::optional<std::int32_t> bearing(std::string_view value) {
  const auto thousandths = milli(value);
  if (!thousandths || *thousandths > 360'000) return std::nullopt;
  return static_cast<std::int32_t>(scaled(*thousandths, 1, 100) % 3600);
}

Result<Instrument> from_mwv(const std::vector<std::string_view>& field, std::string_view line) {
  if (field.size() != 6) return bad("a MWV sentence has five values", line);
  if (field[5] != "A") return bad("the instrument says that its wind is not valid", line);
  const auto wind = speed(field[3], field[4]);
  if (!wind) return bad("a MWV sentence has no usable wind speed", line);
  return Instrument{*wind, std::nullopt};
}

Result<Instrument> from_mwd(const std::vector<std::string_view>& field, std::string_view line) {
  if (field.size() != 9) return bad("a MWD sentence has eight values", line);
  auto wind = field[8] == "M" ? speed(field[7], "M") : std::nullopt;
  if (!wind && field[6] == "N") wind = speed(field[5], "N");
  if (!wind) return bad("a MWD sentence has no usable wind speed", line);
  return Instrument{*wind, field[2] == "T" ? bearing(field[1]) : std::nullopt};
}

}  // namespace

Result<Instrument> parse_nmea(std::string_view line) {
  const auto body = checked(line);
  if (!body) return bad("not an NMEA sentence with a right checksum", line);
  const auto field = fields(*body);
  if (field[0].size() == 5 && field[0].substr(2) == "MWV") return from_mwv(field, line);
  if (field[0].size() == 5 && field[0].substr(2) == "MWD") return from_mwd(field, line);
  return bad("not a wind sentence", line);
}

}  // namespace walkdown::weather
