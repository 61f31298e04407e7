// SPDX-License-Identifier: Apache-2.0
// gui-soak [SECONDS]: the whole window over a field of 24,000 pins while a tester sends 4,000 lines
// a second through a pseudo-terminal; the field is dragged about, and every view is gone to. Prints
// what DESIGN and the window's issue ask for: first paint of the field, memory, late frames, and
// whether every line stands in the record. Exit status 1 where one is missed.
#include <fmt/format.h>
#include <sys/wait.h>
#include <unistd.h>

#include <QScreen>
#include <QTemporaryDir>
#include <QTest>
#include <algorithm>
#include <array>
#include <clocale>
#include <csignal>
#include <cstdlib>
#include <fstream>

#include "checklist/desk/copy.h"
#include "checklist/record/clock.h"
#include "gui/app/window.h"
#include "reader/trainer/pty.h"
#include "reader/trainer/sweep.h"
#include "tests/gui/big_show.h"
#include "tests/gui/frame_watch.h"

namespace {

using namespace walkdown;

constexpr int kPositions = 25;
constexpr int kModules = 20;
constexpr double kLinesPerS = 4000;
constexpr double kFrame_ms = 50;
constexpr int kField = 2;  // the view's place

// The tester is a program of its own, as a real one would be: its memory and time are not the
// window's. It writes its port's path, and sends once it is told how many seconds.
struct TesterProcess {
  pid_t pid = -1;
  int in = -1;   // how many seconds
  int out = -1;  // the port's path
};

[[noreturn]] void be_tester(int in, int out) {
  auto field = gui::big_field(gui::big_show(kPositions, kModules), 200);
  auto tester = trainer::TesterPty::open(kLinesPerS);
  if (!tester) _exit(2);
  trainer::SweepForm form;
  std::vector<std::string> first = trainer::sweep(field, field.pins(), form);
  const std::string path = (*tester)->path() + '\n';
  if (write(out, path.data(), path.size()) < 0) _exit(2);
  int seconds = 0;
  if (read(in, &seconds, sizeof seconds) != sizeof seconds) _exit(2);
  auto left = static_cast<std::size_t>(seconds * kLinesPerS);
  while (left > 0) {
    first.resize(std::min(left, first.size()));
    left -= first.size();
    (*tester)->send(std::move(first));
    if (left > 0) first = trainer::sweep(field, field.pins(), form);
  }
  static_cast<void>((*tester)->wait_until_read(std::chrono::seconds(seconds + 60)));
  _exit(0);
}

TesterProcess start_tester() {
  std::array<int, 2> in{};
  std::array<int, 2> out{};
  if (pipe(in.data()) != 0 || pipe(out.data()) != 0) return {};
  const pid_t pid = fork();
  if (pid == 0) be_tester(in[0], out[1]);
  close(in[0]);
  close(out[1]);
  return {pid, in[1], out[0]};
}

std::string line_from(int from) {
  std::string line;
  char each = 0;
  while (read(from, &each, 1) == 1 && each != '\n') line += each;
  return line;
}

double rss_mb(const char* name) {
  std::ifstream status("/proc/self/status");
  for (std::string word; status >> word;) {
    double kb = 0;
    if (word == name && status >> kb) return kb / 1024;
  }
  return 0;
}

double timed_ms(const std::function<void()>& what) {
  QElapsedTimer timer;
  timer.start();
  what();
  return static_cast<double>(timer.nsecsElapsed()) * 1e-6;
}

void print_frames(const char* name, std::vector<double> gaps) {
  std::sort(gaps.begin(), gaps.end());
  const auto late =
      std::count_if(gaps.begin(), gaps.end(), [](double ms) { return ms > kFrame_ms; });
  const auto at = [&](double share) {
    return gaps[static_cast<std::size_t>(share * static_cast<double>(gaps.size() - 1))];
  };
  fmt::print("{}: {}, median {:.1f} ms, 99 % {:.1f} ms, longest {:.1f} ms; {} over {} ms\n", name,
             gaps.size(), at(0.5), at(0.99), gaps.back(), late, kFrame_ms);
}

void print_longest(const gui::WatchedApplication& application) {
  fmt::print("longest events of the window's thread ({} in all):\n", application.events());
  for (const gui::Kept& each : application.longest()) {
    fmt::print("  {:6.1f} ms, {:6.1f} ms of it computing, {:6.1f} ms without a processor: {}\n",
               each.wall_ms, each.cpu_ms, each.queue_ms, each.what);
  }
}

// Drags the field by keys, frame by frame, and goes to another view every few seconds.
class Hand {
 public:
  explicit Hand(gui::Window& window) : window_(window) {}

