// SPDX-License-Identifier: Apache-2.0
#include "gui/parts/flow_layout.h"

#include <QWidget>
#include <algorithm>

namespace walkdown::gui {

struct FlowLayout::Line {
  std::vector<QLayoutItem*> items;
  int width = 0;
  int height = 0;
};

FlowLayout::FlowLayout(QWidget* parent, int gap_px) : QLayout(parent), gap_(gap_px) {
  setContentsMargins(0, 0, 0, 0);
}

FlowLayout::~FlowLayout() {
  for (QLayoutItem* item : items_) delete item;
}

void FlowLayout::addItem(QLayoutItem* item) {
  items_.push_back(item);
  invalidate();
}

QLayoutItem* FlowLayout::itemAt(int index) const {
  if (index < 0 || index >= count()) return nullptr;
  return items_[static_cast<std::size_t>(index)];
}

QLayoutItem* FlowLayout::takeAt(int index) {
  QLayoutItem* item = itemAt(index);
  if (item == nullptr) return nullptr;
  items_.erase(items_.begin() + index);
  invalidate();
  return item;
}

std::vector<FlowLayout::Line> FlowLayout::lines(int width) const {
  std::vector<Line> out;
  for (QLayoutItem* item : items_) {
    if (item->isEmpty()) continue;
    const QSize size = item->sizeHint();
    const int needed = std::min(size.width(), width);
    if (out.empty() || out.back().width + gap_ + needed > width) out.emplace_back();
    Line& line = out.back();
    line.width += needed + (line.items.empty() ? 0 : gap_);
    line.height = std::max(
        line.height, item->hasHeightForWidth() ? item->heightForWidth(needed) : size.height());
    line.items.push_back(item);
  }
  return out;
}

int FlowLayout::heightForWidth(int width) const {
  int height = 0;
  const QMargins margins = contentsMargins();
  for (const Line& line : lines(width - margins.left() - margins.right())) {
    height += line.height + (height == 0 ? 0 : gap_);
  }
  return height + margins.top() + margins.bottom();
}

QSize FlowLayout::minimumSize() const {
  QSize size;
  for (const QLayoutItem* item : items_) {
    if (!item->isEmpty()) size = size.expandedTo(item->minimumSize());
  }
  const QMargins margins = contentsMargins();
  return size + QSize(margins.left() + margins.right(), margins.top() + margins.bottom());
}

void FlowLayout::setGeometry(const QRect& rect) {
  QLayout::setGeometry(rect);
  const QRect area = rect.marginsRemoved(contentsMargins());
  int y = area.top();
  for (const Line& line : lines(area.width())) {
    const auto grows = [](QLayoutItem* item) {
      return item->expandingDirections().testFlag(Qt::Horizontal);
    };
    const auto growing = std::count_if(line.items.begin(), line.items.end(), grows);
    const int more = growing == 0 ? 0 : (area.width() - line.width) / static_cast<int>(growing);
    int x = area.left();
    for (QLayoutItem* item : line.items) {
      const int width = std::min(item->sizeHint().width(), area.width()) + (grows(item) ? more : 0);
      item->setGeometry(QRect(x, y, width, line.height));
      x += width + gap_;
    }
    y += line.height + gap_;
  }
}

}  // namespace walkdown::gui
