// SPDX-License-Identifier: Apache-2.0
#include "reader/tester/read_instrument.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

namespace walkdown::tester {
namespace {

constexpr std::size_t kLongest = 200;

bool is_plain(const std::string& text) {
  return !text.empty() && text.size() <= kLongest &&
         std::none_of(text.begin(), text.end(),
                      [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7f; });
}

// A date of TOML, or one in quotes.
std::optional<std::string> date_of(const toml::node& node) {
  toml::date date{};
  if (const auto given = node.value_exact<toml::date>()) {
    date = *given;
  } else {
    const auto text = node.value_exact<std::string>();
    if (!text) return std::nullopt;
    const auto parsed = toml::parse("d = " + *text + "\n");
    const auto quoted =
        parsed ? parsed.table()["d"].value_exact<toml::date>() : std::optional<toml::date>();
    if (!quoted) return std::nullopt;
    date = *quoted;
  }
  return fmt::format("{:04}-{:02}-{:02}", date.year, date.month, date.day);
}

}  // namespace

Instrument read_instrument(const toml::table& profile, InstrumentMistakes& mistakes) {
  Instrument made;
  const toml::node* const node = profile.get("instrument");
  if (node == nullptr) return made;
  const toml::table* const table = node->as_table();
  if (table == nullptr) {
    mistakes.emplace_back(node->source().begin.line, "instrument: write a table, [instrument]");
    return made;
  }
  for (const auto& [key, value] : *table) {
    const std::string_view name = key.str();
    const std::uint32_t line = key.source().begin.line;
    std::string* const text = name == "type"          ? &made.type
                              : name == "serial"      ? &made.serial
                              : name == "certificate" ? &made.certificate
                                                      : nullptr;
    std::string* const date = name == "calibrated_on"     ? &made.calibrated_on
                              : name == "calibration_due" ? &made.calibration_due
                                                          : nullptr;
    if (text != nullptr) {
      *text = value.value_exact<std::string>().value_or("");
      if (!is_plain(*text)) {
        mistakes.emplace_back(line, fmt::format("instrument.{}: write one line of text", name));
      }
    } else if (date != nullptr) {
      *date = date_of(value).value_or("");
      if (date->empty()) {
        mistakes.emplace_back(line, fmt::format("instrument.{}: write a date, 2027-03-01", name));
      }
    } else {
      mistakes.emplace_back(line, fmt::format("'{}' is not a key of [instrument]: type, serial, "
                                              "certificate, calibrated_on, calibration_due",
                                              name));
    }
  }
  return made;
}

Instrument instrument_of(std::string_view profile_toml) {
  const toml::parse_result parsed = toml::parse(profile_toml);
  InstrumentMistakes mistakes;
  return parsed ? read_instrument(parsed.table(), mistakes) : Instrument{};
}

}  // namespace walkdown::tester
