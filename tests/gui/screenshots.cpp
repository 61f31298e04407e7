// SPDX-License-Identifier: Apache-2.0
// gui-screenshots DIR: a picture of every view in every light, at 100 and 200 % text, on the
// smallest window, for looking at. The demo's field is read once before. LANGUAGE=de and
// WALKDOWN_SIZE=3840x2160 for others.
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

bool shoot_one(const gui::Stop& stop, const QString& path) {
  QTest::qWait(30);
  bool saved = false;
  stop.visit([&](QWidget& widget) { saved = widget.grab().save(path); });
  return saved;
}

int shoot(gui::Window& window, const std::vector<gui::Stop>& stops, const QString& folder) {
  const std::array lights{"day", "dusk", "night"};
  for (std::size_t light = 0; light < gui::kLights; ++light) {
    for (const int pct : {100, 200}) {
      window.dress({static_cast<gui::Light>(light), pct});
      for (const gui::Stop& stop : stops) {
        const QString name =
            QStringLiteral("%1/%2-%3-%4.png").arg(folder, stop.name, lights.at(light)).arg(pct);
        if (!shoot_one(stop, name)) return 2;
      }
    }
  }
  fmt::print("{} pictures in {}\n", stops.size() * gui::kLights * 2, folder.toStdString());
  return 0;
}

// "1024x700" and the like, from WALKDOWN_SIZE.
QSize wanted_size() {
  const QStringList sides = qEnvironmentVariable("WALKDOWN_SIZE", "1024x700").split('x');
  return {sides.value(0).toInt(), sides.value(1).toInt()};
}

}  // namespace

int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  const QApplication application(argc, argv);
  std::setlocale(LC_NUMERIC, "C");
  gui::Translator translator;
  if (gui::load_language(translator, {qEnvironmentVariable("LANGUAGE", "en")}, WALKDOWN_QM)) {
    QApplication::installTranslator(&translator);
    QLocale::setDefault(QLocale(translator.language()));  // as the program's: the decimal comma
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
  window.resize(wanted_size());
  window.open(
      std::make_unique<gui::Session>(std::move(desk).value(), gui::crew_of((*demo)->places())),
      demo->get());
  window.resize(wanted_size());
  window.show();
  gui::read_the_field(window, **demo);
  window.findChild<QLabel*>("said")->hide();
  auto stops = gui::tour(window);
  for (auto& stop : gui::made_up_states(window, **demo)) stops.push_back(std::move(stop));
  return shoot(window, stops, QString::fromLocal8Bit(argv[1]));
}
