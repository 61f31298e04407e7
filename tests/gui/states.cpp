// SPDX-License-Identifier: Apache-2.0
#include <QFile>
#include <QTest>

#include "checklist/record/clock.h"
#include "gui/app/look_dialog.h"
#include "gui/day/enrol_dialog.h"
#include "gui/day/sign_dialog.h"
#include "gui/look/sentences.h"
#include "gui/look/words.h"
#include "gui/new_show/new_show_dialog.h"
#include "gui/tester/learn_dialog.h"
#include "tests/gui/tour.h"

namespace walkdown::gui {
namespace {

constexpr std::int64_t kMinute_ms = 60'000;
using Change = std::function<void(Snapshot&)>;

Stop changed(Window& window, const char* name, int view, const std::function<void()>& go,
             const Change& change) {
  return {QString::fromLatin1(name), [&window, view, go, change](const Look_at& look_at) {
            window.go(view);
            if (go) go();
            QTest::qWait(20);
            show_changed(window, change);
            look_at(window);
          }};
}

void all_hold(Snapshot& seen) {
  seen.state.against.clear();
  seen.schedule.feasible = true;
  seen.schedule.say = "every item holds to the end of the show at 23:34";
  for (auto& stage : seen.state.stages) stage.locked = false;
  for (std::size_t i = 0; i < seen.state.items.size(); ++i) {
    auto& item = seen.state.items[i];
    item.standing = day::Standing::holds;
    item.why = "answered, and nothing broke it";
    item.until_at_ms = seen.now.at_ms + (20 + static_cast<std::int64_t>(i) * 7) * kMinute_ms;
  }
}

void stand_released(Snapshot& seen) {
  all_hold(seen);
  seen.state.word = "released";
  seen.state.release = {day::ReleaseWord::stands,        "", "Mara Linde", "Jon Weir", 1200,
                        seen.now.at_ms + 20 * kMinute_ms};
}

void fall(Snapshot& seen) {
  all_hold(seen);
  seen.state.release.word = day::ReleaseWord::fallen;
  seen.state.release.why = "Tom Aster is in the field";
  seen.state.in_field = {"Tom Aster"};
  seen.state.against = {"Tom Aster is in the field"};
}

void call_hold(Snapshot& seen) {
  seen.state.word = "hold";
  seen.state.holds = {{980, "Ines Holm", "a dog inside the line"}, {985, "", ""}};
  seen.state.hold = seen.state.holds.front();
  seen.state.against.insert(seen.state.against.begin(), day::said(seen.state.hold.value()));
}

void hand_over(Snapshot& seen) {
  if (seen.state.keys.empty()) return;
  seen.state.keys[0].holder = "Mara Linde";
  seen.state.keys[0].person = true;
  seen.state.keys[0].offered_to = "Jon Weir";
}

void people_inside(Snapshot& seen) {
  seen.state.in_field = {"Ines Holm", "Tom Aster"};
  seen.state.tags = {"Ines Holm"};
}

Change item_is(std::size_t index, day::Standing standing, const char* why) {
  return [=](Snapshot& seen) {
    seen.state.items[index].standing = standing;
    seen.state.items[index].why = why;
    seen.state.items[index].answer = "4";
    seen.state.items[index].by = "Jon Weir";
  };
}

Change waits_for_second(std::size_t index) {
  return [index](Snapshot& seen) {
    auto& item = seen.state.items[index];
    item.why = "waits for its second signature";
    item.answer = "as planned";
    item.by = "Mara Linde";
    item.answered_n = 990;
    seen.state.waiting.push_back({990, "the answer to an item of the checklist", "Mara Linde"});
  };
}

std::vector<Stop> day_states(Window& window) {
  ChecklistView& list = window.views()->checklist();
  const auto release = [&list] {
    list.show_timeline(false);
    list.show_release();
  };
  const std::size_t item = window.session()->checklist().item("extinguishers");
  const auto to_item = [&list, item] {
    list.show_timeline(false);
    list.show_item(item);
  };
  const auto timeline = [&list] { list.show_timeline(true); };
  return {
      changed(window, "released", 0, release, stand_released),
      changed(window, "released-timeline", 0, timeline, stand_released),
      changed(window, "ready", 0, release, all_hold),
      changed(window, "release-fallen", 0, release, fall),
      changed(window, "hold", 0, release, call_hold),
      changed(window, "item-expired", 0, to_item,
              item_is(item, day::Standing::expired, "was answered more than 4 h ago")),
      changed(window, "item-waived", 0, to_item,
              item_is(item, day::Standing::waived,
                      "waived by Mara Linde and Jon Weir: one is at the gate (not answered yet)")),
      changed(window, "item-second", 0, to_item, waits_for_second(item)),
      changed(
          window, "stage", 0,
          [to_item, &list] {
            to_item();
            list.findChild<ItemPage*>()->show_stage(1);
          },
          [](Snapshot&) {}),
      changed(window, "crew-inside", 1, {}, people_inside),
      changed(window, "custody", 1, {}, hand_over),
      changed(window, "not-written", 6, {},
              [](Snapshot& seen) { seen.trouble = translated("the record cannot be written"); }),
  };
}

Stop sign_stop(Window& window, const char* name, const Ask& ask) {
  return {QString::fromLatin1(name), [&window, ask](const Look_at& look_at) {
            SignDialog dialog(*window.session(), ask, {}, &window);
            dialog.show();
            QTest::qWait(100);
            look_at(dialog);
          }};
}

std::vector<Stop> dialog_states(Window& window, Demo& demo) {
  std::vector<Stop> out;
  out.push_back(sign_stop(window, "sign-waiver",
                          {ItemPage::tr("Waive this item"),
                           QStringLiteral("How many charged extinguishers stand by the field?\n") +
                               ItemPage::tr("This covers only the failure as it stands now: %1")
                                   .arg(translated("not answered yet")),
                           window.session()->checklist().lead,
                           {},
                           ItemPage::tr("Reason")}));
  out.push_back(sign_stop(window, "sign-nobody",
                          {SignDialog::tr("Sign"), QStringLiteral("x"), {"nobody"}, {}, {}}));
  out.push_back({QStringLiteral("light"), [&](const Look_at& look_at) {
                   auto* dialog = new LookDialog(window.look(), &window);
                   dialog->show();
                   QTest::qWait(50);
                   look_at(*dialog);
                   dialog->close();
                 }});
  out.push_back({QStringLiteral("enrol"), [&](const Look_at& look_at) {
                   auto* dialog = new EnrolDialog(*window.session(), &window);
                   dialog->show();
                   QTest::qWait(100);
                   look_at(*dialog);
                   dialog->close();
                 }});
  out.push_back({QStringLiteral("new-show-errors"), [&](const Look_at& look_at) {
                   NewShowDialog pages(&window);
                   pages.resize(window.size() * 0.85);
                   pages.set_path(show::Role::plan, q(demo.files().faults));
                   pages.show();
                   QTest::qWait(300);
                   look_at(pages);
                 }});
  out.push_back({QStringLiteral("learn-bad"), [&](const Look_at& look_at) {
                   LearnDialog dialog(tester::default_profile(),
                                      {QStringLiteral("CH 3: 2.31 ohm"), QStringLiteral("BATT 87")},
                                      &window);
                   dialog.show();
                   dialog.sample().choose(3, 1);
                   dialog.sample().mark(Part::pin);
                   dialog.sample().choose(6, 4);
                   dialog.sample().mark(Part::value);
                   QTest::qWait(50);
                   look_at(dialog);
                 }});
  return out;
}

std::vector<Stop> link_states(Window& window) {
  const auto link = [&window](const char* name, LinkWord word, const char* say) {
    return Stop{QString::fromLatin1(name), [&window, word, say](const Look_at& look_at) {
                  window.go(4);
                  Q_EMIT window.session()->listener().link_changed(word, translated(say));
                  QTest::qWait(20);
                  look_at(window);
                }};
  };
  return {link("unplugged", LinkWord::unplugged, ""),
          link("trouble", LinkWord::trouble,
               "/dev/ttyUSB0 belongs to the group dialout, and you are not in it"),
          {QStringLiteral("walk"), [&window](const Look_at& look_at) {
             auto& listener = window.session()->listener();
             window.go(4);
             Q_EMIT listener.walk_changed({true, plan::PinId{3, 1, 7}, 21, 442, false});
             QTest::qWait(20);
             look_at(window);
             Q_EMIT listener.walk_changed({});
           }}};
}

std::vector<Stop> pin_states(Window& window) {
  constexpr plan::PinId kPin{8, 3, 4};
  const auto stale = [](Snapshot& seen) {
    auto outcome = std::make_shared<match::Outcome>(*seen.outcome);
    for (auto& pin : outcome->pins) {
      if (pin.pin.module == 8) pin.verdict = match::Verdict::stale;
      if (pin.pin.module == 9) pin.verdict = match::Verdict::unread;
    }
    seen.outcome = outcome;
  };
  return {changed(
      window, "pin-stale", 2, [&window] { window.views()->field().show_pin(kPin); }, stale)};
}

// With nothing open, as the program starts.
Stop start(Window& shown, Demo& demo) {
  return {QStringLiteral("start"), [&shown, &demo](const Look_at& look_at) {
            const record::SystemClock clock;
            Window window;
            window.start(clock, demo.places());
            window.dress(shown.look());
            window.resize(shown.size());
            window.show();
            QTest::qWait(20);
            look_at(window);
            shown.dress(shown.look());  // the style forgot it over the other
          }};
}

Stop broken_record(Window& shown, Demo& demo) {
  return {
      QStringLiteral("broken-record"), [&shown, &demo](const Look_at& look_at) {
        const QString path = q(demo.files().record) + ".broken";
        QFile::remove(path);
        QFile::copy(q(demo.files().record), path);
        QFile file(path);
        if (!file.open(QIODevice::ReadWrite)) return;
        file.seek(file.size() / 2);
        file.write("x");
        file.close();
        const record::SystemClock clock;
        Window window;
        window.start(clock, demo.places());
        window.dress(shown.look());
        window.resize(shown.size());
        window.open_later(path.toStdString(), std::nullopt);
        window.show();
        static_cast<void>(QTest::qWaitFor([&] { return window.refusal().contains(path); }, 20'000));
        QTest::qWait(20);
        look_at(window);
        shown.dress(shown.look());
      }};
}

}  // namespace

void show_changed(Window& window, const std::function<void(Snapshot&)>& change) {
  auto changed = std::make_shared<Snapshot>(*window.session()->now());
  change(*changed);
  // A real one may be on its way, and would come last.
  bool overtaken = true;
  const auto watch = QObject::connect(window.session(), &Session::seen, &window,
                                      [&](const Seen& seen) { overtaken = seen != changed; });
  for (int tries = 0; overtaken && tries < 10; ++tries) {
    Q_EMIT window.session()->seen(changed);
    settle();
  }
  QObject::disconnect(watch);
}

std::vector<Stop> made_up_states(Window& window, Demo& demo) {
  std::vector<Stop> out = day_states(window);
  for (auto& stop : dialog_states(window, demo)) out.push_back(std::move(stop));
  for (auto& stop : link_states(window)) out.push_back(std::move(stop));
  for (auto& stop : pin_states(window)) out.push_back(std::move(stop));
  out.push_back(start(window, demo));
  out.push_back(broken_record(window, demo));
  for (auto& stop : weather_states(window, demo)) out.push_back(std::move(stop));
  return out;
}

}  // namespace walkdown::gui
