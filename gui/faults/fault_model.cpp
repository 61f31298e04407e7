// SPDX-License-Identifier: Apache-2.0
#include "gui/faults/fault_model.h"

namespace walkdown::gui {

void FaultModel::set(std::vector<Fault> faults) {
  beginResetModel();
  faults_ = std::move(faults);
  endResetModel();
}

int FaultModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(faults_.size());
}

QVariant FaultModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const Fault& fault = faults_[static_cast<std::size_t>(index.row())];
  if (role == Qt::DisplayRole) return fault.kind;
  if (role == Qt::AccessibleTextRole) {
    return QStringLiteral("%1, %2, %3. %4").arg(fault.kind, fault.position, fault.where, fault.say);
  }
  return {};
}

}  // namespace walkdown::gui
