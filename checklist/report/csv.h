// SPDX-License-Identifier: Apache-2.0
// What a record holds as tables for spreadsheets: CSV of RFC 4180, UTF-8, CRLF, one header row.
// Numbers are exact decimals with a point. Times are UTC, RFC 3339.
#pragma once

#include <initializer_list>
#include <nlohmann/json.hpp>
#include <string>
#include <string_view>

#include "checklist/record/line.h"

namespace walkdown::report {

enum class Table {
  readings,   // entry,time,pin,ohm,over,raw
  findings,   // entry,time,kind,pins,by,confidence_pct,say: those that claims wrote out
  sign_offs,  // entry,time,person,role,key,statement,facts
};

// One row after the other, as the entries come.
class CsvTable {
 public:
  explicit CsvTable(Table table);
  void take(const record::EntryView& view);
  [[nodiscard]] const std::string& text() const { return text_; }

 private:
  struct Place {
    std::string n, at;
  };
  void reading(const record::EntryView& view, const Place& place);
  void findings(const nlohmann::json& body, const Place& place);
  void sign_offs(const nlohmann::json& body, const Place& place);
  void row(std::initializer_list<std::string_view> fields);

  Table table_;
  std::string text_;
};

// A field with the quotes it needs: where it has a comma, a quote or a line end.
[[nodiscard]] std::string csv_field(std::string_view text);
// "2.31", "-0.02", "10.000001": micro-ohm without loss and without needless zeros.
[[nodiscard]] std::string ohm_text(std::int64_t micro_ohm);

}  // namespace walkdown::report
