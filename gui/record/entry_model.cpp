// SPDX-License-Identifier: Apache-2.0
#include "gui/record/entry_model.h"

#include <QCoreApplication>
#include <array>

#include "checklist/desk/tell.h"
#include "gui/look/sentences.h"
#include "gui/look/words.h"

namespace walkdown::gui {
namespace {

bool of_the_tester(std::string_view kind) {
  return kind == audit::kReading || kind == audit::kRejected || kind == audit::kProbed ||
         kind == audit::kGap;
}

}  // namespace

EntryModel::EntryModel(const Ledger& ledger, const day::Checklist& list, QObject* parent)
    : QAbstractTableModel(parent), ledger_(ledger), list_(list) {}

bool EntryModel::passes(const record::EntryView& row) const {
  if (!filter_.readings && of_the_tester(row.kind)) return false;
  return filter_.text.empty() || row.kind.find(filter_.text) != std::string::npos ||
         row.body.find(filter_.text) != std::string::npos;
}

void EntryModel::set_filter(EntryFilter filter) {
  beginResetModel();
  filter_ = std::move(filter);
  shown_.clear();
  seen_ = ledger_.rows().size();
  for (std::size_t i = 0; i < seen_; ++i) {
    if (passes(ledger_.rows()[i])) shown_.push_back(i);
  }
  endResetModel();
}

void EntryModel::grow() {
  std::vector<std::size_t> fresh;
  for (; seen_ < ledger_.rows().size(); ++seen_) {
    if (passes(ledger_.rows()[seen_])) fresh.push_back(seen_);
  }
  if (fresh.empty()) return;
  const int first = static_cast<int>(shown_.size());
  beginInsertRows({}, first, first + static_cast<int>(fresh.size()) - 1);
  shown_.insert(shown_.end(), fresh.begin(), fresh.end());
  endInsertRows();
}

record::EntryView EntryModel::row_at(int row) const {
  return ledger_.rows()[shown_.at(static_cast<std::size_t>(row))];
}

int EntryModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(shown_.size());
}

int EntryModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : 4; }

QVariant EntryModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || role != Qt::DisplayRole) return {};
  const record::EntryView row = row_at(index.row());
  switch (index.column()) {
    case 0:
      return QVariant::fromValue(static_cast<qulonglong>(row.n));
    case 1:
      return clock_words_s(row.at_ms);
    case 2:
      return q(row.kind);
    default:
      return translated(desk::tell(list_, record::entry_of(row)));
  }
}

QVariant EntryModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
  const std::array names{tr("Entry"), tr("Time"), tr("Kind"), tr("What it says")};
  return names.at(static_cast<std::size_t>(section));
}

}  // namespace walkdown::gui
