// SPDX-License-Identifier: Apache-2.0
// A dialog that never stands out of its window: as high as its body needs, and where that is higher
// than the window the body scrolls. The buttons at its foot stay in sight.
#pragma once

#include <QDialog>

class QBoxLayout;
class QVBoxLayout;

namespace walkdown::gui {

class Dialog : public QDialog {
  Q_OBJECT

 public:
  // `width_em`: in heights of the text, as far as the window has them.
  Dialog(int width_em, QWidget* parent);

 protected:
  [[nodiscard]] QVBoxLayout* body() const { return body_; }
  [[nodiscard]] QBoxLayout* foot() const { return foot_; }
  void showEvent(QShowEvent* event) override;
  bool focusNextPrevChild(bool next) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void fit();
  [[nodiscard]] int needed_height(int width) const;

  QWidget* inner_;
  QVBoxLayout* body_;
  QBoxLayout* foot_;
  int width_em_;
};

}  // namespace walkdown::gui
