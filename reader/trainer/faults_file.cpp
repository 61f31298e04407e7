// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>
#include <toml++/toml.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "reader/trainer/faults.h"

namespace walkdown::trainer {
namespace {

std::optional<RailId> parse_rail(std::string_view text) {
  const std::size_t slash = text.find('/');
  if (slash == std::string_view::npos) return std::nullopt;
  const auto module = plan::parse_part(text.substr(0, slash), 'M');
  const auto rail = plan::parse_part(text.substr(slash + 1), 'R');
  return module && rail ? std::optional(RailId{*module, *rail}) : std::nullopt;
}

// One [[fault]]: takes the keys that its kind needs, and keeps every mistake with its line.
class Taker {
 public:
  Taker(const toml::table& table, std::vector<std::string>& mistakes)
      : table_(table), mistakes_(mistakes) {}

  Fault take() {
    fault_.line = table_.source().begin.line;
    const auto kind_text = text("kind");
    const auto kind = kind_text ? fault_kind(*kind_text) : std::nullopt;
    if (!kind) {
      wrong("kind", R"(write one of the kinds of fault, as "open" or "reversed")");
      return fault_;
    }
    fault_.kind = *kind;
    take_place();
    take_amount();
    if (*kind == FaultKind::wrong_igniter || *kind == FaultKind::stray) optional_igniter();
    for (const auto& [key, node] : table_) {
      if (std::find(used_.begin(), used_.end(), key.str()) == used_.end()) {
        mistakes_.push_back(fmt::format("line {}, '{}' says nothing about the kind '{}'",
                                        key.source().begin.line, key.str(), word(*kind)));
      }
    }
    return fault_;
  }

 private:
  void take_place() {
    switch (fault_.kind) {
      case FaultKind::swapped:
        pins(2, "pins", R"(write two pins, as ["M01/R1/P02", "M01/R1/P05"])");
        break;
      case FaultKind::shifted:
        rails(1, "rail", "write a rail, as \"M01/R2\"");
        fault_.first = static_cast<std::uint16_t>(whole("first", 1, plan::kMaxPin));
        fault_.last = static_cast<std::uint16_t>(whole("last", 1, plan::kMaxPin));
        fault_.by = whole("by", -plan::kMaxPin, plan::kMaxPin);
        break;
      case FaultKind::reversed:
        rails(1, "rail", "write a rail, as \"M01/R2\"");
        break;
      case FaultKind::rails_exchanged:
        rails(2, "rails", R"(write two rails, as ["M01/R1", "M02/R1"])");
        break;
      case FaultKind::modules_exchanged:
        modules();
        break;
      case FaultKind::tester_offset:
      case FaultKind::wire_differs:
        break;
      default:
        pins(1, "pin", "write a pin, as \"M01/R1/P05\"");
    }
  }

  void take_amount() {
    switch (fault_.kind) {
      case FaultKind::poor_joint:
      case FaultKind::leak:
        fault_.amount = number("ohm", 1e-6, 1e9);
        break;
      case FaultKind::tester_offset:
        fault_.amount = number("ohm", -1000, 1000);
        break;
      case FaultKind::wrong_lead:
      case FaultKind::wire_differs:
        fault_.amount = number("factor", 0.01, 100);
        break;
      default:
        break;
    }
  }

  void wrong(std::string_view key, std::string_view right) {
    const toml::node* node = table_.get(key);
    const auto line = node != nullptr ? node->source().begin.line : table_.source().begin.line;
    mistakes_.push_back(fmt::format("line {}, {}: {}", line, key, right));
  }

  const toml::node* find(std::string_view key) {
    used_.push_back(key);
    return table_.get(key);
  }

  std::optional<std::string> text(std::string_view key) {
    const toml::node* node = find(key);
    return node != nullptr ? node->value_exact<std::string>() : std::nullopt;
  }

  // The words of a list, or the one word where one is wanted.
  std::vector<std::string> words(std::string_view key) {
    const toml::node* node = find(key);
    std::vector<std::string> all;
    if (node == nullptr) return all;
    if (const auto one = node->value_exact<std::string>()) return {*one};
    if (const toml::array* list = node->as_array()) {
      for (const toml::node& each : *list) {
        all.push_back(each.value_exact<std::string>().value_or(""));
      }
    }
    return all;
  }

