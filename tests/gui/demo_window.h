// SPDX-License-Identifier: Apache-2.0
// The real window over the demo's record, its simulated tester and its crew's keys.
#pragma once

#include <gtest/gtest.h>

#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>
#include <memory>

#include "checklist/record/clock.h"
#include "gui/app/demo.h"
#include "gui/app/window.h"
#include "gui/day/sign_dialog.h"

namespace walkdown::gui {

inline constexpr int kPatience_ms = 20'000;

class DemoWindow : public ::testing::Test {
 protected:
  DemoWindow() {
    auto demo = Demo::make(folder_.path().toStdString());
    EXPECT_TRUE(demo) << demo.error().sentence();
    demo_ = std::move(demo).value();
    auto desk = demo_->open(clock_);
    EXPECT_TRUE(desk) << desk.error().sentence();
    window_ = std::make_unique<Window>();
    window_->open(std::make_unique<Session>(std::move(desk).value(), crew_of(demo_->places())),
                  demo_.get());
    window_->show();
    EXPECT_TRUE(QTest::qWaitFor([&] { return session().now() != nullptr; }, kPatience_ms));
  }

  [[nodiscard]] Session& session() { return *window_->session(); }
  [[nodiscard]] const day::State& state() { return session().now()->state; }

  // Presses the button with this text below `root`.
  static void press(QWidget* root, const QString& text) {
    QTest::qWait(30);  // a page made just now is shown by the event loop
    for (auto* each : root->findChildren<QPushButton*>()) {
      if (each->text() == text && each->isVisible() && each->isEnabled()) {
        return QTest::mouseClick(each, Qt::LeftButton);
      }
    }
    FAIL() << "no button: " << text.toStdString();
  }

  // Fills in the open dialog as that person and waits until it closed.
  void sign_as(const QString& person, const QString& passphrase = kDemoPassphrase) {
    auto* dialog = window_->findChild<SignDialog*>();
    ASSERT_NE(dialog, nullptr);
    auto* who = dialog->findChild<QComboBox*>("who");
    ASSERT_TRUE(QTest::qWaitFor([&] { return who->count() > 0; }, kPatience_ms));
    who->setCurrentIndex(who->findText(person, Qt::MatchStartsWith));
    dialog->findChild<QLineEdit*>("passphrase")->setText(passphrase);
    press(dialog, "Sign");
  }
  [[nodiscard]] bool dialog_gone() {
    return QTest::qWaitFor([&] { return window_->findChild<SignDialog*>() == nullptr; },
                           kPatience_ms);
  }

  QTemporaryDir folder_;
  record::SystemClock clock_;
  std::unique_ptr<Demo> demo_;
  std::unique_ptr<Window> window_;
};

}  // namespace walkdown::gui
