// SPDX-License-Identifier: Apache-2.0
#include "reader/plan/header.h"

#include <algorithm>

#include "reader/plan/decimal.h"
#include "reader/plan/utf8.h"

namespace walkdown::plan {
namespace {

constexpr std::array kNeeded = {Column::cue, Column::module, Column::rail, Column::pin,
                                Column::igniter};

// Headers are compared without case and blanks: "Lead m" is lead_m.
std::string folded(std::string_view text) {
  std::string out;
  for (const char c : trimmed(text)) {
    const bool letter = c >= 'A' && c <= 'Z';
    out += c == ' ' ? '_' : letter ? static_cast<char>(c - 'A' + 'a') : c;
  }
  return out;
}

bool needed(std::size_t column) {
  return std::any_of(kNeeded.begin(), kNeeded.end(),
                     [&](Column c) { return static_cast<std::size_t>(c) == column; });
}

std::string theirs(const ColumnMap* columns, std::string_view ours) {
  if (columns == nullptr) return std::string(ours);
  const auto found = columns->header.find(ours);
  return found == columns->header.end() ? std::string(ours) : found->second;
}

}  // namespace

Header Header::make(const CsvRow& row, const ColumnMap* columns, std::vector<Problem>& errors) {
  Header header;
  header.names_ = row.fields;
  while (!header.names_.empty() && header.names_.back().empty()) header.names_.pop_back();
  header.known_.assign(header.names_.size(), false);
  for (const std::string& name : header.names_) {
    if (!is_utf8(name)) errors.push_back({row.number, "", shown(name), "save the table as UTF-8"});
  }
  header.bind(row.number, columns, errors);
  return header;
}

void Header::bind(std::size_t row, const ColumnMap* columns, std::vector<Problem>& errors) {
  for (std::size_t i = 0; i < kColumns.size(); ++i) {
    const std::string_view ours = kColumns.at(i);
    field_.at(i) = kNone;
    if (columns != nullptr && columns->constant.contains(ours)) {
      constant_.at(i) = columns->constant.find(ours)->second;
      continue;
    }
    const std::string wanted = theirs(columns, ours);
    for (std::size_t f = 0; f < names_.size(); ++f) {
      if (folded(names_[f]) != folded(wanted)) continue;
      if (field_.at(i) != kNone) {
        errors.push_back({row, std::string(ours), shown(names_[f]),
                          "this header stands there twice; keep one of the columns"});
      }
      field_.at(i) = f;
      known_[f] = true;
    }
    const bool mapped = columns != nullptr && columns->header.contains(ours);
    if (field_.at(i) == kNone && (needed(i) || mapped)) {
      errors.push_back({row, std::string(ours), "",
                        "the table has no column '" + shown(wanted) +
                            "'; add it, or map another header onto it with a column map"});
    }
  }
}

std::string_view Header::cell(const CsvRow& row, Column column) const {
  const auto i = static_cast<std::size_t>(column);
  if (constant_.at(i)) return *constant_.at(i);
  if (field_.at(i) == kNone || field_.at(i) >= row.fields.size()) return {};
  return trimmed(row.fields[field_.at(i)]);
}

std::vector<std::pair<std::string, std::string>> Header::more(const CsvRow& row) const {
  std::vector<std::pair<std::string, std::string>> out;
  for (std::size_t f = 0; f < std::min(names_.size(), row.fields.size()); ++f) {
    if (!known_[f] && !row.fields[f].empty()) out.emplace_back(names_[f], row.fields[f]);
  }
  return out;
}

}  // namespace walkdown::plan