  void pins(std::size_t count, std::string_view key, std::string_view right) {
    for (const std::string& each : words(key)) {
      if (const auto pin = plan::parse_pin(each)) fault_.pins.push_back(*pin);
    }
    if (fault_.pins.size() != count) wrong(key, right);
    fault_.pins.resize(count);
  }

  void rails(std::size_t count, std::string_view key, std::string_view right) {
    for (const std::string& each : words(key)) {
      if (const auto rail = parse_rail(each)) fault_.rails.push_back(*rail);
    }
    if (fault_.rails.size() != count) wrong(key, right);
    fault_.rails.resize(count);
  }

  void modules() {
    const toml::node* node = find("modules");
    const toml::array* list = node != nullptr ? node->as_array() : nullptr;
    for (std::size_t i = 0; list != nullptr && i < list->size(); ++i) {
      const auto value = (*list)[i].value_exact<std::int64_t>().value_or(0);
      if (value >= 1 && value <= plan::kMaxModule) {
        fault_.modules.push_back(static_cast<std::uint16_t>(value));
      }
    }
    if (fault_.modules.size() != 2) wrong("modules", "write two modules, as [3, 7]");
    fault_.modules.resize(2);
  }

  int whole(std::string_view key, int low, int high) {
    const toml::node* node = find(key);
    const auto value = node != nullptr ? node->value_exact<std::int64_t>() : std::nullopt;
    if (value && *value >= low && *value <= high) return static_cast<int>(*value);
    wrong(key, fmt::format("write a whole number from {} to {}", low, high));
    return 0;
  }

  double number(std::string_view key, double low, double high) {
    const toml::node* node = find(key);
    const auto value = node != nullptr && node->is_number() ? node->value<double>() : std::nullopt;
    if (value && std::isfinite(*value) && *value >= low && *value <= high) return *value;
    wrong(key, fmt::format("write a number from {} to {}", low, high));
    return 0;
  }

  void optional_igniter() {
    if (!table_.contains("igniter")) return;
    const auto name = text("igniter");
    if (!name) return wrong("igniter", "write the name of an igniter of the plan");
    fault_.igniter = *name;
  }

  const toml::table& table_;
  std::vector<std::string>& mistakes_;
  std::vector<std::string_view> used_;
  Fault fault_;
};

std::vector<Fault> take_all(const toml::table& root, std::vector<std::string>& mistakes) {
  std::vector<Fault> faults;
  for (const auto& [key, node] : root) {
    const toml::array* list = node.as_array();
    if (key.str() != "fault" || list == nullptr) {
      mistakes.push_back(
          fmt::format("line {}, '{}': write [[fault]]", key.source().begin.line, key.str()));
      continue;
    }
    for (const toml::node& each : *list) {
      if (const toml::table* table = each.as_table()) {
        faults.push_back(Taker(*table, mistakes).take());
      } else {
        mistakes.push_back(fmt::format("line {}: write [[fault]]", each.source().begin.line));
      }
    }
  }
  return faults;
}

}  // namespace

Result<std::vector<Fault>> read_faults(std::string_view toml, std::string_view file_name) {
  const std::string what = fmt::format("cannot use the fault script {}", file_name);
  if (toml.size() > kMaxScriptBytes) {
    return Error{Code::bad_input, what, "it is larger than 1 MiB", "name a fault script"};
  }
  const toml::parse_result parsed = toml::parse(toml);
  if (!parsed) {
    return Error{Code::bad_input, what,
                 fmt::format("line {}: {}", parsed.error().source().begin.line,
                             parsed.error().description()),
                 "write TOML"};
  }
  std::vector<std::string> mistakes;
  std::vector<Fault> faults = take_all(parsed.table(), mistakes);
  if (mistakes.empty()) return faults;
  return Error{Code::bad_input, what, fmt::format("{}", fmt::join(mistakes, "\n  ")), ""};
}

}  // namespace walkdown::trainer