  void beat() {
    ++beats_;
    if (beats_ % 300 == 0) {
      view_ = (view_ + 1) % (2 * window_.views()->count());
      window_.go(view_ % 2 == 0 ? kField : view_ / 2);
    }
    if (view_ % 2 != 0) return;
    gui::FieldCanvas& canvas = window_.views()->field().canvas();
    if (beats_ % 50 == 0) canvas.zoom(beats_ % 100 == 0 ? 1.9 : 1 / 1.9, canvas.rect().center());
    const int key = beats_ % 40 < 20 ? Qt::Key_Left : Qt::Key_Right;
    QTest::keyClick(&canvas, static_cast<Qt::Key>(key), Qt::ShiftModifier);
  }

 private:
  gui::Window& window_;
  int beats_ = 0;
  int view_ = 0;
};

int soak(gui::WatchedApplication& application, const TesterProcess& tester, int seconds) {
  const std::string port = line_from(tester.out);
  const QTemporaryDir folder;
  const std::string base = folder.path().toStdString();
  const record::SystemClock clock;
  auto desk = gui::open_record(base + "/soak.record", gui::big_show(kPositions, kModules),
                               {base + "/station.key", base + "/crew"}, clock);
  if (!desk) return fmt::print("{}\n", desk.error().sentence()), 2;
  gui::Window window;
  window.resize(1920, 1080);
  window.show();
  const double open = timed_ms([&] {
    window.open(
        std::make_unique<gui::Session>(std::move(desk).value(), gui::crew_of({{}, base + "/crew"})),
        nullptr);
  });
  gui::Session& session = *window.session();
  static_cast<void>(QTest::qWaitFor([&] { return session.now() != nullptr; }, 20'000));
  QTest::qWait(500);
  const double first_paint = timed_ms([&] {
    window.go(kField);
    window.views()->field().canvas().repaint();
  });
  const std::size_t pins = session.prepared().planned.plan.pins.size();
  fmt::print(
      "{} pins: views made {:.0f} ms, first paint of the field {:.1f} ms, memory {:.0f} MB\n", pins,
      open, first_paint, rss_mb("VmRSS:"));
  window.views()->field().show_pin({7, 2, 5});  // its page follows every reading of it
  Hand hand(window);
  gui::Heart heart([&] { hand.beat(); });
  session.listener().listen(port);
  QTest::qWait(500);
  application.begin();
  heart.begin();
  if (write(tester.in, &seconds, sizeof seconds) < 0) return 2;
  const auto sent = static_cast<std::uint64_t>(seconds * kLinesPerS);
  QElapsedTimer took;
  took.start();
  static_cast<void>(QTest::qWaitFor([&] { return session.now()->counts.readings >= sent; },
                                    seconds * 1000 + 60'000));
  const auto& counts = session.now()->counts;
  fmt::print("{} lines sent, {} readings and {} rejected lines shown after {:.1f} s\n", sent,
             counts.readings, counts.rejected, static_cast<double>(took.elapsed()) / 1000);
  print_frames("frames", heart.gaps_ms());
  print_frames("frames, less the time other programs had the processors", heart.own_ms());
  print_longest(application);
  fmt::print("memory {:.0f} MB, at most {:.0f} MB\n", rss_mb("VmRSS:"), rss_mb("VmHWM:"));
  const auto copy = desk::Copy::open(session.path());
  const bool holds = copy && copy->report().holds;
  const std::uint64_t kept = copy ? copy->folded().counts().readings : 0;
  fmt::print("the record {}; {} of {} readings stand in it\n", holds ? "holds" : "DOES NOT HOLD",
             kept, sent);
  return holds && kept == sent ? 0 : 1;
}

}  // namespace

int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  const int seconds = argc > 1 ? std::max(1, std::atoi(argv[1])) : 60;
  const TesterProcess tester = start_tester();
  gui::WatchedApplication application(argc, argv);
  std::setlocale(LC_NUMERIC, "C");
  const int status = soak(application, tester, seconds);
  kill(tester.pid, SIGTERM);
  waitpid(tester.pid, nullptr, 0);
  return status;
}
