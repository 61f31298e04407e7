// SPDX-License-Identifier: Apache-2.0
#include "checklist/day/toml_source.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "checklist/day/duration.h"

namespace walkdown::day {

void TomlSource::say(const toml::source_region& at, std::string what, std::string remedy) {
  mistakes_.push_back({Code::bad_input, std::move(what),
                       fmt::format("{}, line {}", file_name_, at.begin.line), std::move(remedy)});
}

std::string TomlSource::text(const toml::table& table, std::string_view key) {
  const auto* const node = table.get(key);
  if (node == nullptr) return {};
  if (node->is_string() && !node->ref<std::string>().empty()) return node->ref<std::string>();
  say(node->source(), fmt::format("{} is not a text", key), "write it between quotes");
  return {};
}

std::vector<std::string> TomlSource::list(const toml::table& table, std::string_view key) {
  std::vector<std::string> found;
  const auto* const node = table.get(key);
  if (node == nullptr) return found;
  if (node->is_string()) return {node->ref<std::string>()};
  const auto* const array = node->as_array();
  for (std::size_t i = 0; array != nullptr && i < array->size(); ++i) {
    if ((*array)[i].is_string()) found.push_back((*array)[i].ref<std::string>());
  }
  if (array == nullptr || found.size() != array->size()) {
    say(node->source(), fmt::format("{} is not a list of words", key), "write [\"...\", \"...\"]");
  }
  return found;
}

std::optional<std::int64_t> TomlSource::duration(const toml::table& table, std::string_view key,
                                                 bool negative) {
  const auto* const node = table.get(key);
  if (node == nullptr) return std::nullopt;
  const auto span =
      node->is_string() ? parse_duration(node->ref<std::string>(), negative) : std::nullopt;
  if (!span) {
    say(node->source(), fmt::format("{} is not a span of time up to 48 h", key),
        "write it like \"15m\", \"1h30m\" or \"45s\"");
  }
  return span;
}

std::optional<std::int64_t> TomlSource::milli(const toml::table& table, std::string_view key) {
  const auto* const node = table.get(key);
  if (node == nullptr) return std::nullopt;
  const auto value = node->is_number() ? node->value<double>() : std::nullopt;
  if (value && std::abs(*value) <= 1e9) return std::llround(*value * 1000);
  say(node->source(), fmt::format("{} is not a number", key), "write it without its unit");
  return std::nullopt;
}

bool TomlSource::flag(const toml::table& table, std::string_view key, bool otherwise) {
  const auto* const node = table.get(key);
  if (node == nullptr) return otherwise;
  if (!node->is_boolean()) {
    say(node->source(), fmt::format("{} is neither true nor false", key), "write one of them");
    return otherwise;
  }
  return node->ref<bool>();
}

std::string TomlSource::needed(const toml::table& table, std::string_view key) {
  if (!table.contains(key)) {
    say(table.source(), fmt::format("{} is missing", key), fmt::format("write {} = \"...\"", key));
  }
  return text(table, key);
}

void TomlSource::only(const toml::table& table, std::initializer_list<std::string_view> known) {
  for (const auto& [key, node] : table) {
    if (std::find(known.begin(), known.end(), key.str()) != known.end()) continue;
    say(key.source(), fmt::format("{} means nothing here", key.str()),
        "correct its spelling or take it out");
  }
}

std::vector<const toml::table*> TomlSource::tables(const toml::table& table, std::string_view key) {
  std::vector<const toml::table*> found;
  const auto* const node = table.get(key);
  if (node == nullptr) return found;
  const auto* const array = node->as_array();
  for (std::size_t i = 0; array != nullptr && i < array->size(); ++i) {
    if (const auto* const each = (*array)[i].as_table()) found.push_back(each);
  }
  if (array == nullptr || found.size() != array->size()) {
    say(node->source(), fmt::format("{} is not a list of tables", key),
        fmt::format("write each under [[{}]]", key));
  }
  return found;
}

}  // namespace walkdown::day
