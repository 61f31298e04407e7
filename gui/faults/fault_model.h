// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <QAbstractListModel>
#include <vector>

#include "gui/faults/fault_list.h"

namespace walkdown::gui {

class FaultModel : public QAbstractListModel {
  Q_OBJECT

 public:
  using QAbstractListModel::QAbstractListModel;

  void set(std::vector<Fault> faults);
  [[nodiscard]] const std::vector<Fault>& faults() const { return faults_; }

  [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;

 private:
  std::vector<Fault> faults_;
};

}  // namespace walkdown::gui
