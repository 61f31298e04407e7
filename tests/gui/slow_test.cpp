// SPDX-License-Identifier: Apache-2.0
// A disk that takes two seconds for every write: the window goes on as if there were none.
#include <gtest/gtest.h>

#include <QElapsedTimer>
#include <QTemporaryDir>
#include <QTest>
#include <atomic>
#include <chrono>
#include <thread>

#include "checklist/record/clock.h"
#include "gui/app/window.h"
#include "gui/day/sign_dialog.h"
#include "reader/trainer/pty.h"
#include "reader/trainer/sweep.h"
#include "tests/gui/big_show.h"

namespace walkdown::gui {
namespace {

using std::chrono::milliseconds;

constexpr int kPatience_ms = 30'000;
constexpr milliseconds kSlow{2000};
// Beats of the window's thread that are further apart than this would be felt; a machine that
// builds beside the test is late by as much without any fault of the window's.
constexpr qint64 kFelt_ms = 700;

class SlowDisk : public record::Device {
 public:
  explicit SlowDisk(std::unique_ptr<record::Device> disk) : disk_(std::move(disk)) {}
  Result<std::size_t> write(std::string_view bytes) override { return disk_->write(bytes); }
  Done sync() override {
    if (slow) std::this_thread::sleep_for(kSlow);
    return disk_->sync();
  }
  static std::atomic<bool> slow;

 private:
  std::unique_ptr<record::Device> disk_;
};
std::atomic<bool> SlowDisk::slow{false};

class SlowWindow : public ::testing::Test {
 protected:
  SlowWindow() {
    const std::string base = folder_.path().toStdString();
    const desk::Crew crew(base + "/crew");
    const auto mara = crew.add("Mara Linde", "a long secret", record::Cost::interactive);
    EXPECT_TRUE(mara);
    record::Seed seed{};
    seed.fill(9);
    desk::DeskOptions options;
    options.wrap = [](std::unique_ptr<record::Device> disk) -> std::unique_ptr<record::Device> {
      return std::make_unique<SlowDisk>(std::move(disk));
    };
    auto desk =
        desk::Desk::open(base + "/slow.record", big_show(2, 1), {"slow", seed}, clock_, options);
    EXPECT_TRUE(desk) << desk.error().sentence();
    EXPECT_TRUE(desk::enrol(*desk, "Mara Linde", "lead", mara->key));
    window_.open(std::make_unique<Session>(std::move(desk).value(), crew), nullptr);
    window_.show();
    EXPECT_TRUE(QTest::qWaitFor([&] { return window_.session()->now() != nullptr; }));
    SlowDisk::slow = true;
  }
  ~SlowWindow() override { SlowDisk::slow = false; }

  void press(QWidget* root, const QString& text) {
    for (auto* each : root->findChildren<QPushButton*>()) {
      if (each->text() == text && each->isVisible()) {
        return QTest::mouseClick(each, Qt::LeftButton);
      }
    }
    FAIL() << "no button: " << text.toStdString();
  }

  // The longest time for which the window's thread was kept while this came true.
  qint64 kept_ms(const std::function<bool()>& until) {
    qint64 longest = 0;
    QElapsedTimer since;
    since.start();
    EXPECT_TRUE(QTest::qWaitFor(
        [&] {
          longest = std::max(longest, since.restart());
          return until();
        },
        kPatience_ms));
    return longest;
  }

  [[nodiscard]] const day::State& state() { return window_.session()->now()->state; }

  QTemporaryDir folder_;
  record::SystemClock clock_;
  Window window_;
};

TEST_F(SlowWindow, WaitsForNoDiskAndShowsNothingBeforeItIsThere) {
  QElapsedTimer since;
  since.start();
  press(&window_, "Call a hold");
  EXPECT_LT(since.elapsed(), kFelt_ms);
  for (int view = 0; view < window_.views()->count(); ++view) {
    window_.go(view);
    QTest::qWait(20);
  }
  if (since.elapsed() < kSlow.count()) {
    EXPECT_FALSE(state().hold.has_value()) << "shown before it was on disk";
  }
  EXPECT_LT(kept_ms([&] { return state().hold.has_value(); }), kFelt_ms);
  EXPECT_GE(since.elapsed(), kSlow.count());
}

TEST_F(SlowWindow, SignsWithoutWaiting) {
  window_.views()->checklist().show_release();
  QTest::qWait(50);
  press(&window_, QString::fromUtf8("Set the show time …"));
  auto* dialog = window_.findChild<SignDialog*>();
  ASSERT_NE(dialog, nullptr);
  ASSERT_TRUE(QTest::qWaitFor([&] { return dialog->findChild<QComboBox*>("who")->count() > 0; }));
  dialog->findChild<QLineEdit*>("passphrase")->setText("a long secret");
  press(dialog, "Sign");
  EXPECT_LT(kept_ms([&] { return state().show_at_ms.has_value(); }), kFelt_ms);
}

// The tester sends as fast as it can while each write takes two seconds; it is stopped and listened
// to again in the middle. What it sent stands in the record in the end, all of it.
TEST_F(SlowWindow, ReadsAndStopsWithoutWaiting) {
  Session& session = *window_.session();
  trainer::Field field = big_field(big_show(2, 1), 1000);
  auto tester = trainer::TesterPty::open();
  ASSERT_TRUE(tester);
  trainer::SweepForm form;
  form.times = 10;
  session.listener().listen((*tester)->path());
  std::vector<std::string> lines = trainer::sweep(field, field.pins(), form);
  const std::size_t sent = 2 * lines.size();
  (*tester)->send(std::move(lines));
  EXPECT_LT(kept_ms([&] { return (*tester)->queued() == 0; }), kFelt_ms);
  QTest::qWait(500);  // the last bytes are taken by the port's own thread
  QElapsedTimer since;
  since.start();
  session.listener().stop();
  session.listener().listen((*tester)->path());
  EXPECT_LT(since.elapsed(), kFelt_ms);
  (*tester)->send(trainer::sweep(field, field.pins(), form));
  EXPECT_LT(kept_ms([&] { return session.now()->counts.readings >= sent; }), kFelt_ms);
  EXPECT_EQ(session.now()->counts.readings, sent);
  EXPECT_EQ(session.now()->counts.rejected, 0U);
}

}  // namespace
}  // namespace walkdown::gui
