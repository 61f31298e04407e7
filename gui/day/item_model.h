// SPDX-License-Identifier: Apache-2.0
// The checklist as a tree: the stages with their items, then the release.
#pragma once

#include <QAbstractItemModel>

#include "checklist/day/checklist.h"
#include "gui/live/snapshot.h"

namespace walkdown::gui {

enum ItemRole {
  StandingRole = Qt::UserRole + 1,  // int of day::Standing; only items have one
  RemainingRole,                    // how long it holds, or since when it does not, in words
  WhyRole,
  LateRole,  // bool: past its latest start
  FirstRole  // bool: of those that hold, the one that ends the release first
};

class ItemModel : public QAbstractItemModel {
  Q_OBJECT

 public:
  explicit ItemModel(const day::Checklist& list, QObject* parent = nullptr);

  void see(const Seen& seen);

  [[nodiscard]] QModelIndex index(int row, int column, const QModelIndex& parent) const override;
  [[nodiscard]] QModelIndex parent(const QModelIndex& child) const override;
  [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;

  // Which item of the checklist; npos for a stage or the release.
  [[nodiscard]] std::size_t item_of(const QModelIndex& index) const;
  [[nodiscard]] std::size_t stage_of(const QModelIndex& index) const;  // npos for the release
  [[nodiscard]] QModelIndex index_of_item(std::size_t item) const;
  [[nodiscard]] QModelIndex release_index() const;

 private:
  [[nodiscard]] QVariant stage_data(std::size_t stage, int role) const;
  [[nodiscard]] QVariant item_data(std::size_t item, int role) const;
  [[nodiscard]] QVariant release_data(int role) const;
  [[nodiscard]] QString remaining(std::size_t item) const;

  const day::Checklist& list_;
  Seen seen_;
  std::size_t first_ = day::Checklist::npos;  // item that ends first
};

}  // namespace walkdown::gui
