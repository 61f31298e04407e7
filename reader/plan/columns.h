// SPDX-License-Identifier: Apache-2.0
// Which header of somebody else's table is which column of ours, and constants for columns that it
// does not have. FORMAT.md, "column map".
#pragma once

#include <array>
#include <map>
#include <string>
#include <string_view>

#include "reader/result.h"

namespace walkdown::plan {

// The columns of a plan by our names, in the order in which we write them.
inline constexpr std::array<std::string_view, 13> kColumns = {
    "cue",  "position", "module", "rail",   "pin",        "igniter", "count",
    "join", "wire",     "lead_m", "device", "calibre_mm", "note"};

// Keys are names of kColumns. A column is in one of the two maps at most.
struct ColumnMap {
  std::map<std::string, std::string, std::less<>> header;    // our column -> their header
  std::map<std::string, std::string, std::less<>> constant;  // our column -> value of every row
};

// Code::bad_input with every mistake of the file and its line.
[[nodiscard]] Result<ColumnMap> read_columns(std::string_view toml, std::string_view file_name);

}  // namespace walkdown::plan
