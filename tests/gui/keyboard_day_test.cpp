// SPDX-License-Identifier: Apache-2.0
// A whole day with the keyboard alone: from files to a signed release, in the real window, over a
// real record and a simulated tester.
#include <gtest/gtest.h>

#include <QFile>
#include <QTemporaryDir>
#include <algorithm>

#include "checklist/desk/copy.h"
#include "checklist/record/clock.h"
#include "gui/app/window.h"
#include "gui/day/enrol_dialog.h"
#include "gui/day/sign_dialog.h"
#include "gui/new_show/new_show_dialog.h"
#include "reader/trainer/pty.h"
#include "reader/trainer/sweep.h"
#include "tests/gui/keys_only.h"

namespace walkdown::gui {
namespace {

constexpr const char* kPlan =
    "cue,position,module,rail,pin,igniter,lead_m\n"
    "1,Jetty,1,1,1,standard,2\n2,Jetty,1,1,2,standard,9\n3,Ridge,2,1,1,standard,4\n";

constexpr const char* kChecklist = R"(name = "A short day"
source = "invented for a test"
lead = ["lead"]
release_second = ["safety"]
[[key]]
name = "arming key"
starts = "lock box"
places = ["lock box", "firing position"]
firing = "firing position"
[[stage]]
id = "prove"
title = "Prove"
[[stage.item]]
id = "water"
question = "How many litres of water stand ready?"
kind = "number"
by = ["safety"]
unit = "l"
min = 20
source = "invented"
[[stage.item]]
id = "continuity"
question = "Does every planned pin read what its load should?"
kind = "continuity"
valid_for = "3h"
source = "invented"
[[stage]]
id = "clear"
title = "Clear"
[[stage.item]]
id = "field"
question = "Who is still out there?"
kind = "headcount"
[[stage.item]]
id = "edge"
question = "What do you see inside the line?"
kind = "confirm"
by = ["safety"]
choices = ["a person", "nobody"]
good = ["nobody"]
valid_for = "3h"
source = "invented"
needs = ["field"]
[[stage.item]]
id = "key"
question = "Who has the arming key?"
kind = "custody"
key = "arming key"
places = ["role:lead", "firing position"]
)";

const QString kWord = QStringLiteral("a word of the test");

class KeyboardDay : public ::testing::Test {
 protected:
  KeyboardDay() : keys_(window_) {
    window_.resize(1280, 800);
    window_.dress({Light::day, 100});
    window_.start(clock_, {file("station.key"), file("crew")});
    window_.show();
    window_.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window_));
  }

  [[nodiscard]] std::string file(const char* name) const {
    return (folder_.path() + '/' + name).toStdString();
  }
  QString put(const char* name, const char* text) const {
    QFile out(folder_.path() + '/' + name);
    EXPECT_TRUE(out.open(QIODevice::WriteOnly));
    out.write(text);
    return out.fileName();
  }
  [[nodiscard]] const day::State& state() { return window_.session()->now()->state; }
  [[nodiscard]] std::size_t item(const char* id) { return window_.session()->checklist().item(id); }
  [[nodiscard]] bool holds(const char* id) {
    return KeysOnly::wait([&] { return state().items[item(id)].standing == day::Standing::holds; });
  }

  void next_page(const char* name, const QString& path) {
    ASSERT_TRUE(path.isNull() || keys_.type(name, path)) << name;
    ASSERT_TRUE(keys_.press("Next")) << name;
  }
  void plan_the_show();
  void enrol(const QString& name, const QString& role);
  void view(Qt::Key digit) { keys_.key(digit, Qt::ControlModifier); }
  // The dialog that is open or opens now.
  void sign(const QString& who) {
    ASSERT_TRUE(keys_.dialog<SignDialog>());
    ASSERT_TRUE(keys_.choose("Who signs", who));
    ASSERT_TRUE(keys_.type("Passphrase", kWord));
    ASSERT_TRUE(keys_.press("Sign"));
    ASSERT_TRUE(keys_.closed());
  }
  void read_the_field();
  void answer_water();
  void close_stage(const char* title, std::size_t stage);
  void take_the_key();
  void answer_edge();
  void release();

  QTemporaryDir folder_;
  record::SystemClock clock_;
  Window window_;
  KeysOnly keys_;
  std::unique_ptr<trainer::TesterPty> tester_;
};

void KeyboardDay::plan_the_show() {
  ASSERT_TRUE(keys_.press(QStringLiteral("New show \u2026")));
  ASSERT_TRUE(keys_.dialog<NewShowDialog>());
  next_page("Plan", put("plan.csv", kPlan));
  for (const char* page : {"Modules", "Site", "Distances", "Igniters", "Tester"}) {
    next_page(page, {});
  }
  next_page("Checklist", put("checklist.toml", kChecklist));
  ASSERT_TRUE(keys_.type("The record's file", folder_.path() + "/day.record"));
  auto* pages = window_.findChild<NewShowDialog*>();
  ASSERT_TRUE(KeysOnly::wait([&] { return pages->ready(); })) << pages->told().toStdString();
  ASSERT_TRUE(keys_.press("Open the new record"));
  ASSERT_TRUE(KeysOnly::wait([&] { return window_.session() && window_.session()->now(); }))
      << window_.refusal().toStdString();
  ASSERT_TRUE(keys_.closed());
}

