// SPDX-License-Identifier: Apache-2.0
#include "reader/plan/row.h"

#include <algorithm>

#include "reader/plan/decimal.h"
#include "reader/plan/utf8.h"
#include "reader/plan/wire_size.h"

namespace walkdown::plan {
namespace {

constexpr std::uint16_t kMaxCount = 999;
constexpr double kMaxLeadM = 10000;
constexpr double kMaxCalibreMm = 1000;

bool same_word(std::string_view text, std::string_view word) {
  return std::equal(text.begin(), text.end(), word.begin(), word.end(),
                    [](char a, char b) { return (a >= 'A' && a <= 'Z' ? a + 32 : a) == b; });
}

std::string known_igniters(const Catalogue& catalogue) {
  std::string names;
  const std::size_t most = std::min<std::size_t>(catalogue.igniters.size(), 8);
  for (std::size_t i = 0; i < most; ++i) {
    names += (i == 0 ? "" : ", ") + shown(catalogue.igniters[i].name);
  }
  if (catalogue.igniters.size() > most) names += ", ...";
  return names.empty() ? "the igniter file has none" : "name one of the igniter file: " + names;
}

}  // namespace

RowTaker::RowTaker(const Header& header, Catalogue& catalogue, bool decimal_comma,
                   std::vector<Problem>& errors)
    : header_(header), catalogue_(catalogue), decimal_comma_(decimal_comma), errors_(errors) {
  for (std::size_t i = 0; i < std::min(catalogue.igniters.size(), kMaxNames); ++i) {
    igniters_.emplace(catalogue.igniters[i].name, static_cast<std::uint16_t>(i));
  }
  for (std::size_t i = 0; i < std::min(catalogue.wires.size(), kMaxNames); ++i) {
    wires_.emplace(catalogue.wires[i].name, static_cast<std::uint16_t>(i));
  }
}

std::optional<PlannedPin> RowTaker::take(const CsvRow& row) {
  row_ = &row;
  PlannedPin pin;
  pin.row = row.number;
  pin.id = {part(Column::module, 'M'), part(Column::rail, 'R'), part(Column::pin, 'P')};
  texts(pin);
  load(pin.load);
  calibre(pin);
  for (std::size_t f = header_.width(); f < row.fields.size(); ++f) {
    if (row.fields[f].empty()) continue;
    errors_.push_back({row.number, "", shown(row.fields[f]),
                       "this field is beyond the last header; a separator is too many"});
  }
  if (pin.id.module == 0 || pin.id.rail == 0 || pin.id.pin == 0) return std::nullopt;
  return pin;
}

void RowTaker::wrong(Column column, std::string remedy) {
  errors_.push_back(
      {row_->number, std::string(name(column)), shown(cell(column)), std::move(remedy)});
}

std::uint16_t RowTaker::part(Column column, char letter) {
  const auto value = parse_part(cell(column), letter);
  if (!value) {
    wrong(column, std::string("write a whole number from 1 to 9999, as 7 or ") + letter + "07");
  }
  return value.value_or(0);
}

void RowTaker::texts(PlannedPin& pin) {
  for (const auto& [column, text] :
       {std::pair{Column::cue, &pin.cue}, std::pair{Column::position, &pin.position},
        std::pair{Column::device, &pin.device}, std::pair{Column::note, &pin.note}}) {
    if (!is_utf8(cell(column))) wrong(column, "save the table as UTF-8");
    *text = cell(column);
  }
  if (pin.cue.empty()) wrong(Column::cue, "name the cue that this pin fires");
  pin.more = header_.more(*row_);
  for (const auto& [header, text] : pin.more) {
    if (is_utf8(text)) continue;
    errors_.push_back({row_->number, shown(header), shown(text), "save the table as UTF-8"});
  }
}

void RowTaker::load(Load& load) {
  if (!cell(Column::count).empty()) {
    const auto count = parse_count(cell(Column::count), kMaxCount);
    if (!count) wrong(Column::count, "write how many igniters, a whole number from 0 to 999");
    load.count = count.value_or(1);
  }
  load.igniter = igniter(load.count > 0);
  load.join = join();
  if (load.count <= 1) load.join = Join::series;
  load.wire = wire();
  load.lead_m = metres();
}

std::uint16_t RowTaker::igniter(bool any_wanted) {
  const std::string_view text = cell(Column::igniter);
  const auto found = igniters_.find(text);
  if (found != igniters_.end()) return found->second;
  if (any_wanted || !text.empty()) wrong(Column::igniter, known_igniters(catalogue_));
  return 0;
}

std::uint16_t RowTaker::wire() {
  const std::string_view text = cell(Column::wire);
  if (text.empty() || same_word(text, "none")) return kNoWire;
  const auto known = wires_.find(text);
  if (known != wires_.end()) return known->second;
  auto size = standard_wire(text);
  if (!size) {
    wrong(Column::wire, "write AWG24, 0.5mm2, or the name of a [wire] of the igniter file");
    return kNoWire;
  }
  const auto same = wires_.find(size->name);
  if (same == wires_.end() && catalogue_.wires.size() >= kMaxNames) {
    wrong(Column::wire, "the plan has more wire sizes than can be told apart; use fewer");
    return kNoWire;
  }
  const auto index =
      same != wires_.end() ? same->second : static_cast<std::uint16_t>(catalogue_.wires.size());
  if (same == wires_.end()) {
    wires_.emplace(size->name, index);
    catalogue_.wires.push_back(std::move(*size));
  }
  wires_.emplace(std::string(text), index);
  return index;
}

double RowTaker::metres() {
  const std::string_view text = cell(Column::lead_m);
  if (text.empty()) return 0;
  const auto value = parse_decimal(text, decimal_comma_);
  if (value && *value >= 0 && *value <= kMaxLeadM) return *value + 0.0;  // -0 is 0
  wrong(Column::lead_m, "write the one-way length in metres, from 0 to 10000, as 12.5");
  return 0;
}

Join RowTaker::join() {
  const std::string_view text = cell(Column::join);
  if (text.empty() || same_word(text, "series")) return Join::series;
  if (same_word(text, "parallel")) return Join::parallel;
  wrong(Column::join, "write series or parallel");
  return Join::series;
}

void RowTaker::calibre(PlannedPin& pin) {
  const std::string_view text = cell(Column::calibre_mm);
  if (text.empty()) return;
  pin.calibre_mm = parse_decimal(text, decimal_comma_);
  if (!pin.calibre_mm || *pin.calibre_mm <= 0 || *pin.calibre_mm > kMaxCalibreMm) {
    wrong(Column::calibre_mm, "write the calibre in millimetres, above 0 and up to 1000");
  }
}

}  // namespace walkdown::plan
