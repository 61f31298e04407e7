// SPDX-License-Identifier: Apache-2.0
// The program walkdown-gui.
#include <fmt/format.h>

#include <CLI/CLI.hpp>
#include <QApplication>
#include <QLocale>
#include <QScreen>
#include <QThreadPool>
#include <clocale>
#include <cstdio>
#include <optional>
#include <string>

#include "checklist/record/clock.h"
#include "gui/app/demo.h"
#include "gui/app/opening.h"
#include "gui/app/window.h"
#include "gui/look/language.h"
#include "gui/report/printable.h"

namespace {

using namespace walkdown;

struct Arguments {
  std::string record;
  bool demo = false;
  std::string folder;  // of the demo
  std::string report;  // a record to make a report of
  std::string pdf;
};

int not_done(const Error& error) {
  fmt::print(stderr, "{}\n", error.sentence());
  return 2;
}

int run(const Arguments& arguments) {
  const record::SystemClock clock;
  gui::Window window;
  window.start(clock);
  if (arguments.demo) {
    window.open_demo_later(arguments.folder);
  } else if (!arguments.record.empty()) {
    window.open_later(arguments.record, std::nullopt);
  }
  // On a small screen it takes all of it: beyond the edge would be what stands at the bottom.
  const QSize room = window.screen()->availableSize();
  if (window.width() < room.width() && window.height() < room.height()) {
    window.show();
  } else {
    window.showMaximized();
  }
  const int status = QApplication::exec();
  QThreadPool::globalInstance()->waitForDone();  // what is being opened looks at the clock
  return status;
}

}  // namespace

int main(int argc, char** argv) {  // NOLINT: an exception that gets here is a defect
  CLI::App app{"walkdown-gui: the window over a record of the show day", "walkdown-gui"};
  Arguments arguments;
  app.add_option("RECORD", arguments.record, "The record to open and go on with");
  app.add_flag("--demo", arguments.demo, "The demo show, live, with a simulated tester");
  app.add_option("--dir", arguments.folder, "Where the demo's files go");
  auto* report = app.add_option("--report", arguments.report,
                                "Make the report of this record as a PDF, and end");
  auto* pdf = app.add_option("--pdf", arguments.pdf, "Where that PDF goes");
  report->needs(pdf);
  pdf->needs(report);
  app.footer(
      "Examples: walkdown-gui --demo\n"
      "          walkdown-gui --report today.record --pdf today.pdf\n"
      "Without a display: QT_QPA_PLATFORM=offscreen");
  CLI11_PARSE(app, argc, argv);
  QApplication::setOrganizationName(QStringLiteral("walkdown"));
  QApplication::setApplicationName(QStringLiteral("walkdown-gui"));
  const QApplication application(argc, argv);
  gui::Translator translator;
  if (gui::load_language(translator, QLocale().uiLanguages(), QStringLiteral(":/i18n"))) {
    QApplication::installTranslator(&translator);
  }
  QTranslator of_qt;
  if (gui::load_language_of_qt(of_qt, translator.language())) {
    QApplication::installTranslator(&of_qt);
  }
  // QApplication takes the person's locale for everything; numbers in files stay as in C.
  (void)std::setlocale(LC_NUMERIC, "C");
  if (!arguments.report.empty()) {
    const Done made =
        gui::write_report_pdf(arguments.report, QString::fromStdString(arguments.pdf));
    return made ? 0 : not_done(made.error());
  }
  return run(arguments);
}
