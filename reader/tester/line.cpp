// SPDX-License-Identifier: Apache-2.0
#include "reader/tester/line.h"

#include <fmt/format.h>
#include <re2/re2.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <map>

#include "reader/tester/check.h"
#include "reader/tester/value.h"

namespace walkdown::tester {
namespace {

constexpr int kMaxCaptures = 16;
constexpr std::string_view kEdges("\0 \t\r", 4);
constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";

std::string_view trimmed(std::string_view text) {
  if (text.starts_with(kByteOrderMark)) text.remove_prefix(kByteOrderMark.size());
  const std::size_t first = text.find_first_not_of(kEdges);
  if (first == std::string_view::npos) return {};
  return text.substr(first, text.find_last_not_of(kEdges) - first + 1);
}

std::string_view view(const re2::StringPiece& piece) { return {piece.data(), piece.size()}; }

bool same_token(std::string_view a, std::string_view b) {
  constexpr auto lower = [](char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  };
  return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                    [&](char x, char y) { return lower(x) == lower(y); });
}

// The whole of `text` as a number, also behind the letter that the address part is known by.
std::optional<std::uint16_t> part(std::string_view text, char letter) {
  if (!text.empty() && (text.front() == letter || text.front() == letter + ('a' - 'A'))) {
    text.remove_prefix(1);
  }
  std::uint16_t value = 0;
  const char* end = text.data() + text.size();
  const auto [stop, error] = std::from_chars(text.data(), end, value);
  if (error != std::errc{} || stop != end || value < 1 || value > 9999) return std::nullopt;
  return value;
}

// Printable, and short enough for a sentence: the line may hold anything.
std::string quoted(std::string_view text) {
  std::string out = "'";
  for (const char c : text.substr(0, 24)) out += c >= ' ' && c <= '~' ? c : '?';
  return out + (text.size() > 24 ? "...'" : "'");
}

std::optional<Rejected> fault_of(Check check, bool optional, const Checked& line) {
  if (check == Check::none) return std::nullopt;
  if (!line.digits) {
    if (optional) return std::nullopt;
    return Rejected{"the checksum is missing"};
  }
  if (check_holds(check, line)) return std::nullopt;
  const std::string right = check == Check::xor8 ? fmt::format("{:02X}", xor8(line.body))
                                                 : fmt::format("{:04X}", crc16_modbus(line.body));
  return Rejected{
      fmt::format("the checksum is {}, the line itself gives {}", quoted(*line.digits), right)};
}

struct Value {
  bool over = false;
  std::int64_t micro = 0;
};
using ValueOr = std::variant<Value, Rejected>;

ValueOr read_value(std::string_view text, std::string_view unit,
                   const std::vector<std::string>& over) {
  const std::optional<int> exponent = unit_exponent(unit);
  if (!exponent) {
    return Rejected{fmt::format("the unit {} is not one of resistance", quoted(unit))};
  }
  const Decimal decimal = parse_decimal(text);
  if (decimal.kind == Numeral::overflow) return Value{true, 0};
  if (decimal.kind == Numeral::nan) return Rejected{"the tester says that it has no number"};
  if (decimal.kind == Numeral::not_one) {
    const bool is_over = std::any_of(over.begin(), over.end(), [&](const std::string& token) {
      return same_token(token, text);
    });
    if (is_over) return Value{true, 0};
    return Rejected{
        fmt::format("the value {} is neither a number nor a word for above range", quoted(text))};
  }
  const std::optional<std::int64_t> micro = micro_ohm(decimal, *exponent);
  if (!micro) {
    return Rejected{fmt::format("the value {} is outside -1000 ohm .. 1e9 ohm", quoted(text))};
  }
  return Value{false, *micro};
}

}  // namespace

