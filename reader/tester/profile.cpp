// SPDX-License-Identifier: Apache-2.0
#include "reader/tester/profile.h"

#include <fmt/format.h>
#include <re2/re2.h>
#include <toml++/toml.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "reader/spelling.h"
#include "reader/tester/default_profile.h"
#include "reader/tester/read_instrument.h"

namespace walkdown::tester {
namespace {

constexpr std::array<std::string_view, 16> kKeys{
    "baud",           "bits",     "parity",         "stop",         "line",           "check",
    "check_optional", "over",     "accuracy_pct",   "accuracy_ohm", "resolution_ohm", "noise_ohm",
    "range_ohm",      "zero_ohm", "test_current_a", "instrument"};
constexpr std::array<std::string_view, 6> kGroups{"module", "rail", "pin", "value", "unit", "seq"};

// Takes values out of the table one key at a time, and keeps every mistake with its line.
class Taker {
 public:
  explicit Taker(const toml::table& table) : table_(table) {}

  void whole(std::string_view key, int low, int high, int& out) {
    const toml::node* node = table_.get(key);
    if (node == nullptr) return;
    const auto value = node->value_exact<std::int64_t>();
    if (value && *value >= low && *value <= high) {
      out = static_cast<int>(*value);
    } else {
      mistake(*node, key, fmt::format("write a whole number from {} to {}", low, high));
    }
  }

  // Empty where the key is not there or wrong.
  std::optional<double> number(std::string_view key, double low, double high) {
    const toml::node* node = table_.get(key);
    if (node == nullptr) return std::nullopt;
    const auto value = node->is_number() ? node->value<double>() : std::nullopt;
    if (value && std::isfinite(*value) && *value >= low && *value <= high) return value;
    mistake(*node, key, fmt::format("write a number from {} to {}", low, high));
    return std::nullopt;
  }

  void number(std::string_view key, double low, double high, double& out) {
    out = number(key, low, high).value_or(out);
  }

  template <typename T, std::size_t N>
  void word(std::string_view key, const std::array<std::pair<std::string_view, T>, N>& words,
            T& out) {
    const toml::node* node = table_.get(key);
    if (node == nullptr) return;
    const auto text = node->value_exact<std::string_view>();
    std::string all;
    for (const auto& [name, value] : words) {
      if (text == name) {
        out = value;
        return;
      }
      all += fmt::format("{}\"{}\"", all.empty() ? "" : ", ", name);
    }
    mistake(*node, key, "write one of " + all);
  }

  void truth(std::string_view key, bool& out) {
    const toml::node* node = table_.get(key);
    if (node == nullptr) return;
    const auto value = node->value_exact<bool>();
    if (!value) return mistake(*node, key, "write true or false");
    out = *value;
  }

  void pattern(std::string& out) {
    const toml::node* node = table_.get("line");
    if (node == nullptr) return;
    const auto text = node->value_exact<std::string>();
    const std::string fault = text ? pattern_fault(*text) : "write the pattern as a string";
    if (!fault.empty()) return mistake(*node, "line", fault);
    out = *text;
  }

  void tokens(std::vector<std::string>& out) {
    const toml::node* node = table_.get("over");
    if (node == nullptr) return;
    const toml::array* list = node->as_array();
    std::vector<std::string> taken;
    bool sound = list != nullptr && list->size() <= 100;
    for (std::size_t i = 0; sound && i < list->size(); ++i) {
      const auto text = (*list)[i].value_exact<std::string>();
      sound = text && !text->empty() && text->size() <= 40;
      if (sound) taken.push_back(*text);
    }
    if (!sound) return mistake(*node, "over", R"(write a list of words, as ["OL", "O.L"])");
    out = std::move(taken);
  }

  void instrument() {
    InstrumentMistakes found;
    (void)read_instrument(table_, found);
    for (auto& [line, say] : found) mistakes_.push_back({line, std::move(say)});
  }

  void near_misses() {
    for (const auto& [key, node] : table_) {
      const std::string_view meant = meant_key(key.str(), kKeys);
      if (meant.empty()) continue;
      mistakes_.push_back({key.source().begin.line,
                           fmt::format("'{}' is not a key of a tester profile; did you mean {}?",
                                       key.str(), meant)});
    }
  }

  // "line 3, baud: write ...", one a row, in the order of the file; empty where all is well.
  [[nodiscard]] std::string mistakes() {
    std::stable_sort(mistakes_.begin(), mistakes_.end(),
                     [](const Mistake& a, const Mistake& b) { return a.line < b.line; });
    std::string all;
    for (const Mistake& one : mistakes_) {
      all += fmt::format("{}line {}, {}", all.empty() ? "" : "\n  ", one.line, one.say);
    }
    return all;
  }

