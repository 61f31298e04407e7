// SPDX-License-Identifier: Apache-2.0
// The real window over the demo's record, its simulated tester and its crew's keys: what is pressed
// here is written to a file and read back from it.
#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QFile>
#include <QPrinter>
#include <QRadioButton>
#include <QSettings>
#include <QSplitter>
#include <QTest>
#include <QTextDocument>
#include <thread>

#include "checklist/desk/acts.h"
#include "checklist/desk/copy.h"
#include "gui/app/settings.h"
#include "gui/new_show/new_show_dialog.h"
#include "gui/parts/paper.h"
#include "gui/parts/two_pane.h"
#include "gui/report/printable.h"
#include "tests/gui/demo_window.h"
#include "tests/gui/tour.h"

namespace walkdown::gui {
namespace {

TEST_F(DemoWindow, ShowsWhatTheRecordSays) {
  EXPECT_EQ(window_->strip().field(Strip::key).text(), "lock box");
  EXPECT_EQ(window_->strip().field(Strip::people).text(), "nobody");
  EXPECT_EQ(state().people.size(), 4U);
  EXPECT_TRUE(window_->strip().field(Strip::release).text().startsWith("not possible"));
  EXPECT_TRUE(window_->standing().whole().startsWith("No release yet: "));
  EXPECT_FALSE(window_->standing().isVisible()) << "the demonstration's greeting stands there";
  window_->standing().give_way(false);
  EXPECT_TRUE(window_->standing().isVisible());
}

TEST_F(DemoWindow, AHoldNeedsNoPassphraseAndIsOnDiskWhenItShows) {
  press(window_.get(), "Call a hold");
  ASSERT_TRUE(QTest::qWaitFor([&] { return state().hold.has_value(); }, kPatience_ms));
  EXPECT_EQ(window_->strip().field(Strip::day).text(), "hold");
  EXPECT_EQ(window_->standing().text(), "hold by somebody, no reason given");
  window_->standing().give_way(true);
  EXPECT_TRUE(window_->standing().isVisible()) << "an alarm gives way to nothing";
  EXPECT_TRUE(window_->standing().property("alarm").toBool()) << "told from other lines by colour";
  ASSERT_TRUE(desk::hold(session().desk(), "Ines Holm", "a dog inside the line"));
  EXPECT_TRUE(QTest::qWaitFor(
      [&] {
        return window_->standing().text() ==
               "hold by somebody, no reason given\nhold by Ines Holm: a dog inside the line";
      },
      kPatience_ms));
  const auto copy = desk::Copy::open(session().path());
  ASSERT_TRUE(copy);
  EXPECT_TRUE(copy->report().holds) << copy->report().why;
  EXPECT_TRUE(copy->state().hold.has_value());
}

TEST_F(DemoWindow, TheStripShowsNoWindThatTheChecklistDoesNotTake) {
  auto key = crew_of(demo_->places()).load("Mara Linde", kDemoPassphrase);
  ASSERT_TRUE(key);
  const desk::Signer lead{std::move(key).value(), "Mara Linde", "lead"};
  const StripField& wind = window_->strip().field(Strip::wind);
  const auto shows = [&](const QString& text) {
    return QTest::qWaitFor([&] { return wind.text() == text; }, kPatience_ms);
  };
  EXPECT_EQ(wind.text(), "not measured");
  ASSERT_TRUE(desk::hand_wind(session().desk(), lead, {3100, 5200, 600'000}));
  EXPECT_TRUE(shows("3.1, gust 5.2 m/s")) << wind.text().toStdString();
  Snapshot later = *session().now();
  day::ItemState& item = later.state.items[session().checklist().item("wind")];
  item.standing = day::Standing::expired;
  item.why = "was read more than 45 min ago";
  const Said old = wind_words(later, session().checklist());
  EXPECT_EQ(old.text, "expired");
  EXPECT_TRUE(old.more.contains("5.2 m/s")) << old.more.toStdString();
  // Of two that ask for the wind, one does not take it.
  day::Checklist two = session().checklist();
  two.items.insert(two.items.begin(), two.items[two.item("wind")]);
  later.state.items.insert(later.state.items.begin(), item);
  later.state.items.front().standing = day::Standing::holds;
  EXPECT_EQ(wind_words(later, two).text, "expired");
  ASSERT_TRUE(desk::hand_wind(session().desk(), lead, {9800, 13'400, 600'000}));
  EXPECT_TRUE(shows("! 9.8, gust 13.4 m/s")) << wind.text().toStdString();
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
  EXPECT_EQ(faults.findChild<QListView*>()->currentIndex().row(), 0)
      << "nobody looked yet: the first of the walk";
  const int before = faults.model().rowCount({});
  faults.choose(0);
  const auto pins = faults.model().faults()[0].pins;
  press(&faults, "Re-hooked: read again");
  const auto done = [&] {
    const auto& all = faults.model().faults();
    return std::any_of(all.begin(), all.end(), [&](const Fault& fault) {
      return fault.step == Fault::Step::done && find_again({fault}, pins) == 0;
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

TEST_F(DemoWindow, PagesAreLaidOutAndPrintedAwayFromTheWindowsThread) {
  const auto pages = [] {
    auto document = std::make_unique<QTextDocument>();
    document->setPlainText("Walk sheet");
    return document;
  };
  const QString pdf = folder_.path() + "/sheet.pdf";
  QPrinter printer(QPrinter::HighResolution);
  printer.setOutputFormat(QPrinter::PdfFormat);
  printer.setOutputFileName(pdf);
  std::thread([&] { EXPECT_TRUE(print_pages(pages, printer)); }).join();
  QFile file(pdf);
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  EXPECT_TRUE(file.readAll().startsWith("%PDF-"));
  printer.setOutputFileName("/no/such/folder/sheet.pdf");
  EXPECT_FALSE(print_pages(pages, printer));
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

// As after a crash: nothing is asked that the record knows.
TEST_F(DemoWindow, GoesOnWithTheLastRecordAtOnePress) {
  const std::string path = session().path();
  window_.reset();
  {
    Window first;
    first.start(clock_, demo_->places());
    first.open_later(path, std::nullopt);
    ASSERT_TRUE(QTest::qWaitFor([&] { return first.session() != nullptr; }, kPatience_ms));
  }
  Window next;
  next.start(clock_, demo_->places());
  next.show();
  press(&next, "Go on with the last record");
  ASSERT_TRUE(QTest::qWaitFor([&] { return next.session() != nullptr; }, kPatience_ms));
  EXPECT_EQ(next.session()->path(), path);
  ASSERT_TRUE(QTest::qWaitFor([&] { return next.session()->now() != nullptr; }, kPatience_ms));
  EXPECT_EQ(next.session()->now()->state.people.size(), 4U);
  keep_record({});
}

TEST_F(DemoWindow, KeepsItsSizeAndItsLookForTheNextTime) {
  window_->resize(1511, 877);
  const Look night{Light::night, 140};
  window_->dress(night);
  keep_look(night);
  window_->go(2);
  ASSERT_TRUE(QTest::qWaitForWindowExposed(window_.get()));
  auto* pane = window_->views()->field().findChild<TwoPane*>();
  auto* border = pane->findChild<QSplitter*>();
  QSplitterHandle* handle = border->handle(1);
  const int to_px = border->width() * 40 / 100 - handle->x();
  QTest::mousePress(handle, Qt::LeftButton);
  QTest::mouseMove(handle, handle->rect().center() + QPoint(to_px, 0));
  QTest::mouseRelease(handle, Qt::LeftButton);
  ASSERT_NEAR(pane->share(), 40, 2);
  window_->close();
  const Window next;
  EXPECT_EQ(next.size(), QSize(1511, 877));
  EXPECT_EQ(next.look(), night);
  EXPECT_EQ(kept_view(), 2);
  const TwoPane again(QStringLiteral("field"), new QWidget, new QWidget, 58);
  EXPECT_EQ(again.share(), pane->share());
  keep_view(0);
  QSettings().remove(QStringLiteral("split"));
}

}  // namespace
}  // namespace walkdown::gui
