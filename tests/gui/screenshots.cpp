// SPDX-License-Identifier: Apache-2.0
// gui-screenshots DIR: a picture of every view in every light, at 100 and 200 % text, on the
// smallest window, for looking at. The demo's field is read once before.
#include <fmt/format.h>

#include <QApplication>
#include <QDir>
#include <QLabel>
#include <QTemporaryDir>
#include <QTest>
#include <array>
#include <clocale>

#include "checklist/record/clock.h"
#include "gui/app/demo.h"
#include "gui/app/window.h"
#include "gui/look/language.h"
#include "tests/gui/tour.h"

namespace {

using namespace walkdown;

int shoot(gui::Window& window, const QString& folder) {
  const std::array lights{"day", "dusk", "night"};
  int count = 0;
  for (std::size_t light = 0; light < gui::kLights; ++light) {
    for (const int pct : {100, 200}) {
      window.dress({static_cast<gui::Light>(light), pct});
      for (const gui::Stop& stop : gui::tour(window)) {
        QTest::qWait(30);
        const QString name =
            QStringLiteral("%1/%2-%3-%4.png").arg(folder, stop.name, lights.at(light)).arg(pct);
        if (!stop.grab().save(name)) return 2;
        ++count;
      }
    }
  }
  fmt::print("{} pictures in {}\n", count, folder.toStdString());
  return 0;
}

}  // namespace

int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  const QApplication application(argc, argv);
  std::setlocale(LC_NUMERIC, "C");
  gui::Translator translator;
  if (gui::load_language(translator, {qEnvironmentVariable("LANGUAGE", "en")}, WALKDOWN_QM)) {
    QApplication::installTranslator(&translator);
  }
  if (argc != 2 || !QDir().mkpath(QString::fromLocal8Bit(argv[1]))) {
    fmt::print(stderr, "Name a folder for the pictures: gui-screenshots DIR\n");
    return 2;
  }
  const QTemporaryDir folder;
  auto demo = gui::Demo::make(folder.path().toStdString());
  if (!demo) return 2;
  const record::SystemClock clock;
  auto desk = (*demo)->open(clock);
  if (!desk) return 2;
  gui::Window window;
  window.resize(1024, 700);
  window.open(
      std::make_unique<gui::Session>(std::move(desk).value(), gui::crew_of((*demo)->places())),
      demo->get());
  window.resize(1024, 700);
  window.show();
  gui::read_the_field(window, **demo);
  window.findChild<QLabel*>("said")->hide();
  return shoot(window, QString::fromLocal8Bit(argv[1]));
}
