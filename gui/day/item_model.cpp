// SPDX-License-Identifier: Apache-2.0
#include "gui/day/item_model.h"

#include "gui/day/strip_words.h"
#include "gui/look/sentences.h"
#include "gui/look/words.h"

namespace walkdown::gui {
namespace {

constexpr quintptr kTop = 0;  // internal id: 0 for the top, else 1 + the stage

}  // namespace

ItemModel::ItemModel(const day::Checklist& list, QObject* parent)
    : QAbstractItemModel(parent), list_(list) {}

void ItemModel::see(const Seen& seen) {
  seen_ = seen;
  first_ = day::Checklist::npos;
  const auto& items = seen_->state.items;
  for (std::size_t i = 0; i < items.size(); ++i) {
    if (!items[i].until_at_ms || !list_.stages[list_.items[i].stage].release) continue;
    if (first_ == day::Checklist::npos || *items[i].until_at_ms < *items[first_].until_at_ms) {
      first_ = i;
    }
  }
  const int tops = rowCount({});
  Q_EMIT dataChanged(index(0, 0, {}), index(tops - 1, 0, {}));
  for (int top = 0; top < tops; ++top) {
    const QModelIndex stage = index(top, 0, {});
    if (const int count = rowCount(stage); count > 0) {
      Q_EMIT dataChanged(index(0, 0, stage), index(count - 1, 0, stage));
    }
  }
}

QModelIndex ItemModel::index(int row, int column, const QModelIndex& parent) const {
  if (!hasIndex(row, column, parent)) return {};
  return createIndex(row, column,
                     parent.isValid() ? static_cast<quintptr>(parent.row()) + 1 : kTop);
}

QModelIndex ItemModel::parent(const QModelIndex& child) const {
  if (!child.isValid() || child.internalId() == kTop) return {};
  return createIndex(static_cast<int>(child.internalId()) - 1, 0, kTop);
}

int ItemModel::rowCount(const QModelIndex& parent) const {
  if (!parent.isValid()) return static_cast<int>(list_.stages.size()) + 1;
  if (parent.internalId() != kTop) return 0;
  const auto stage = static_cast<std::size_t>(parent.row());
  return stage < list_.stages.size() ? static_cast<int>(list_.stages[stage].count) : 0;
}

int ItemModel::columnCount(const QModelIndex&) const { return 1; }

std::size_t ItemModel::item_of(const QModelIndex& index) const {
  if (!index.isValid() || index.internalId() == kTop) return day::Checklist::npos;
  return list_.stages[index.internalId() - 1].first + static_cast<std::size_t>(index.row());
}

std::size_t ItemModel::stage_of(const QModelIndex& index) const {
  if (!index.isValid()) return day::Checklist::npos;
  const auto stage =
      index.internalId() == kTop ? static_cast<std::size_t>(index.row()) : index.internalId() - 1;
  return stage < list_.stages.size() ? stage : day::Checklist::npos;
}

QModelIndex ItemModel::index_of_item(std::size_t item) const {
  if (item >= list_.items.size()) return {};
  const std::size_t stage = list_.items[item].stage;
  return createIndex(static_cast<int>(item - list_.stages[stage].first), 0,
                     static_cast<quintptr>(stage) + 1);
}

QModelIndex ItemModel::release_index() const {
  return createIndex(static_cast<int>(list_.stages.size()), 0, kTop);
}

QVariant ItemModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  if (const auto item = item_of(index); item != day::Checklist::npos) return item_data(item, role);
  const auto stage = stage_of(index);
  return stage == day::Checklist::npos ? release_data(role) : stage_data(stage, role);
}

QVariant ItemModel::stage_data(std::size_t stage, int role) const {
  if (role == Qt::DisplayRole || role == Qt::AccessibleTextRole) {
    return q(list_.stages[stage].title);
  }
  if (!seen_ || role != RemainingRole) return {};
  const day::StageState& state = seen_->state.stages[stage];
  if (state.locked) return tr("not open yet");
  return state.paused ? tr("closed by %1").arg(q(state.paused_by)) : tr("open");
}

QVariant ItemModel::release_data(int role) const {
  if (role == Qt::DisplayRole || role == Qt::AccessibleTextRole) return tr("Release");
  if (!seen_ || role != RemainingRole) return {};
  return release_words(*seen_).text;
}

QString ItemModel::remaining(std::size_t item) const {
  const day::ItemState& state = seen_->state.items[item];
  if (state.until_at_ms)
    return tr("%1 left").arg(span_words(*state.until_at_ms - seen_->now.at_ms));
  if (state.ready_at_ms)
    return tr("wait %1").arg(span_words(*state.ready_at_ms - seen_->now.at_ms));
  return {};
}

QVariant ItemModel::item_data(std::size_t item, int role) const {
  if (role == Qt::DisplayRole) return q(list_.items[item].question);
  if (!seen_) return {};
  const day::ItemState& state = seen_->state.items[item];
  switch (role) {
    case Qt::AccessibleTextRole:
      return q(list_.items[item].question) + QStringLiteral(": ") + words(state.standing) +
             QStringLiteral(". ") + translated(state.why);
    case StandingRole:
      return static_cast<int>(state.standing);
    case RemainingRole:
      return remaining(item);
    case WhyRole:
      return translated(state.why);
    case LateRole:
      return state.standing == day::Standing::due;
    case FirstRole:
      return item == first_;
    default:
      return {};
  }
}

}  // namespace walkdown::gui
