// SPDX-License-Identifier: Apache-2.0
// The entries of the record as a table: number, time, kind, and what it says. What is filtered out
// is not in the model at all, so that a million readings cost nothing to scroll past.
#pragma once

#include <QAbstractTableModel>
#include <vector>

#include "checklist/day/checklist.h"
#include "gui/live/ledger.h"

namespace walkdown::gui {

struct EntryFilter {
  bool readings = false;  // also readings and lines of the tester
  std::string text;       // in kind or body; empty: all
};

class EntryModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  EntryModel(const Ledger& ledger, const day::Checklist& list, QObject* parent = nullptr);

  void set_filter(EntryFilter filter);
  void grow();  // entries were added to the ledger
  [[nodiscard]] record::EntryView row_at(int row) const;

  [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                    int role) const override;

 private:
  [[nodiscard]] bool passes(const record::EntryView& row) const;

  const Ledger& ledger_;
  const day::Checklist& list_;
  EntryFilter filter_;
  std::vector<std::size_t> shown_;  // indices into the ledger, oldest first
  std::size_t seen_ = 0;            // rows of the ledger looked at
};

}  // namespace walkdown::gui
