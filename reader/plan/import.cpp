// SPDX-License-Identifier: Apache-2.0
#include "reader/plan/import.h"

#include <algorithm>
#include <unordered_map>
#include <utility>

#include "reader/plan/build_layout.h"
#include "reader/plan/csv_rows.h"
#include "reader/plan/lint.h"
#include "reader/plan/row.h"

namespace walkdown::plan {
namespace {

constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";

std::optional<Problem> wrong_encoding(std::string_view bytes) {
  const bool marked = bytes.starts_with("\xFF\xFE") || bytes.starts_with("\xFE\xFF");
  if (marked || bytes.substr(0, 4).find('\0') != std::string_view::npos) {
    return Problem{0, "", "", "this is UTF-16; save the table as CSV in UTF-8"};
  }
  if (bytes.substr(0, 4) == "PK\x03\x04") {
    return Problem{0, "", "", "this is a spreadsheet file; save the table as CSV in UTF-8"};
  }
  return std::nullopt;
}

void find_doubles(const std::vector<PlannedPin>& pins, std::vector<Problem>& errors) {
  std::unordered_map<PinId, std::size_t> first;
  first.reserve(pins.size());
  for (const PlannedPin& pin : pins) {
    const auto [place, fresh] = first.emplace(pin.id, pin.row);
    if (fresh) continue;
    errors.push_back({pin.row, "pin", text(pin.id),
                      "row " + std::to_string(place->second) +
                          " uses this pin already; give one of the two another pin"});
  }
}

struct Rows {
  std::vector<PlannedPin> pins;
  bool header_seen = false;
};

Rows take_rows(std::string_view bytes, const ColumnMap* columns, Catalogue& catalogue,
               std::vector<Problem>& errors) {
  Rows rows;
  const char separator = separator_of(bytes);
  std::optional<Header> header;
  std::optional<RowTaker> taker;
  const auto fault = for_each_row(bytes, separator, [&](CsvRow& row) {
    if (!header) {
      header = Header::make(row, columns, errors);
      rows.header_seen = true;
      // Without its columns every row would be wrong in the same way.
      if (errors.empty()) taker.emplace(*header, catalogue, separator != ',', errors);
      return;
    }
    if (!taker) return;
    if (auto pin = taker->take(row)) rows.pins.push_back(std::move(*pin));
  });
  if (fault) errors.push_back({fault->row, "", "", fault->what});
  return rows;
}

}  // namespace

Imported import_plan(std::string_view bytes, std::string_view /*file_name*/,
                     const Catalogue& catalogue, const ModuleSizes* sizes,
                     const ColumnMap* columns) {
  Imported out;
  if (auto problem = wrong_encoding(bytes)) {
    out.errors.push_back(std::move(*problem));
    return out;
  }
  if (bytes.substr(0, kByteOrderMark.size()) == kByteOrderMark) {
    bytes.remove_prefix(kByteOrderMark.size());
  }
  Plan plan;
  plan.catalogue = catalogue;
  Rows rows = take_rows(bytes, columns, plan.catalogue, out.errors);
  if (!rows.header_seen) {
    out.errors.push_back({0, "", "", "the file is empty; the first row names the columns"});
  }
  plan.pins = std::move(rows.pins);
  find_doubles(plan.pins, out.errors);
  plan.layout = build_layout(plan.pins, sizes, out.errors);
  std::stable_sort(out.errors.begin(), out.errors.end(),
                   [](const Problem& a, const Problem& b) { return a.row < b.row; });
  if (!out.errors.empty()) return out;
  out.warnings = lint(plan);
  std::sort(plan.pins.begin(), plan.pins.end(),
            [](const PlannedPin& a, const PlannedPin& b) { return a.id < b.id; });
  out.plan = std::move(plan);
  return out;
}

}  // namespace walkdown::plan