Result<LineParser> LineParser::make(const Profile& profile) {
  re2::RE2::Options options;
  options.set_log_errors(false);
  auto pattern = std::make_shared<const re2::RE2>(profile.line, options);
  const auto failed = [&](std::string why, std::string remedy) {
    return Error{Code::bad_input, "the line pattern of the tester profile cannot be used",
                 std::move(why), std::move(remedy)};
  };
  if (!pattern->ok()) return failed(pattern->error(), "write an RE2 pattern");
  const std::map<std::string, int>& names = pattern->NamedCapturingGroups();
  LineParser parser;
  Groups& groups = parser.groups_;
  const std::array<std::pair<std::string_view, int*>, 6> known{{{"module", &groups.module},
                                                                {"rail", &groups.rail},
                                                                {"pin", &groups.pin},
                                                                {"value", &groups.value},
                                                                {"unit", &groups.unit},
                                                                {"seq", &groups.seq}}};
  for (const auto& [name, index] : known) {
    const auto found = names.find(std::string(name));
    if (found != names.end()) *index = found->second;
    parser.captures_ = std::max(parser.captures_, *index);
  }
  if (groups.value == 0) return failed("it has no group named value", "write (?P<value>...)");
  if (parser.captures_ >= kMaxCaptures) {
    return failed("it has more than 15 groups", "write (?:...) where no value is taken");
  }
  parser.pattern_ = std::move(pattern);
  parser.check_ = profile.check;
  parser.check_optional_ = profile.check_optional;
  parser.over_ = profile.over;
  return parser;
}

bool LineParser::addressed() const {
  return groups_.module != 0 || groups_.rail != 0 || groups_.pin != 0;
}

bool LineParser::carries_check(std::string_view raw) {
  const Checked line = split_check(trimmed(raw));
  return line.digits && (line.digits->size() == 2 || line.digits->size() == 4);
}

Parsed LineParser::parse(std::string_view raw) const {
  if (raw.size() > kMaxLineBytes) return Rejected{"the line is longer than 4096 bytes"};
  std::string_view text = trimmed(raw);
  if (text.empty()) return Rejected{"the line is blank"};
  if (text.find('\0') != std::string_view::npos) {
    return Rejected{"the line has a NUL byte inside: a byte was damaged on the way"};
  }
  if (check_ != Check::none) {
    const Checked checked = split_check(text);
    if (auto fault = fault_of(check_, check_optional_, checked)) return *std::move(fault);
    text = trimmed(checked.body);
  }
  std::array<re2::StringPiece, kMaxCaptures> found;
  if (!pattern_->Match(re2::StringPiece(text.data(), text.size()), 0, text.size(),
                       re2::RE2::ANCHOR_BOTH, found.data(), captures_ + 1)) {
    return Rejected{"the line is not in the form that the tester profile describes"};
  }
  const auto group = [&](int index) {
    return index == 0 ? std::string_view{} : trimmed(view(found[static_cast<std::size_t>(index)]));
  };
  const ValueOr value = read_value(group(groups_.value), group(groups_.unit), over_);
  if (const auto* rejected = std::get_if<Rejected>(&value)) return *rejected;
  const auto& [over, micro] = std::get<Value>(value);

  std::optional<std::uint64_t> seq;
  if (const std::string_view digits = group(groups_.seq); !digits.empty()) {
    std::uint64_t number = 0;
    const char* end = digits.data() + digits.size();
    const auto [stop, error] = std::from_chars(digits.data(), end, number);
    if (error != std::errc{} || stop != end) {
      return Rejected{fmt::format("the line number {} is not a whole number", quoted(digits))};
    }
    seq = number;
  }
  if (!addressed()) return BareValue{over, micro, seq};

  const auto address = [&](int index, char letter) -> std::optional<std::uint16_t> {
    return index == 0 ? std::optional<std::uint16_t>(1) : part(group(index), letter);
  };
  const auto module = address(groups_.module, 'M');
  const auto rail = address(groups_.rail, 'R');
  const auto pin = address(groups_.pin, 'P');
  if (!module || !rail || !pin) {
    return Rejected{fmt::format("the {} is not a number from 1 to 9999",
                                !module ? "module" : (!rail ? "rail" : "pin"))};
  }
  return Reading{{*module, *rail, *pin}, over, micro, seq};
}

Parsed LineParser::parse(const Line& line) const {
  if (line.ending == Ending::too_long) return Rejected{"the line is longer than 4096 bytes"};
  if (line.ending == Ending::hang_up)
    return Rejected{"the line was cut off when the port went away"};
  Parsed parsed = parse(line.text);
  if (line.beginning == Beginning::unknown && std::holds_alternative<BareValue>(parsed)) {
    return Rejected{"the first line after the port was opened may lack its beginning"};
  }
  return parsed;
}

std::optional<Rejected> ChecksumHabit::judge(std::string_view raw) const {
  if (!expects_check() || LineParser::carries_check(raw)) return std::nullopt;
  return Rejected{"the checksum is missing, and most lines of this tester carry one"};
}

}  // namespace walkdown::tester
