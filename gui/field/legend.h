// SPDX-License-Identifier: Apache-2.0
// The marks of the verdicts with their words and how many pins have each.
#pragma once

#include <QWidget>
#include <array>

#include "gui/look/look.h"
#include "reader/match/outcome.h"

namespace walkdown::gui {

class Legend : public QWidget {
  Q_OBJECT

 public:
  explicit Legend(QWidget* parent = nullptr);

  void see(const match::Outcome& outcome);
  void dress(const Look& look);
  // Leaves out what no pin has: where there is no room for all.
  void set_brief(bool brief);
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] bool hasHeightForWidth() const override { return true; }
  [[nodiscard]] int heightForWidth(int width) const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  struct Piece;
  [[nodiscard]] std::vector<Piece> pieces(int width) const;

  std::array<std::size_t, match::kVerdicts> counts_{};
  Look look_;
  bool brief_ = false;
};

}  // namespace walkdown::gui
