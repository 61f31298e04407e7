// SPDX-License-Identifier: Apache-2.0
// Every control of every view and dialog: a screen reader has a name for it, and
// whoever looks sees that it has the focus.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QAbstractSpinBox>
#include <QAccessible>
#include <QImage>
#include <QTest>

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
      dialog->activateWindow();
      EXPECT_TRUE(QTest::qWaitForWindowActive(dialog));
      look(dialog, name);
      dialog->hide();
    };
    NewShowDialog pages(window_.get());
    for (int step = 0; step < pages.steps(); ++step) {
      pages.go(step);
      shown(&pages, "new show");
    }
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

TEST_F(Reach, TheFocusIsSeenInEveryLight) {
  for (std::size_t light = 0; light < kLights; ++light) {
    window_->dress({static_cast<Light>(light), 100});
    each_view([&](const std::string& where) { expect_seen_focus(window_.get(), where); });
  }
  each_dialog([](QWidget* dialog, const std::string& where) { expect_seen_focus(dialog, where); });
}

}  // namespace
}  // namespace walkdown::gui
