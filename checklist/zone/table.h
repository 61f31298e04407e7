// SPDX-License-Identifier: Apache-2.0
// A table of least distances by calibre: data, with its source. National tables differ widely, so
// the local authority's replaces the one that ships, and its name goes onto every report.
//
//   name = "..."                 what the report calls the rule set
//   source = "..."               where the figures were published
//   edition = "..."
//   without_calibre_m = 22.86    optional: for devices that have no calibre
//   [[row]]
//   up_to_mm = 76.2              calibres up to this one
//   audience_m = 64.008          to people
//   structure_m = 64.008         optional: to buildings; as for people when left out
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "checklist/zone/site.h"
#include "reader/result.h"

namespace walkdown::zone {

struct Row {
  double up_to_mm = 0;
  double audience_m = 0;
  double structure_m = 0;
};

struct Table {
  std::string name;
  std::string source;
  std::string edition;
  std::optional<double> without_calibre_m;
  std::vector<Row> rows;  // calibres and distances rise from row to row

  // The distance asked for; empty for a calibre over the last row. The next larger row applies to a
  // calibre between two. Precondition: role is audience or structure.
  [[nodiscard]] std::optional<double> least_m(double calibre_mm, Role role) const;
  // The largest calibre of the table that is allowed at this distance; empty when none is.
  [[nodiscard]] std::optional<double> largest_mm(double distance_m, Role role) const;
};

struct TableRead {
  Table table;
  std::vector<Error> mistakes;  // all, each with its line; usable only when there is none
};

// Mistakes: not TOML, a missing name, source or edition, no row, a value out of range (calibres
// 1..1000 mm, distances over 0 up to 10000 m), rows that do not rise, a key that means nothing.
[[nodiscard]] TableRead read_table(std::string_view text, std::string_view file_name);

}  // namespace walkdown::zone
