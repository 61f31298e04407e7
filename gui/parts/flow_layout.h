// SPDX-License-Identifier: Apache-2.0
// Widgets in a row that breaks like text; those that can grow share what is left of their row.
#pragma once

#include <QLayout>
#include <memory>
#include <vector>

namespace walkdown::gui {

class FlowLayout : public QLayout {
 public:
  explicit FlowLayout(QWidget* parent, int gap_px = 6);
  ~FlowLayout() override;

  void addItem(QLayoutItem* item) override;
  [[nodiscard]] int count() const override { return static_cast<int>(items_.size()); }
  [[nodiscard]] QLayoutItem* itemAt(int index) const override;
  QLayoutItem* takeAt(int index) override;
  [[nodiscard]] Qt::Orientations expandingDirections() const override { return {}; }
  [[nodiscard]] bool hasHeightForWidth() const override { return true; }
  [[nodiscard]] int heightForWidth(int width) const override;
  [[nodiscard]] QSize sizeHint() const override { return minimumSize(); }
  [[nodiscard]] QSize minimumSize() const override;
  void setGeometry(const QRect& rect) override;

 private:
  struct Line;
  [[nodiscard]] std::vector<Line> lines(int width) const;

  int gap_;
  std::vector<QLayoutItem*> items_;  // QLayout's ownership: given by addItem, taken by takeAt
};

}  // namespace walkdown::gui
