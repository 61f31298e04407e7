// SPDX-License-Identifier: Apache-2.0
// The field on the ground, its legend, and the page of the pin that is chosen.
#pragma once

#include <QLineEdit>
#include <QScrollArea>
#include <memory>

#include "gui/field/canvas.h"
#include "gui/field/legend.h"
#include "gui/field/pin_page.h"
#include "gui/parts/two_pane.h"

namespace walkdown::gui {

class FieldView : public QWidget {
  Q_OBJECT

 public:
  explicit FieldView(Session& session, QWidget* parent = nullptr);

  void see(const Seen& seen);
  void dress(const Look& look);
  void show_pin(plan::PinId pin);
  [[nodiscard]] FieldCanvas& canvas() { return *canvas_; }

 protected:
  void resizeEvent(QResizeEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  [[nodiscard]] QWidget* make_left();
  void find();
  void fit_legend();

  Session& session_;
  std::shared_ptr<const Scene> scene_;
  FieldCanvas* canvas_;
  Legend* legend_;
  PinPage* page_;
  QWidget* tools_ = nullptr;
  QLineEdit* find_;
  QScrollArea* legend_scroll_ = nullptr;
  TwoPane* panes_;
  std::shared_ptr<const match::Outcome> shown_;
};

}  // namespace walkdown::gui
