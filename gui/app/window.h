// SPDX-License-Identifier: Apache-2.0
// The window: the strip, the names of the views, the view. It holds no state of the day.
#pragma once

#include <QLabel>
#include <QPointer>
#include <QTimer>
#include <QWidget>
#include <memory>

#include "gui/app/navigation.h"
#include "gui/app/opening.h"
#include "gui/app/start_page.h"
#include "gui/app/views.h"
#include "gui/day/standing_line.h"
#include "gui/day/strip.h"
#include "gui/live/session.h"
#include "gui/look/look.h"
#include "gui/new_show/show_draft.h"

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
  // Nothing is open: a page to open a record or plan a new show. `clock` outlives the window.
  void start(const record::Clock& clock, Places places = {});
  // Opens in another thread, since a long record takes a while to verify; a new one of the draft's
  // show where there is a draft. start() comes first, for this and for the demo.
  void open_later(const std::string& path, const std::optional<ShowDraft>& draft);
  // Makes the demo in another thread and opens it; `folder` as for Demo::make().
  void open_demo_later(const std::string& folder);
  void dress(const Look& look);
  void go(int view);

  [[nodiscard]] const Look& look() const { return look_; }
  [[nodiscard]] Views* views() { return views_; }
  [[nodiscard]] Session* session() { return session_.get(); }
  [[nodiscard]] Strip& strip() { return *strip_; }
  [[nodiscard]] StandingLine& standing() { return *standing_; }
  // Why what was to be opened was not; empty while something is open.
  [[nodiscard]] QString refusal() const { return start_ ? start_->said() : QString(); }
  [[nodiscard]] Demo* demo() { return demo_; }

 protected:
  void closeEvent(QCloseEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  bool focusNextPrevChild(bool next) override;

 private:
  void add_navigation();
  void arrange();
  void call_hold();
  void say(const QString& sentence, const QString& tone);
  void choose_look();
  void ask_for_record();
  void ask_for_show();
  void refused(const Error& error);
  void opened(Result<desk::Desk>& desk, bool is_new);

  Look look_;
  std::shared_ptr<Demo> own_demo_;  // goes last: the session listens to its tester
  std::unique_ptr<Session> session_;
  Demo* demo_ = nullptr;
  const record::Clock* clock_ = nullptr;
  Places places_;
  QPointer<StartPage> start_;
  Strip* strip_;
  StandingLine* standing_;
  QLabel* said_;
  QTimer* forget_;
  QWidget* body_ = nullptr;
  Navigation* navigation_ = nullptr;
  Views* views_ = nullptr;
  QVBoxLayout* layout_;
};

}  // namespace walkdown::gui
