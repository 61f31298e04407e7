// SPDX-License-Identifier: Apache-2.0
// A list and the page of what is chosen in it: side by side where there is room for both, else one
// at a time with a way back.
#pragma once

#include <QWidget>

class QPushButton;
class QSplitter;

namespace walkdown::gui {

class TwoPane : public QWidget {
  Q_OBJECT

 public:
  // `list_share`: of the width, in hundredths, unless another was kept under this name.
  TwoPane(const QString& name, QWidget* list, QWidget* page, int list_share,
          QWidget* parent = nullptr);

  // For the next start, where somebody moved the border.
  void keep_share() const;
  [[nodiscard]] int share() const { return share_; }

  // Below this width there is room for one only.
  void set_least_width(int px);
  void show_page();
  void show_list();
  [[nodiscard]] bool side_by_side() const { return both_; }

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  void arrange();

  QWidget* list_;
  QWidget* page_;
  QSplitter* splitter_;
  QPushButton* back_;
  int share_;
  int least_px_ = 700;
  bool moved_ = false;  // the border, by hand
  bool both_ = true;
  bool on_page_ = false;
};

}  // namespace walkdown::gui
