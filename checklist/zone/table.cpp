// SPDX-License-Identifier: Apache-2.0
#include "checklist/zone/table.h"

#include <fmt/format.h>
#include <toml++/toml.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace walkdown::zone {
namespace {

constexpr std::size_t kLargestFile = 1U << 20U;

class Import {
 public:
  explicit Import(std::string_view file_name) : file_name_(file_name) {}

  TableRead run(std::string_view text);

 private:
  void say(const toml::source_region& at, std::string what, std::string remedy);
  std::string text_of(const toml::table& table, std::string_view key);
  std::optional<double> number(const toml::table& table, std::string_view key, double most);
  void only(const toml::table& table, std::initializer_list<std::string_view> known);
  void row(const toml::node& node);

  std::string file_name_;
  TableRead read_;
};

void Import::say(const toml::source_region& at, std::string what, std::string remedy) {
  read_.mistakes.push_back({Code::bad_input, std::move(what),
                            fmt::format("{}, line {}", file_name_, at.begin.line),
                            std::move(remedy)});
}

std::string Import::text_of(const toml::table& table, std::string_view key) {
  const auto* const node = table.get(key);
  if (node != nullptr && node->is_string() && !node->ref<std::string>().empty()) {
    return node->ref<std::string>();
  }
  say(node == nullptr ? table.source() : node->source(), fmt::format("{} is missing", key),
      fmt::format("write {} = \"...\"", key));
  return {};
}

std::optional<double> Import::number(const toml::table& table, std::string_view key, double most) {
  const auto* const node = table.get(key);
  if (node == nullptr) return std::nullopt;
  const auto value = node->value<double>();
  if (node->is_number() && value && *value > 0 && *value <= most) return value;
  say(node->source(), fmt::format("{} is not a number over 0 up to {}", key, most),
      "write millimetres for calibres and metres for distances");
  return std::nullopt;
}

void Import::only(const toml::table& table, std::initializer_list<std::string_view> known) {
  for (const auto& [key, node] : table) {
    if (std::find(known.begin(), known.end(), key.str()) != known.end()) continue;
    say(key.source(), fmt::format("{} means nothing in a table of distances", key.str()),
        "correct its spelling or take it out");
  }
}

void Import::row(const toml::node& node) {
  const auto* const table = node.as_table();
  if (table == nullptr) {
    say(node.source(), "a row is not a table", "write it under [[row]]");
    return;
  }
  only(*table, {"up_to_mm", "audience_m", "structure_m"});
  const auto calibre = number(*table, "up_to_mm", 1000);
  const auto audience = number(*table, "audience_m", 10'000);
  const auto structure = number(*table, "structure_m", 10'000);
  if (!calibre || !audience) {
    say(table->source(), "a row needs up_to_mm and audience_m", "write both");
    return;
  }
  const Row next{*calibre, *audience, structure.value_or(*audience)};
  auto& rows = read_.table.rows;
  if (!rows.empty() &&
      (next.up_to_mm <= rows.back().up_to_mm || next.audience_m < rows.back().audience_m ||
       next.structure_m < rows.back().structure_m)) {
    say(table->source(), "rows do not rise", "order them by calibre; distances never fall");
  }
  rows.push_back(next);
}

TableRead Import::run(std::string_view text) {
  if (text.size() > kLargestFile) {
    say({}, "the table of distances is over 1 MiB", "choose another file");
    return std::move(read_);
  }
  try {
    const toml::table root = toml::parse(text);
    only(root, {"name", "source", "edition", "without_calibre_m", "row"});
    read_.table.name = text_of(root, "name");
    read_.table.source = text_of(root, "source");
    read_.table.edition = text_of(root, "edition");
    read_.table.without_calibre_m = number(root, "without_calibre_m", 10'000);
    if (const auto* const rows = root["row"].as_array()) {
      for (const auto& each : *rows) row(each);
    }
    if (read_.table.rows.empty()) say(root.source(), "there is no row", "add [[row]] tables");
  } catch (const toml::parse_error& error) {
    say(error.source(), std::string(error.description()), "correct the TOML");
  }
  return std::move(read_);
}

double distance_of(const Row& row, Role role) {
  return role == Role::structure ? row.structure_m : row.audience_m;
}

}  // namespace

std::optional<double> Table::least_m(double calibre_mm, Role role) const {
  const auto found = std::find_if(rows.begin(), rows.end(),
                                  [&](const Row& row) { return calibre_mm <= row.up_to_mm; });
  if (found == rows.end()) return std::nullopt;
  return distance_of(*found, role);
}

std::optional<double> Table::largest_mm(double distance_m, Role role) const {
  const auto found = std::find_if(rows.rbegin(), rows.rend(), [&](const Row& row) {
    return distance_of(row, role) <= distance_m;
  });
  if (found == rows.rend()) return std::nullopt;
  return found->up_to_mm;
}

TableRead read_table(std::string_view text, std::string_view file_name) {
  return Import(file_name).run(text);
}

}  // namespace walkdown::zone
