// SPDX-License-Identifier: Apache-2.0
// The header row: which field of a row is which column. Internal to this folder.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "reader/plan/columns.h"
#include "reader/plan/csv_rows.h"
#include "reader/plan/problem.h"

namespace walkdown::plan {

enum class Column : std::uint8_t {
  cue,
  position,
  module,
  rail,
  pin,
  igniter,
  count,
  join,
  wire,
  lead_m,
  device,
  calibre_mm,
  note
};

class Header {
 public:
  // Adds what is wrong to `errors`: a needed column missing, one there twice, a mapped one not
  // found, a header that is not UTF-8.
  static Header make(const CsvRow& row, const ColumnMap* columns, std::vector<Problem>& errors);

  // The value of a column in a row, blanks off; empty where the row is too short.
  [[nodiscard]] std::string_view cell(const CsvRow& row, Column column) const;
  // What stands in columns that we do not know.
  [[nodiscard]] std::vector<std::pair<std::string, std::string>> more(const CsvRow& row) const;
  [[nodiscard]] std::size_t width() const { return names_.size(); }

 private:
  void bind(std::size_t row, const ColumnMap* columns, std::vector<Problem>& errors);

  static constexpr std::size_t kNone = static_cast<std::size_t>(-1);
  std::vector<std::string> names_;  // as they stand in the file
  std::vector<bool> known_;
  std::array<std::size_t, kColumns.size()> field_{};
  std::array<std::optional<std::string>, kColumns.size()> constant_;
};

[[nodiscard]] inline std::string_view name(Column column) {
  return kColumns.at(static_cast<std::size_t>(column));
}

}  // namespace walkdown::plan
