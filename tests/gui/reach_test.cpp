// SPDX-License-Identifier: Apache-2.0
// Every control of every view and dialog: a screen reader has a name for it, and
// whoever looks sees that it has the focus.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QAbstractSpinBox>
#include <QAccessible>
#include <QButtonGroup>
#include <QImage>
#include <QTest>
#include <algorithm>

#include "gui/app/look_dialog.h"
#include "gui/day/enrol_dialog.h"
#include "gui/new_show/new_show_dialog.h"
#include "gui/tester/learn_dialog.h"
#include "tests/gui/demo_window.h"
#include "tests/gui/tour.h"

namespace walkdown::gui {
namespace {

// The part of a control that is no control of its own.
bool is_inside(const QWidget* widget) {
  const QWidget* parent = widget->parentWidget();
  return widget->focusProxy() != nullptr || qobject_cast<const QComboBox*>(parent) != nullptr ||
         qobject_cast<const QAbstractSpinBox*>(parent) != nullptr ||
         widget->objectName() == "qt_scrollarea_viewport";
}

std::vector<QWidget*> controls(QWidget* root) {
  std::vector<QWidget*> found;
  for (auto* each : root->findChildren<QWidget*>()) {
    const bool here = each->isVisibleTo(root) && each->isEnabled() && each->window() == root;
    if (here && each->focusPolicy() != Qt::NoFocus && !is_inside(each)) found.push_back(each);
  }
  return found;
}

std::string told(const QWidget* widget) {
  return std::string(widget->metaObject()->className()) + " '" +
         widget->accessibleName().toStdString() + "'";
}

void expect_names(QWidget* root, const std::string& where) {
  for (QWidget* each : controls(root)) {
    QAccessibleInterface* face = QAccessible::queryAccessibleInterface(each);
    ASSERT_NE(face, nullptr) << where << ": " << told(each);
    EXPECT_FALSE(face->text(QAccessible::Name).trimmed().isEmpty()) << where << ": " << told(each);
  }
}

void expect_seen_focus(QWidget* root, const std::string& where) {
  for (QWidget* each : controls(root)) {
    root->setFocus();
    if (QWidget* other = QApplication::focusWidget()) other->clearFocus();
    const QImage without = each->grab().toImage();
    each->setFocus(Qt::TabFocusReason);
    if (!each->hasFocus()) continue;  // of an excluding group
    EXPECT_NE(each->grab().toImage(), without) << where << ": " << told(each);
  }
}

// Of those that exclude each other one is enough: the arrow keys go to the others.
bool exclude_each_other(const QWidget* a, const QWidget* b) {
  const auto* one = qobject_cast<const QAbstractButton*>(a);
  const auto* other = qobject_cast<const QAbstractButton*>(b);
  if (one == nullptr || other == nullptr) return false;
  if (one->group() != nullptr) return one->group()->exclusive() && one->group() == other->group();
  return one->autoExclusive() && other->autoExclusive() &&
         one->parentWidget() == other->parentWidget();
}

bool is_reached(const QWidget* widget, const std::vector<QWidget*>& visited) {
  return std::any_of(visited.begin(), visited.end(), [&](const QWidget* each) {
    return each == widget || exclude_each_other(each, widget);
  });
}

// Presses Tab until it comes round.
std::vector<QWidget*> by_tab(QWidget* root) {
  std::vector<QWidget*> visited;
  if (QWidget* focused = QApplication::focusWidget()) focused->clearFocus();
  const std::size_t most = 2 * controls(root).size() + 2;
  for (std::size_t i = 0; i < most; ++i) {
    QWidget* from = QApplication::focusWidget();
    QTest::keyClick(from == nullptr ? root : from, Qt::Key_Tab);
    QWidget* now = QApplication::focusWidget();
    if (now == nullptr || (!visited.empty() && now == visited.front())) return visited;
    visited.push_back(now);
  }
  return visited;
}

// A line further down is read later; in a line, what stands further right.
void expect_read_in_order(const std::vector<QWidget*>& visited, const std::string& where) {
  for (std::size_t i = 1; i < visited.size(); ++i) {
    const QWidget* a = visited[i - 1];
    const QWidget* b = visited[i];
    if (a == b || a->parentWidget() != b->parentWidget()) continue;  // a date has parts
    const bool below = b->geometry().top() >= a->geometry().bottom();
    const bool right_of = b->geometry().left() >= a->geometry().right();
    EXPECT_TRUE(below || right_of) << where << ": " << told(b) << " comes after " << told(a);
  }
}

void expect_by_tab(QWidget* root, const std::string& where) {
  const auto visited = by_tab(root);
  for (const QWidget* each : controls(root)) {
    EXPECT_TRUE(is_reached(each, visited)) << where << ": " << told(each);
  }
  expect_read_in_order(visited, where);
}

class Reach : public DemoWindow {
 protected:
  Reach() {
    read_the_field(*window_, *demo_);
    window_->activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(window_.get()));
  }

