// SPDX-License-Identifier: Apache-2.0
// All entries of the open record, in the window's thread, with each pin's own at hand.
#pragma once

#include <QObject>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "checklist/audit/drafts.h"
#include "gui/live/row_store.h"
#include "reader/plan/pin.h"

namespace walkdown::gui {

struct PinEvent {
  std::size_t row = 0;
  bool rehook = false;        // else a reading
  bool counts = false;        // a reading since the last re-hook
  std::optional<double> ohm;  // empty: over range, or a re-hook
};

// A re-hook, or somebody who went into the field: both undo readings.
struct RehookRow {
  std::size_t row = 0;
  bool entered = false;
  audit::Rehook rehook;
};

class Ledger : public QObject {
  Q_OBJECT

 public:
  explicit Ledger(QObject* parent = nullptr) : QObject(parent) {}

  void add(const Rows& rows);
  [[nodiscard]] const RowStore& rows() const { return rows_; }
  [[nodiscard]] const std::vector<RehookRow>& rehooks() const { return rehooks_; }
  // Rows of one kind, oldest first; empty where there is none, and of readings: of() has those.
  [[nodiscard]] const std::vector<std::size_t>& of_kind(std::string_view kind) const;
  // Readings and re-hooks of the pin, oldest first. `position`: where the plan has it.
  [[nodiscard]] std::vector<PinEvent> of(plan::PinId pin, std::string_view position) const;

 Q_SIGNALS:
  void about_to_grow(std::size_t first, std::size_t count);
  void grown();

 private:
  void note(std::size_t index);

  RowStore rows_;
  std::unordered_map<plan::PinId, std::vector<std::uint32_t>> readings_;  // rows
  std::map<std::string, std::vector<std::size_t>, std::less<>> kinds_;
  std::vector<RehookRow> rehooks_;
};

}  // namespace walkdown::gui
