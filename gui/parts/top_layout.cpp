// SPDX-License-Identifier: Apache-2.0
#include "gui/parts/top_layout.h"

#include <algorithm>

namespace walkdown::gui {

void TopLayout::setGeometry(const QRect& rect) {
  const int wanted = hasHeightForWidth() ? heightForWidth(rect.width()) : sizeHint().height();
  QVBoxLayout::setGeometry({rect.x(), rect.y(), rect.width(), std::min(rect.height(), wanted)});
}

}  // namespace walkdown::gui
