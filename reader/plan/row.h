// SPDX-License-Identifier: Apache-2.0
// One row of the table -> one planned pin, or all that is wrong with it. Internal to this folder.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "reader/plan/header.h"
#include "reader/plan/plan.h"
#include "reader/plan/problem.h"

namespace walkdown::plan {

class RowTaker {
 public:
  // `catalogue` grows by each standard wire size that a row uses. Both outlive this.
  RowTaker(const Header& header, Catalogue& catalogue, bool decimal_comma,
           std::vector<Problem>& errors);

  // Empty where the row has no whole address. A row with other errors still gives its address, so
  // that a pin used twice is seen in the same run; the errors keep it out of any plan.
  std::optional<PlannedPin> take(const CsvRow& row);

 private:
  [[nodiscard]] std::string_view cell(Column column) const { return header_.cell(*row_, column); }
  void wrong(Column column, std::string remedy);
  std::uint16_t part(Column column, char letter);
  void texts(PlannedPin& pin);
  void load(Load& load);
  std::uint16_t igniter(bool any_wanted);
  std::uint16_t wire();
  double metres();
  Join join();
  void calibre(PlannedPin& pin);

  const Header& header_;
  Catalogue& catalogue_;
  bool decimal_comma_;
  std::vector<Problem>& errors_;
  const CsvRow* row_ = nullptr;
  std::map<std::string, std::uint16_t, std::less<>> igniters_;
  std::map<std::string, std::uint16_t, std::less<>> wires_;  // by every spelling met so far
};

}  // namespace walkdown::plan
