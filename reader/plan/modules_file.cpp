// SPDX-License-Identifier: Apache-2.0
#include "reader/plan/modules_file.h"

#include "reader/plan/pin.h"
#include "reader/plan/toml_file.h"

namespace walkdown::plan {
namespace {

std::vector<std::uint16_t> rails_from(TomlFile& file, const std::string& name,
                                      const toml::table& table) {
  std::vector<std::uint16_t> rails;
  file.near_misses(table, {"rails"});
  const toml::node* node = table.get("rails");
  const toml::array* array = node == nullptr ? nullptr : node->as_array();
  bool good = array != nullptr && !array->empty() && array->size() <= kMaxRail;
  for (std::size_t i = 0; good && i < array->size(); ++i) {
    const auto pins = (*array)[i].value_exact<std::int64_t>();
    good = pins && *pins >= 1 && *pins <= kMaxPin;
    if (good) rails.push_back(static_cast<std::uint16_t>(*pins));
  }
  if (!good) {
    file.wrong(node == nullptr ? static_cast<const toml::node&>(table) : *node, name,
               "give rails = [pins on rail 1, pins on rail 2, ...], each from 1 to 9999");
  }
  return rails;
}

}  // namespace

const std::vector<std::uint16_t>* ModuleSizes::rails(std::uint16_t module) const {
  const auto found = modules.find(module);
  if (found != modules.end()) return &found->second;
  return default_rails.empty() ? nullptr : &default_rails;
}

Result<ModuleSizes> read_modules(std::string_view toml, std::string_view file_name) {
  TomlFile file(toml, file_name);
  ModuleSizes sizes;
  sizes.file_name = file_name;
  if (file.good()) {
    file.near_misses(file.root(), {"default", "module"});
    if (const toml::node* node = file.root().get("default")) {
      if (const toml::table* table = node->as_table()) {
        sizes.default_rails = rails_from(file, "default", *table);
      } else {
        file.wrong(*node, "default", "write a table [default]");
      }
    }
    for (const auto& [name, table] : file.named("module")) {
      const auto number = parse_part(name, 'M');
      if (!number) file.wrong(*table, name, "name a module from 1 to 9999, as [module.7]");
      auto rails = rails_from(file, name, *table);
      if (number && !sizes.modules.emplace(*number, std::move(rails)).second) {
        file.wrong(*table, name, "this module is there twice");
      }
    }
  }
  if (!file.good()) return file.error("cannot take the module sizes");
  return sizes;
}

}  // namespace walkdown::plan
