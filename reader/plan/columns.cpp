// SPDX-License-Identifier: Apache-2.0
#include "reader/plan/columns.h"

#include <algorithm>

#include "reader/plan/toml_file.h"

namespace walkdown::plan {
namespace {

bool known(std::string_view column) {
  return std::find(kColumns.begin(), kColumns.end(), column) != kColumns.end();
}

std::optional<std::string> plain(const toml::node& node) {
  if (auto text = node.value_exact<std::string>()) return text;
  if (const auto whole = node.value_exact<std::int64_t>()) return std::to_string(*whole);
  return std::nullopt;
}

void take(TomlFile& file, std::string_view part,
          std::map<std::string, std::string, std::less<>>& out) {
  const toml::node* node = file.root().get(part);
  if (node == nullptr) return;
  const toml::table* table = node->as_table();
  if (table == nullptr) {
    file.wrong(*node, part, "write a table [" + std::string(part) + "]");
    return;
  }
  for (const auto& [key, value] : *table) {
    const auto text = plain(value);
    if (!known(key.str())) {
      file.wrong(value, key.str(), "this is no column of a plan");
    } else if (!text) {
      file.wrong(value, key.str(), "write a text in quotes");
    } else if (text->empty() && part == "header") {
      file.wrong(value, key.str(), "name the header that stands in the table");
    } else {
      out.emplace(std::string(key.str()), *text);
    }
  }
}

}  // namespace

Result<ColumnMap> read_columns(std::string_view toml, std::string_view file_name) {
  TomlFile file(toml, file_name);
  ColumnMap map;
  if (file.good()) {
    file.near_misses(file.root(), {"header", "constant"});
    take(file, "header", map.header);
    take(file, "constant", map.constant);
    for (const auto& [column, value] : map.constant) {
      if (!map.header.contains(column)) continue;
      file.wrong(file.root(), column, "this column has a header and a constant; keep one");
    }
  }
  if (!file.good()) return file.error("cannot take the column map");
  return map;
}

}  // namespace walkdown::plan
