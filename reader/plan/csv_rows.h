// SPDX-License-Identifier: Apache-2.0
// Rows of a CSV file through libcsv: RFC 4180, and comma, semicolon or tab between fields.
// Internal to this folder.
#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace walkdown::plan {

struct CsvRow {
  std::size_t number = 0;  // as a spreadsheet counts, blank rows too
  std::vector<std::string> fields;

  [[nodiscard]] bool blank() const;
};

struct CsvFault {
  std::size_t row = 0;
  std::string what;  // what would be right
};

// The one of comma, semicolon and tab that the first row that is not empty holds most of outside
// quotes; a comma where it holds none.
[[nodiscard]] char separator_of(std::string_view bytes);

// Hands on each row that is not blank. A fault ends it: what follows a broken quote has no rows.
[[nodiscard]] std::optional<CsvFault> for_each_row(std::string_view bytes, char separator,
                                                   const std::function<void(CsvRow&)>& sink);

}  // namespace walkdown::plan
