// SPDX-License-Identifier: Apache-2.0
// A column of widgets that begins at the top and leaves the rest of the page empty. Alignment of
// a whole layout gives it the height it would have at the width it would like, so that lines that
// wrapped more often were cut off.
#pragma once

#include <QVBoxLayout>

namespace walkdown::gui {

class TopLayout : public QVBoxLayout {
 public:
  using QVBoxLayout::QVBoxLayout;

  void setGeometry(const QRect& rect) override;
};

}  // namespace walkdown::gui
