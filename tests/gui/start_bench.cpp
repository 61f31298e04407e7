// SPDX-License-Identifier: Apache-2.0
// start_bench: from the start of a process to its first painted window, offscreen, without a
// record. Starts itself over and over, so that loading the libraries counts; prints the median.
#include <fmt/format.h>
#include <sys/wait.h>
#include <unistd.h>

#include <QApplication>
#include <QLocale>
#include <algorithm>
#include <chrono>
#include <clocale>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <vector>

#include "checklist/record/clock.h"
#include "gui/app/window.h"
#include "gui/look/language.h"

namespace {

using namespace walkdown;

constexpr int kTimes = 15;

std::int64_t now_us() {
  return std::chrono::duration_cast<std::chrono::microseconds>(
             std::chrono::steady_clock::now().time_since_epoch())
      .count();
}

// Ends the program with the window's first paint, and says when that was.
class FirstPaint : public QObject {
 public:
  using QObject::QObject;
  bool eventFilter(QObject* watched, QEvent* event) override {
    const bool over = QObject::eventFilter(watched, event);
    if (event->type() == QEvent::UpdateRequest) {
      QMetaObject::invokeMethod(
          this,
          [] {
            fmt::print("{}\n", now_us());
            QApplication::quit();
          },
          Qt::QueuedConnection);
    }
    return over;
  }
};

// As the program's main does it.
int be_window(int argc, char** argv) {
  const QApplication application(argc, argv);
  gui::Translator translator;
  if (gui::load_language(translator, {QStringLiteral("de")}, WALKDOWN_QM)) {
    QApplication::installTranslator(&translator);
  }
  std::setlocale(LC_NUMERIC, "C");
  const record::SystemClock clock;
  gui::Window window;
  window.start(clock);
  FirstPaint paint;
  window.installEventFilter(&paint);
  window.show();
  return QApplication::exec();
}

double start_ms(const char* self) {
  int out[2] = {};
  if (pipe(out) != 0) return -1;
  const std::int64_t begun = now_us();
  const pid_t pid = fork();
  if (pid == 0) {
    dup2(out[1], STDOUT_FILENO);
    execl(self, self, "--window", nullptr);
    _exit(127);
  }
  close(out[1]);
  std::string text;
  char each = 0;
  while (read(out[0], &each, 1) == 1) text += each;
  close(out[0]);
  waitpid(pid, nullptr, 0);
  return text.empty() ? -1
                      : static_cast<double>(std::strtoll(text.c_str(), nullptr, 10) - begun) / 1e3;
}

}  // namespace

int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  if (argc > 1 && std::string(argv[1]) == "--window") return be_window(argc, argv);
  std::vector<double> times;
  for (int i = 0; i < kTimes; ++i) times.push_back(start_ms("/proc/self/exe"));
  std::sort(times.begin(), times.end());
  fmt::print("start to first window, {} times: median {:.0f} ms, longest {:.0f} ms\n", kTimes,
             times[kTimes / 2], times.back());
  return times.front() < 0 ? 2 : 0;
}
