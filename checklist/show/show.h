// SPDX-License-Identifier: Apache-2.0
// The show: every file that the day was planned with, as it was, byte for byte. Nothing is
// translated, so that whoever holds it can import the same files again and come to the same plan.
#pragma once

#include <cstdint>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "reader/result.h"

namespace walkdown::show {

enum class Role : std::uint8_t {
  plan,       // CSV
  columns,    // TOML: which header means which column
  igniters,   // TOML
  tester,     // TOML
  modules,    // TOML
  site,       // GeoJSON
  checklist,  // TOML
  distances,  // TOML
};
inline constexpr std::uint8_t kRoles = 8;

// The word of a role, as it stands in JSON: "plan", "columns", ...
[[nodiscard]] std::string_view word(Role role);
[[nodiscard]] std::optional<Role> role_of(std::string_view word);

struct File {
  Role role = Role::plan;
  std::string name;  // without folders
  std::string text;  // UTF-8

  friend bool operator==(const File&, const File&) = default;
};

struct Show {
  std::vector<File> files;                      // sorted by role, one file a role
  std::optional<std::int32_t> temp_milli_degc;  // wire temperature given for the day, if it was

  // Null where the show has no such file.
  [[nodiscard]] const File* find(Role role) const;
  // Replaces a file of the same role.
  void put(File file);

  friend bool operator==(const Show&, const Show&) = default;
};

// {"plan":{"name":"plan.csv","text":"..."},...,"temp_milli_degc":24000}: strings and whole numbers.
[[nodiscard]] nlohmann::json to_json(const Show& show);

// Errors: bad_input for an unknown role, a missing member, a text that is no string.
Result<Show> from_json(const nlohmann::json& json);

}  // namespace walkdown::show
