// SPDX-License-Identifier: Apache-2.0
#include "reader/plan/toml_file.h"

#include <cmath>

#include "reader/plan/problem.h"
#include "reader/spelling.h"

namespace walkdown::plan {
namespace {

std::string number_text(double value) {
  std::string text = std::to_string(value);
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.') text.pop_back();
  return text;
}

std::string range_text(double lo, double hi) {
  return "from " + number_text(lo) + " to " + number_text(hi);
}

std::optional<double> finite(const toml::node& node) {
  const auto value = node.value<double>();
  if (!value || !node.is_number() || !std::isfinite(*value)) return std::nullopt;
  return value;
}

}  // namespace

TomlFile::TomlFile(std::string_view text, std::string_view file_name) : file_name_(file_name) {
  auto parsed = toml::parse(text);
  if (parsed) {
    root_ = std::move(parsed).table();
    return;
  }
  const auto& error = parsed.error();
  mistakes_.push_back("line " + std::to_string(error.source().begin.line) + ": " +
                      shown(error.description()));
}

void TomlFile::wrong(const toml::node& at, std::string_view key, std::string_view remedy) {
  mistakes_.push_back("line " + std::to_string(at.source().begin.line) + ", " + shown(key) + ": " +
                      std::string(remedy));
}

std::optional<double> TomlFile::number(const toml::table& table, std::string_view key, double lo,
                                       double hi) {
  const toml::node* node = table.get(key);
  if (node == nullptr) return std::nullopt;
  const auto value = finite(*node);
  if (value && *value >= lo && *value <= hi) return value;
  wrong(*node, key, "write a number " + range_text(lo, hi));
  return std::nullopt;
}

std::optional<Interval> TomlFile::interval(const toml::table& table, std::string_view key,
                                           double lo, double hi) {
  const toml::node* node = table.get(key);
  if (node == nullptr) return std::nullopt;
  if (const toml::array* pair = node->as_array(); pair != nullptr && pair->size() == 2) {
    const auto a = finite((*pair)[0]);
    const auto b = finite((*pair)[1]);
    if (a && b && *a <= *b && *a >= lo && *b <= hi) return Interval{*a, *b};
  } else if (const auto both = finite(*node); both && *both >= lo && *both <= hi) {
    return Interval{*both, *both};
  }
  wrong(*node, key, "write [least, most], least first, " + range_text(lo, hi));
  return std::nullopt;
}

std::optional<std::string> TomlFile::text(const toml::table& table, std::string_view key) {
  const toml::node* node = table.get(key);
  if (node == nullptr) return std::nullopt;
  if (auto value = node->value<std::string>()) return value;
  wrong(*node, key, "write a text in quotes");
  return std::nullopt;
}

std::vector<std::pair<std::string, const toml::table*>> TomlFile::named(std::string_view name) {
  std::vector<std::pair<std::string, const toml::table*>> out;
  const toml::node* node = root_.get(name);
  if (node == nullptr) return out;
  const toml::table* tables = node->as_table();
  if (tables == nullptr) {
    wrong(*node, name, "write one table [" + std::string(name) + ".\"NAME\"] each");
    return out;
  }
  for (const auto& [key, value] : *tables) {
    if (const toml::table* table = value.as_table()) {
      out.emplace_back(std::string(key.str()), table);
    } else {
      wrong(value, key.str(), "write a table [" + std::string(name) + ".\"NAME\"]");
    }
  }
  return out;
}

void TomlFile::near_misses(const toml::table& table,
                           std::initializer_list<std::string_view> known) {
  for (const auto& [key, value] : table) {
    const std::string_view meant = meant_key(key.str(), {known.begin(), known.end()});
    if (meant.empty()) continue;
    wrong(value, key.str(), "this is no key; did you mean " + std::string(meant) + "?");
  }
}

Error TomlFile::error(std::string_view what) const {
  std::string remedy;
  for (const std::string& mistake : mistakes_) remedy += (remedy.empty() ? "" : "; ") + mistake;
  return Error{Code::bad_input, std::string(what), file_name_, remedy};
}

}  // namespace walkdown::plan