  // Every view; where there is a list, with something of it chosen.
  void each_view(const std::function<void(const std::string&)>& look) {
    for (int view = 0; view < window_->views()->count(); ++view) {
      window_->go(view);
      if (view == 2) window_->views()->field().show_pin({8, 3, 4});
      QTest::qWait(30);
      look(window_->views()->names().at(view).toStdString());
    }
    for (const char* id : {"permit", "distances", "wind", "extinguishers"}) {
      window_->go(0);
      window_->views()->checklist().show_item(session().checklist().item(id));
      QTest::qWait(30);
      look(id);
    }
    window_->views()->checklist().show_release();
    QTest::qWait(30);
    look("release");
  }

  void each_dialog(const std::function<void(QWidget*, const std::string&)>& look) {
    const auto shown = [&](QDialog* dialog, const char* name) {
      dialog->setAttribute(Qt::WA_DeleteOnClose, false);
      dialog->show();
      // Qt calls a dialog active while the window that it belongs to is.
      QApplication::setActiveWindow(dialog);
      EXPECT_TRUE(QTest::qWaitFor([&] { return QApplication::activeWindow() == dialog; })) << name;
      QTest::qWait(30);
      look(dialog, name);
    };
    NewShowDialog pages(window_.get());
    for (int step = 0; step < pages.steps(); ++step) {
      pages.go(step);
      shown(&pages, "new show");
    }
    pages.hide();
    SignDialog sign(session(), {"Sign", "A statement.", {}, {}, "Reason"}, {}, window_.get());
    shown(&sign, "sign");
    EnrolDialog enrol(session(), window_.get());
    shown(&enrol, "enrol");
    LookDialog look_dialog({}, window_.get());
    shown(&look_dialog, "look");
    LearnDialog learn(tester::default_profile(), {"CH 3: 2.31 ohm"}, window_.get());
    shown(&learn, "learn");
  }
};

TEST_F(Reach, EveryControlHasANameForAScreenReader) {
  each_view([&](const std::string& where) { expect_names(window_.get(), where); });
  each_dialog([](QWidget* dialog, const std::string& where) { expect_names(dialog, where); });
}

TEST_F(Reach, TabGoesToEveryControl) {
  for (const int text_pct : {100, 200}) {
    window_->dress({Light::day, text_pct});
    each_view([&](const std::string& where) { expect_by_tab(window_.get(), where); });
  }
  each_dialog([](QWidget* dialog, const std::string& where) { expect_by_tab(dialog, where); });
}

// The names of the views exclude each other.
TEST_F(Reach, ArrowsGoFromViewToView) {
  window_->go(0);
  const auto there = by_tab(window_.get());
  const auto checked = std::find_if(there.begin(), there.end(), [](const QWidget* each) {
    const auto* button = qobject_cast<const QAbstractButton*>(each);
    return button != nullptr && button->group() != nullptr && button->isChecked();
  });
  ASSERT_NE(checked, there.end());
  (*checked)->setFocus();
  for (int view = 1; view < window_->views()->count(); ++view) {
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Down);
    EXPECT_EQ(window_->views()->currentIndex(), view);
  }
}

TEST_F(Reach, BacktabGoesTheSameWayBack) {
  window_->go(4);
  QTest::qWait(30);
  const auto there = by_tab(window_.get());
  ASSERT_GT(there.size(), 3U);
  there.back()->setFocus();
  for (auto it = there.rbegin() + 1; it != there.rend(); ++it) {
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Backtab, Qt::ShiftModifier);
    EXPECT_EQ(QApplication::focusWidget(), *it) << told(*it);
  }
}

// Pressed, these go away or are grey for a while.
TEST_F(Reach, WhoeverPressesTheSameKeyAgainCallsNoHold) {
  const auto press_twice = [&](int view, const QString& text) {
    window_->go(view);
    QTest::qWait(30);
    for (auto* each : window_->views()->currentWidget()->findChildren<QPushButton*>()) {
      if (each->text() != text || !each->isVisible() || !each->isEnabled()) continue;
      each->setFocus();
      QTest::keyClick(each, Qt::Key_Space);
      QTest::qWait(300);
      QWidget* now = QApplication::focusWidget();
      EXPECT_TRUE(now == nullptr || !now->property("alarm").toBool()) << text.toStdString();
      return;
    }
    ADD_FAILURE() << "no button: " << text.toStdString();
  };
  window_->views()->faults().choose(0);
  press_twice(3, "Re-hooked: read again");
  press_twice(1, "Goes in");
  press_twice(6, "Verify now");
  press_twice(7, "Make the report");
}

TEST_F(Reach, TheFocusIsSeenInEveryLight) {
  for (std::size_t light = 0; light < kLights; ++light) {
    window_->dress({static_cast<Light>(light), 100});
    each_view([&](const std::string& where) { expect_seen_focus(window_.get(), where); });
  }
  each_dialog([](QWidget* dialog, const std::string& where) { expect_seen_focus(dialog, where); });
}

}  // namespace
}  // namespace walkdown::gui