 private:
  struct Mistake {
    std::uint32_t line;
    std::string say;
  };

  void mistake(const toml::node& node, std::string_view key, std::string_view right) {
    mistakes_.push_back({node.source().begin.line, fmt::format("{}: {}", key, right)});
  }

  static std::string pattern_fault(const std::string& text) {
    if (text.size() > kMaxPatternBytes) return "write a pattern of at most 4096 bytes";
    re2::RE2::Options options;
    options.set_log_errors(false);
    const re2::RE2 pattern(text, options);
    if (!pattern.ok()) return "not an RE2 pattern: " + pattern.error();
    if (pattern.NumberOfCapturingGroups() > 15) return "write at most 15 groups";
    bool has_value = false;
    for (const auto& [name, index] : pattern.NamedCapturingGroups()) {
      has_value = has_value || name == "value";
      if (std::find(kGroups.begin(), kGroups.end(), name) == kGroups.end()) {
        return fmt::format("the group '{}' is none of module, rail, pin, value, unit, seq", name);
      }
    }
    return has_value ? "" : "it has no group named value: write (?P<value>...)";
  }

  const toml::table& table_;
  std::vector<Mistake> mistakes_;
};

constexpr std::array<std::pair<std::string_view, Parity>, 5> kParities{{{"none", Parity::none},
                                                                        {"even", Parity::even},
                                                                        {"odd", Parity::odd},
                                                                        {"mark", Parity::mark},
                                                                        {"space", Parity::space}}};
constexpr std::array<std::pair<std::string_view, Check>, 3> kChecks{
    {{"none", Check::none}, {"xor8", Check::xor8}, {"crc16-modbus", Check::crc16_modbus}}};

void take_model(Taker& take, Model& model) {
  take.number("accuracy_pct", 0, 50, model.accuracy_pct);
  take.number("accuracy_ohm", 0, 1e6, model.accuracy_ohm);
  take.number("resolution_ohm", 1e-6, 1e6, model.resolution_ohm);
  model.noise_ohm = take.number("noise_ohm", 0, 1e6);
  take.number("range_ohm", 1e-3, 1e9, model.range_ohm);
  take.number("zero_ohm", -1e3, 1e3, model.zero_ohm);
  model.test_current_a = take.number("test_current_a", 1e-9, 100);
}

Result<Profile> take_profile(const toml::table& table, std::string_view file_name) {
  Profile profile = default_profile();
  Taker take(table);
  take.whole("baud", 50, 4'000'000, profile.port.baud);
  take.whole("bits", 5, 8, profile.port.bits);
  take.word("parity", kParities, profile.port.parity);
  take.whole("stop", 1, 2, profile.port.stop);
  take.pattern(profile.line);
  // Who writes a line form or names a check states what the lines carry: then it is not optional
  // unless that is said as well.
  if (table.contains("line")) profile.check = Check::none;
  if (table.contains("line") || table.contains("check")) profile.check_optional = false;
  take.word("check", kChecks, profile.check);
  take.truth("check_optional", profile.check_optional);
  take.tokens(profile.over);
  take_model(take, profile.model);
  take.instrument();
  take.near_misses();
  if (std::string all = take.mistakes(); !all.empty()) {
    return Error{Code::bad_input, fmt::format("cannot use the tester profile {}", file_name),
                 std::move(all), ""};
  }
  return profile;
}

}  // namespace

Profile default_profile() {
  Profile profile;
  profile.line = kDefaultLine;
  profile.check = Check::xor8;
  profile.check_optional = true;
  profile.over.assign(kDefaultOver.begin(), kDefaultOver.end());
  return profile;
}

Result<Profile> read_profile(std::string_view toml, std::string_view file_name) {
  const std::string what = fmt::format("cannot use the tester profile {}", file_name);
  if (toml.size() > kMaxProfileBytes) {
    return Error{Code::bad_input, what, "it is larger than 1 MiB", "name a tester profile"};
  }
  const toml::parse_result parsed = toml::parse(toml);
  if (parsed) return take_profile(parsed.table(), file_name);
  return Error{
      Code::bad_input, what,
      fmt::format("line {}: {}", parsed.error().source().begin.line, parsed.error().description()),
      "write TOML"};
}

}  // namespace walkdown::tester
