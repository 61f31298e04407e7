// SPDX-License-Identifier: Apache-2.0
// The names of the views, one below the other; where the text is so large that they would take the
// room of the view, behind one button. Ctrl and a digit goes there.
#pragma once

#include <QButtonGroup>
#include <QMenu>
#include <QWidget>

class QPushButton;
class QVBoxLayout;

namespace walkdown::gui {

class Navigation : public QWidget {
  Q_OBJECT

 public:
  // `opener`: opens the names where they are behind a button; it lives at least as long.
  explicit Navigation(QPushButton& opener, QWidget* parent = nullptr);

  void add(const QString& name);
  void choose(int index);
  [[nodiscard]] int count() const { return static_cast<int>(buttons_.buttons().size()); }
  [[nodiscard]] QString name(int index) const;
  // Buttons below the names.
  void add_below(QPushButton* below);
  // As wide as its widest name, after the text grew.
  void fit(int bar_px);
  // Behind the button, or one below the other.
  void fold(bool folded);

 Q_SIGNALS:
  void chosen(int index);

 private:
  void add_to_menu(QPushButton* button);
  void tell();

  QButtonGroup buttons_;
  QPushButton& opener_;
  QMenu* menu_;
  QWidget* inner_;
  QVBoxLayout* names_;
  QVBoxLayout* below_;
};

}  // namespace walkdown::gui