void KeyboardDay::enrol(const QString& name, const QString& role) {
  ASSERT_TRUE(keys_.press(QStringLiteral("Enrol a person \u2026")));
  ASSERT_TRUE(keys_.dialog<EnrolDialog>());
  ASSERT_TRUE(keys_.type("Name", name));
  ASSERT_TRUE(keys_.choose("Role", role));
  ASSERT_TRUE(keys_.type("Passphrase for a new key", kWord));
  ASSERT_TRUE(keys_.press("Enrol"));
  ASSERT_TRUE(keys_.closed());
  const auto is_there = [&](const day::Enrolled& each) { return each.name == name.toStdString(); };
  ASSERT_TRUE(KeysOnly::wait(
      [&] { return std::any_of(state().people.begin(), state().people.end(), is_there); }));
}

void KeyboardDay::read_the_field() {
  const audit::Planned& planned = window_.session()->prepared().planned;
  trainer::Field field(planned.plan, planned.tester.model, 1);
  auto tester = trainer::TesterPty::open();
  ASSERT_TRUE(tester) << tester.error().sentence();
  tester_ = std::move(tester).value();
  view(Qt::Key_5);
  ASSERT_TRUE(keys_.type("Port", QString::fromStdString(tester_->path())));
  ASSERT_TRUE(keys_.press("Listen"));
  trainer::SweepForm form;
  form.times = 3;
  tester_->send(trainer::sweep(field, field.pins(), form));
  ASSERT_TRUE(holds("continuity"));
}

void KeyboardDay::answer_water() {
  view(Qt::Key_1);
  ASSERT_TRUE(keys_.choose("Checklist", "How many litres"));
  ASSERT_TRUE(keys_.type("Value in l (at least 20 l)", "25"));
  ASSERT_TRUE(keys_.press("Sign this answer"));
  sign("Jon Weir");
  ASSERT_TRUE(holds("water"));
}

void KeyboardDay::close_stage(const char* title, std::size_t stage) {
  view(Qt::Key_1);
  ASSERT_TRUE(keys_.choose("Checklist", title));
  ASSERT_TRUE(keys_.press("Close this stage"));
  sign("Mara Linde");
  ASSERT_TRUE(KeysOnly::wait([&] { return state().stages[stage].paused; }));
}

void KeyboardDay::take_the_key() {
  view(Qt::Key_2);
  ASSERT_TRUE(keys_.press(QStringLiteral("Take it \u2026")));
  sign("Mara Linde");
  ASSERT_TRUE(holds("key"));
}

void KeyboardDay::answer_edge() {
  view(Qt::Key_1);
  ASSERT_TRUE(keys_.choose("Checklist", "What do you see"));
  ASSERT_TRUE(keys_.go("a person"));
  keys_.key(Qt::Key_Down);
  ASSERT_TRUE(keys_.press("nobody"));
  ASSERT_TRUE(keys_.press("Sign this answer"));
  sign("Jon Weir");
  ASSERT_TRUE(holds("edge"));
}

void KeyboardDay::release() {
  view(Qt::Key_1);
  ASSERT_TRUE(keys_.choose("Checklist", "Release"));
  ASSERT_TRUE(keys_.press(QStringLiteral("Sign the release \u2026")));
  sign("Mara Linde");
  ASSERT_TRUE(KeysOnly::wait([&] { return !state().waiting.empty(); }));
  ASSERT_TRUE(keys_.press(
      QStringLiteral("Second signature to entry %1 \u2026").arg(state().waiting.front().n)));
  sign("Jon Weir");
  ASSERT_TRUE(KeysOnly::wait([&] { return state().release.word == day::ReleaseWord::stands; }));
}

TEST_F(KeyboardDay, GoesFromFilesToAReleaseWithoutAMouse) {
  const std::vector<std::function<void()>> steps{
      [&] { plan_the_show(); },
      [&] { enrol("Mara Linde", "lead"); },
      [&] { enrol("Jon Weir", "safety"); },
      [&] {
        view(Qt::Key_1);
        ASSERT_TRUE(keys_.choose("Checklist", "Release"));
        ASSERT_TRUE(keys_.press(QStringLiteral("Set the show time \u2026")));
        sign("Mara Linde");
      },
      [&] { read_the_field(); },
      [&] { answer_water(); },
      [&] { close_stage("Prove", 0); },
      [&] { take_the_key(); },
      [&] { answer_edge(); },
      [&] { release(); },
  };
  for (std::size_t i = 0; i < steps.size() && !HasFatalFailure(); ++i) steps[i]();
  ASSERT_FALSE(HasFatalFailure());
  const auto copy = desk::Copy::open(file("day.record"));
  ASSERT_TRUE(copy) << copy.error().sentence();
  EXPECT_TRUE(copy->report().holds) << copy->report().why;
  EXPECT_EQ(copy->state().release.word, day::ReleaseWord::stands);
  EXPECT_EQ(copy->state().release.by, "Mara Linde");
  EXPECT_EQ(copy->state().release.second, "Jon Weir");
}

}  // namespace
}  // namespace walkdown::gui
