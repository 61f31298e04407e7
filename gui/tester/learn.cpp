// SPDX-License-Identifier: Apache-2.0
#include "gui/tester/learn.h"

#include <fmt/format.h>
#include <re2/re2.h>

#include <algorithm>
#include <array>
#include <variant>

namespace walkdown::gui {
namespace {

bool digit(char c) { return c >= '0' && c <= '9'; }

// What a group may be, so that the pattern takes other lines of the same form.
std::string_view inside(Part part) {
  switch (part) {
    case Part::value:
      return "[^,;\\t ]+";
    case Part::unit:
      return "[^,;\\t ]*";
    default:
      return "\\d+";
  }
}

std::string between(std::string_view text) {
  std::string out;
  for (std::size_t i = 0; i < text.size();) {
    const bool blank = text[i] == ' ' || text[i] == '\t';
    const std::size_t from = i;
    if (blank) {
      while (i < text.size() && (text[i] == ' ' || text[i] == '\t')) ++i;
      out += "[ \\t]+";
    } else if (digit(text[i])) {
      while (i < text.size() && digit(text[i])) ++i;
      out += "\\d+";
    } else {
      while (i < text.size() && !digit(text[i]) && text[i] != ' ' && text[i] != '\t') ++i;
      out += re2::RE2::QuoteMeta(re2::StringPiece(text.data() + from, i - from));
    }
  }
  return out;
}

Error mistake(std::string what, std::string remedy) {
  return {Code::bad_input, std::move(what), "", std::move(remedy)};
}

Done check(std::string_view line, const std::vector<Marking>& sorted) {
  std::array<bool, kParts> seen{};
  std::size_t end = 0;
  for (const Marking& mark : sorted) {
    if (mark.length == 0 || mark.first + mark.length > line.size()) {
      return mistake("a mark is not on the line", "mark it anew");
    }
    if (mark.first < end) return mistake("two marks overlap", "mark each part once");
    if (seen.at(static_cast<std::size_t>(mark.part))) {
      return mistake(fmt::format("{} is marked twice", group_name(mark.part)), "take one away");
    }
    seen.at(static_cast<std::size_t>(mark.part)) = true;
    end = mark.first + mark.length;
  }
  if (!seen.at(static_cast<std::size_t>(Part::value))) {
    return mistake("the value is not marked", "mark the part that is the resistance");
  }
  return done();
}

Tried tell(const tester::LineParser& parser, const std::string& line) {
  const auto parsed = parser.parse(line);
  if (const auto* reading = std::get_if<tester::Reading>(&parsed)) {
    return {line, true,
            plan::text(reading->pin) +
                (reading->over ? " above range" : fmt::format(" {:.10g} ohm", reading->ohm()))};
  }
  if (const auto* bare = std::get_if<tester::BareValue>(&parsed)) {
    return {line, true,
            bare->over ? "above range"
                       : fmt::format("{:.10g} ohm", static_cast<double>(bare->micro_ohm) * 1e-6)};
  }
  return {line, false, std::get<tester::Rejected>(parsed).why};
}

}  // namespace

std::string_view group_name(Part part) {
  static constexpr std::array<std::string_view, kParts> kNames{"module", "rail", "pin",
                                                               "value",  "unit", "seq"};
  return kNames.at(static_cast<std::size_t>(part));
}

tester::Profile profile_for(tester::Profile base, std::string_view line) {
  base.check = tester::Check::none;
  if (tester::LineParser::carries_check(line)) {
    const std::size_t digits = line.size() - line.rfind('*') - 1;
    base.check = digits == 2 ? tester::Check::xor8 : tester::Check::crc16_modbus;
  }
  return base;
}

Result<std::string> pattern_of(std::string_view line, std::vector<Marking> markings) {
  if (tester::LineParser::carries_check(line)) line = line.substr(0, line.rfind('*'));
  std::sort(markings.begin(), markings.end(),
            [](const Marking& a, const Marking& b) { return a.first < b.first; });
  if (const Done fine = check(line, markings); !fine) return fine.error();
  std::string pattern;
  std::size_t at = 0;
  for (const Marking& mark : markings) {
    pattern += between(line.substr(at, mark.first - at));
    pattern += fmt::format("(?P<{}>{})", group_name(mark.part), inside(mark.part));
    at = mark.first + mark.length;
  }
  return pattern + between(line.substr(at));
}

Result<std::vector<Tried>> try_pattern(const tester::Profile& base, const std::string& pattern,
                                       const std::vector<std::string>& samples) {
  tester::Profile profile = base;
  profile.line = pattern;
  const auto parser = tester::LineParser::make(profile);
  if (!parser) return parser.error();
  std::vector<Tried> out;
  for (const auto& line : samples) {
    if (!line.empty()) out.push_back(tell(*parser, line));
  }
  return out;
}

std::string profile_text(const tester::Profile& base, const std::string& pattern) {
  static constexpr std::array kChecks{"none", "xor8", "crc16-modbus"};
  static constexpr std::array kParities{"none", "even", "odd", "mark", "space"};
  std::string over;
  for (const auto& token : base.over)
    over += fmt::format("{}\"{}\"", over.empty() ? "" : ", ", token);
  std::string text = fmt::format(
      "# A tester profile, learned from its lines. The instrument's figures are the meter's own\n"
      "# sheet's to give.\n"
      "baud = {}\nbits = {}\nparity = \"{}\"\nstop = {}\n\nline = '''{}'''\n\n"
      "check = \"{}\"\ncheck_optional = {}\nover = [{}]\n\n",
      base.port.baud, base.port.bits, kParities.at(static_cast<std::size_t>(base.port.parity)),
      base.port.stop, pattern, kChecks.at(static_cast<std::size_t>(base.check)),
      base.check_optional, over);
  text += fmt::format(
      "accuracy_pct = {}\naccuracy_ohm = {}\nresolution_ohm = {}\nrange_ohm = {}\nzero_ohm = {}\n",
      base.model.accuracy_pct, base.model.accuracy_ohm, base.model.resolution_ohm,
      base.model.range_ohm, base.model.zero_ohm);
  if (base.model.noise_ohm) text += fmt::format("noise_ohm = {}\n", *base.model.noise_ohm);
  if (base.model.test_current_a) {
    text += fmt::format("test_current_a = {}\n", *base.model.test_current_a);
  }
  return text;
}

}  // namespace walkdown::gui
