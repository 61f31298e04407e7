// SPDX-License-Identifier: Apache-2.0
// The names of the views, one below the other; Ctrl and a digit goes there.
#pragma once

#include <QButtonGroup>
#include <QWidget>

class QVBoxLayout;

namespace walkdown::gui {

class Navigation : public QWidget {
  Q_OBJECT

 public:
  explicit Navigation(QWidget* parent = nullptr);

  void add(const QString& name);
  void choose(int index);
  [[nodiscard]] int count() const { return static_cast<int>(buttons_.buttons().size()); }
  [[nodiscard]] QString name(int index) const;
  // Widgets below the names.
  void add_below(QWidget* widget);
  // As wide as its widest name, after the text grew.
  void fit(int bar_px);

 Q_SIGNALS:
  void chosen(int index);

 private:
  QButtonGroup buttons_;
  QWidget* inner_;
  QVBoxLayout* names_;
  QVBoxLayout* below_;
};

}  // namespace walkdown::gui
