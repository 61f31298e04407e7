// SPDX-License-Identifier: Apache-2.0
// The window: the strip, the names of the views, the view. It holds no state of the day.
#pragma once

#include <QLabel>
#include <QTimer>
#include <QWidget>
#include <memory>

#include "gui/app/navigation.h"
#include "gui/app/views.h"
#include "gui/day/strip.h"
#include "gui/live/session.h"
#include "gui/look/look.h"

class QVBoxLayout;

namespace walkdown::gui {

class Demo;

class Window : public QWidget {
  Q_OBJECT

 public:
  explicit Window(QWidget* parent = nullptr);
  ~Window() override;

  // Takes what was open before out of the window. `demo` may be null; it outlives the window.
  void open(std::unique_ptr<Session> session, Demo* demo);
  void dress(const Look& look);
  void go(int view);

  [[nodiscard]] const Look& look() const { return look_; }
  [[nodiscard]] Views* views() { return views_; }
  [[nodiscard]] Session* session() { return session_.get(); }
  [[nodiscard]] Strip& strip() { return *strip_; }

 protected:
  void closeEvent(QCloseEvent* event) override;

 private:
  void add_navigation();
  void call_hold();
  void say(const QString& sentence, const QString& tone);
  void choose_look();

  Look look_;
  std::unique_ptr<Session> session_;
  Demo* demo_ = nullptr;
  Strip* strip_;
  QLabel* said_;
  QTimer* forget_;
  QWidget* body_ = nullptr;
  Navigation* navigation_ = nullptr;
  Views* views_ = nullptr;
  QVBoxLayout* layout_;
};

}  // namespace walkdown::gui
