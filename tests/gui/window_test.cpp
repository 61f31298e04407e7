// SPDX-License-Identifier: Apache-2.0
// The real window over the demo's record, its simulated tester and its crew's keys: what is pressed
// here is written to a file and read back from it.
#include "gui/app/window.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QDialog>
#include <QFile>
#include <QRadioButton>
#include <QTemporaryDir>
#include <QTest>

#include "checklist/desk/copy.h"
#include "checklist/record/clock.h"
#include "gui/app/demo.h"
#include "gui/day/sign_dialog.h"
#include "gui/new_show/new_show_dialog.h"
#include "gui/report/printable.h"
#include "tests/gui/tour.h"

namespace walkdown::gui {
namespace {

constexpr int kPatience_ms = 20'000;

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

TEST_F(DemoWindow, ShowsWhatTheRecordSays) {
  EXPECT_EQ(window_->strip().field(Strip::key).text(), "lock box");
  EXPECT_EQ(window_->strip().field(Strip::people).text(), "nobody");
  EXPECT_EQ(state().people.size(), 4U);
  EXPECT_TRUE(window_->strip().field(Strip::release).text().startsWith("not possible"));
}

TEST_F(DemoWindow, AHoldNeedsNoPassphraseAndIsOnDiskWhenItShows) {
  press(window_.get(), "Call a hold");
  ASSERT_TRUE(QTest::qWaitFor([&] { return state().hold.has_value(); }, kPatience_ms));
  EXPECT_EQ(window_->strip().field(Strip::day).text(), "hold");
  const auto copy = desk::Copy::open(session().path());
  ASSERT_TRUE(copy);
  EXPECT_TRUE(copy->report().holds) << copy->report().why;
  EXPECT_TRUE(copy->state().hold.has_value());
}

TEST_F(DemoWindow, AnAnswerIsSignedAndAWrongPassphraseIsNot) {
  const std::size_t first = session().checklist().item("extinguishers");
  window_->views()->checklist().show_item(first);
  QTest::qWait(30);
  QWidget* page = &window_->views()->checklist();
  page->findChild<ItemPage*>()->findChild<QLineEdit*>()->setText("4");
  press(page, "Sign this answer");
  sign_as("Jon Weir", "not the passphrase");
  ASSERT_TRUE(QTest::qWaitFor(
      [&] {
        auto* dialog = window_->findChild<SignDialog*>();
        if (dialog == nullptr) return false;
        for (auto* each : dialog->findChildren<QPushButton*>()) {
          if (each->text() == "Sign") return each->isEnabled();
        }
        return false;
      },
      kPatience_ms));
  EXPECT_TRUE(state().items[first].answer.empty());
  sign_as("Jon Weir");
  ASSERT_TRUE(dialog_gone());
  ASSERT_TRUE(QTest::qWaitFor([&] { return !state().items[first].answer.empty(); }, kPatience_ms));
  EXPECT_EQ(state().items[first].by, "Jon Weir");
  EXPECT_EQ(state().items[first].standing, day::Standing::holds);
}

TEST_F(DemoWindow, FaultsAreFoundMendedAsToldAndReadAgain) {
  read_the_field(*window_, *demo_);
  FaultsView& faults = window_->views()->faults();
  ASSERT_TRUE(QTest::qWaitFor([&] { return faults.model().rowCount({}) > 0; }, kPatience_ms));
  window_->go(3);
  const int before = faults.model().rowCount({});
  faults.choose(0);
  const auto pins = faults.model().faults()[0].pins;
  press(&faults, "Re-hooked: read again");
  const auto done = [&] {
    const auto& all = faults.model().faults();
    return std::any_of(all.begin(), all.end(), [&](const Fault& fault) {
      return fault.step == Fault::Step::done && fault.pins == pins;
    });
  };
  EXPECT_TRUE(QTest::qWaitFor(done, kPatience_ms)) << before;
  EXPECT_FALSE(session().ledger().rehooks().empty());
}

TEST_F(DemoWindow, ModelsAreModelsWhileTheRecordGrows) {
  using Mode = QAbstractItemModelTester::FailureReportingMode;
  EntryModel& entries = window_->views()->record().model();
  const QAbstractItemModelTester record(&entries, Mode::Fatal);
  ItemModel items(session().checklist());
  const QAbstractItemModelTester checklist(&items, Mode::Fatal);
  items.see(session().now());
  entries.set_filter({true, {}});
  read_the_field(*window_, *demo_);
  items.see(session().now());
  EXPECT_GT(entries.rowCount({}), 800);
  entries.set_filter({false, "enrol"});
  EXPECT_EQ(entries.rowCount({}), 4);
}

TEST_F(DemoWindow, TheRecordVerifiesWhileItIsWritten) {
  RecordView& view = window_->views()->record();
  view.verify();
  ASSERT_TRUE(QTest::qWaitFor([&] { return view.verified().contains("held"); }, kPatience_ms))
      << view.verified().toStdString();
}

TEST_F(DemoWindow, TheReportBecomesAPdf) {
  const QString pdf = folder_.path() + "/report.pdf";
  const Done made = write_report_pdf(session().path(), pdf);
  ASSERT_TRUE(made) << made.error().sentence();
  QFile file(pdf);
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  EXPECT_TRUE(file.readAll().startsWith("%PDF-"));
  EXPECT_FALSE(write_report_pdf(session().path(), "/no/such/folder/report.pdf"));
  EXPECT_FALSE(write_report_pdf(folder_.path().toStdString() + "/none", pdf));
}

// From files to an open record, by the pages a crew would go through.
TEST_F(DemoWindow, ANewShowIsPlannedFromFilesAndOpened) {
  const cli::DemoFiles& files = demo_->files();
  NewShowDialog pages;
  pages.show();
  pages.set_path(show::Role::plan, QString::fromStdString(files.faults));  // no plan at all
  pages.set_record(folder_.path() + "/new.record");
  pages.go(pages.steps() - 1);
  QTest::qWait(300);
  EXPECT_FALSE(pages.ready());
  pages.set_path(show::Role::plan, QString::fromStdString(files.inputs.plan));
  pages.set_path(show::Role::igniters, QString::fromStdString(files.inputs.igniters));
  pages.set_path(show::Role::modules, QString::fromStdString(files.inputs.modules));
  pages.set_path(show::Role::site, QString::fromStdString(files.site));
  ASSERT_TRUE(QTest::qWaitFor([&] { return pages.ready(); }, kPatience_ms));
  const auto show = show_of(pages.draft());
  ASSERT_TRUE(show) << show.error().sentence();
  auto desk = open_record(pages.record().toStdString(), *show, demo_->places(), clock_);
  ASSERT_TRUE(desk) << desk.error().sentence();
  EXPECT_EQ(desk->prepared().planned.plan.pins.size(),
            session().prepared().planned.plan.pins.size());
  EXPECT_FALSE(desk->checklist().items.empty());
}

TEST_F(DemoWindow, EveryControlHasANameForAScreenReader) {
  for (int view = 0; view < window_->views()->count(); ++view) {
    window_->go(view);
    for (auto* each : window_->findChildren<QWidget*>()) {
      if (!each->isVisible() || each->focusPolicy() == Qt::NoFocus) continue;
      if (qobject_cast<QAbstractButton*>(each) != nullptr) {
        const auto* button = qobject_cast<QAbstractButton*>(each);
        EXPECT_FALSE(button->text().isEmpty() && button->accessibleName().isEmpty());
      } else if (qobject_cast<QLineEdit*>(each) != nullptr ||
                 qobject_cast<QComboBox*>(each) != nullptr ||
                 qobject_cast<QAbstractItemView*>(each) != nullptr) {
        if (qobject_cast<QComboBox*>(each->parentWidget()) != nullptr) continue;
        EXPECT_FALSE(each->accessibleName().isEmpty())
            << view << ' ' << each->metaObject()->className();
      }
    }
  }
}

}  // namespace
}  // namespace walkdown::gui
