// SPDX-License-Identifier: Apache-2.0
#include "gui/live/ledger.h"

#include <algorithm>

namespace walkdown::gui {

void Ledger::note(std::size_t index) {
  const record::EntryView row = rows_[index];
  if (row.kind == audit::kReading) {
    if (const auto it = audit::quick_reading_of(row.body)) {
      readings_[it->reading.pin].push_back(static_cast<std::uint32_t>(index));
    }
    return;
  }
  auto kind = kinds_.find(row.kind);
  if (kind == kinds_.end()) kind = kinds_.try_emplace(std::string(row.kind)).first;
  kind->second.push_back(index);
  if (row.kind == audit::kRehook) {
    if (auto rehook = audit::rehook_of(record::entry_of(row).body)) {
      rehooks_.push_back({index, false, std::move(rehook).value()});
    }
  } else if (row.kind == audit::kEntered) {
    audit::Rehook entered;
    const auto body = record::entry_of(row).body;
    if (const auto found = body.find("positions"); found != body.end() && found->is_array()) {
      for (const auto& name : *found) {
        if (name.is_string()) entered.positions.push_back(name.get<std::string>());
      }
    }
    entered.by = body.value("person", std::string());
    rehooks_.push_back({index, true, std::move(entered)});
  }
}

void Ledger::add(const Rows& rows) {
  if (rows.empty()) return;
  const std::size_t first = rows_.size();
  Q_EMIT about_to_grow(first, rows.size());
  for (const Row& row : rows) rows_.add(row);
  for (std::size_t i = first; i < rows_.size(); ++i) note(i);
  Q_EMIT grown();
}

const std::vector<std::size_t>& Ledger::of_kind(std::string_view kind) const {
  static const std::vector<std::size_t> kNone;
  const auto found = kinds_.find(kind);
  return found == kinds_.end() ? kNone : found->second;
}

std::vector<PinEvent> Ledger::of(plan::PinId pin, std::string_view position) const {
  std::vector<PinEvent> events;
  if (const auto found = readings_.find(pin); found != readings_.end()) {
    for (const std::uint32_t row : found->second) {
      PinEvent event{row, false, true, std::nullopt};
      const auto it = audit::quick_reading_of(rows_[row].body);
      if (it && !it->reading.over) event.ohm = it->reading.ohm();
      events.push_back(event);
    }
  }
  std::size_t last = 0;
  for (const RehookRow& rehook : rehooks_) {
    if (!rehook.rehook.covers(pin, position)) continue;
    events.push_back({rehook.row, true, false, std::nullopt});
    last = rehook.row;
  }
  std::sort(events.begin(), events.end(),
            [](const PinEvent& a, const PinEvent& b) { return a.row < b.row; });
  for (PinEvent& event : events) event.counts = event.counts && event.row >= last;
  return events;
}

}  // namespace walkdown::gui
