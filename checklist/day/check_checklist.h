// SPDX-License-Identifier: Apache-2.0
// What must hold across the items of a checklist. Internal to this folder.
#pragma once

#include <string>
#include <vector>

#include "checklist/day/checklist.h"
#include "checklist/day/toml_source.h"

namespace walkdown::day {

// What an item's table says about other items, before their names are looked up.
struct Written {
  toml::source_region at;
  std::vector<std::string> needs;
  std::string after;
  std::string repeats;
};

// Resolves needs, after and repeats, and says every mistake. Precondition: one Written an item.
void check_checklist(const toml::table& root, const std::vector<Written>& written,
                     Checklist& checklist, TomlSource& source);

}  // namespace walkdown::day
