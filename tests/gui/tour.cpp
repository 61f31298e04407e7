// SPDX-License-Identifier: Apache-2.0
#include "tests/gui/tour.h"

#include <QTest>

#include "gui/day/sign_dialog.h"
#include "gui/new_show/new_show_dialog.h"
#include "gui/tester/learn_dialog.h"

namespace walkdown::gui {
namespace {

std::function<void(const Look_at&)> view(Window& window, int index,
                                         const std::function<void()>& then = {}) {
  return [&window, index, then](const Look_at& look_at) {
    window.go(index);
    if (then) then();
    QTest::qWait(20);
    look_at(window);
  };
}

}  // namespace

std::vector<Stop> tour(Window& window) {
  std::vector<Stop> stops;
  Views& views = *window.views();
  stops.push_back({QStringLiteral("checklist"),
                   view(window, 0, [&] { views.checklist().show_timeline(false); })});
  stops.push_back({QStringLiteral("timeline"),
                   view(window, 0, [&] { views.checklist().show_timeline(true); })});
  stops.push_back({QStringLiteral("release"), view(window, 0, [&] {
                     views.checklist().show_timeline(false);
                     views.checklist().show_release();
                   })});
  stops.push_back({QStringLiteral("crew"), view(window, 1)});
  stops.push_back(
      {QStringLiteral("field"), view(window, 2, [&] { views.field().canvas().show_all(); })});
  stops.push_back({QStringLiteral("pin"), view(window, 2, [&] {
                     views.field().show_pin({8, 3, 4});
                   })});
  stops.push_back({QStringLiteral("faults"), view(window, 3)});
  stops.push_back({QStringLiteral("tester"), view(window, 4)});
  stops.push_back({QStringLiteral("weather"), view(window, 5)});
  stops.push_back({QStringLiteral("record"), view(window, 6)});
  stops.push_back({QStringLiteral("report"), view(window, 7, [&] {
                     if (!views.report().made()) views.report().make();
                     static_cast<void>(
                         QTest::qWaitFor([&] { return views.report().made(); }, 20'000));
                   })});
  stops.push_back({QStringLiteral("new-show"), [&window](const Look_at& look_at) {
                     NewShowDialog pages(&window);
                     pages.resize(window.size() * 0.85);
                     pages.show();
                     QTest::qWait(100);
                     look_at(pages);
                   }});
  stops.push_back({QStringLiteral("sign"), [&window](const Look_at& look_at) {
                     Ask ask{ReleasePage::tr("Lift the hold"),
                             ReleasePage::tr("What the hold broke is to be answered anew."),
                             {},
                             {},
                             ReleasePage::tr("Reason")};
                     SignDialog dialog(*window.session(), ask, {}, &window);
                     dialog.show();
                     QTest::qWait(50);
                     look_at(dialog);
                   }});
  stops.push_back({QStringLiteral("learn"), [&window](const Look_at& look_at) {
                     LearnDialog dialog(
                         tester::default_profile(),
                         {QStringLiteral("CH 3: 2.31 ohm"), QStringLiteral("CH 4: OL ohm")},
                         &window);
                     dialog.show();
                     dialog.sample().choose(3, 1);
                     dialog.sample().mark(Part::pin);
                     dialog.sample().choose(6, 4);
                     dialog.sample().mark(Part::value);
                     QTest::qWait(50);
                     look_at(dialog);
                   }});
  return stops;
}

void read_the_field(Window& window, Demo& demo) {
  const auto planned = window.session()->prepared().planned.plan.pins.size();
  demo.set_rate(0);
  demo.sweep();
  const auto read = [&] {
    const auto& now = window.session()->now();
    return now && now->counts.readings >= planned * 2;
  };
  static_cast<void>(QTest::qWaitFor(read, 60'000));
}

void settle() {
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  // New labels are shown by it, and each layout asks the one that it is in, up to the window.
  constexpr int kDeepest = 12;
  for (int i = 0; i < kDeepest; ++i) QCoreApplication::sendPostedEvents();
}

}  // namespace walkdown::gui
