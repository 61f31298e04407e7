// SPDX-License-Identifier: Apache-2.0
// How many rails a module has and how many pins each of them: what the plan alone cannot tell, as
// the last pins of a rail may be free. FORMAT.md, "module sizes".
#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "reader/result.h"

namespace walkdown::plan {

struct ModuleSizes {
  std::vector<std::uint16_t> default_rails;  // pins on rail 1, 2, ...; empty where none is stated
  std::map<std::uint16_t, std::vector<std::uint16_t>> modules;  // these differ from the default
  std::string file_name;                                        // for sentences

  // Null where neither the module nor a default is stated: the plan decides then.
  [[nodiscard]] const std::vector<std::uint16_t>* rails(std::uint16_t module) const;
};

// Code::bad_input with every mistake of the file and its line.
[[nodiscard]] Result<ModuleSizes> read_modules(std::string_view toml, std::string_view file_name);

}  // namespace walkdown::plan
