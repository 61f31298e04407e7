// SPDX-License-Identifier: Apache-2.0
#include "tests/gui/frame_watch.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <unistd.h>

#include <QMetaEnum>
#include <algorithm>
#include <array>
#include <chrono>
#include <cstdlib>
#include <ctime>
#include <utility>

namespace walkdown::gui {
namespace {

constexpr std::size_t kKept = 10;
constexpr int kFrame_ms = 16;

double cpu_now_ms() {
  timespec now{};
  clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
  return static_cast<double>(now.tv_sec) * 1e3 + static_cast<double>(now.tv_nsec) * 1e-6;
}

}  // namespace

double queued_ms() {
  static const int file = open("/proc/thread-self/schedstat", O_RDONLY);
  std::array<char, 96> text{};
  if (pread(file, text.data(), text.size() - 1, 0) <= 0) return 0;
  char* rest = nullptr;
  std::strtoull(text.data(), &rest, 10);  // on a processor
  return static_cast<double>(std::strtoull(rest, nullptr, 10)) * 1e-6;
}

bool WatchedApplication::notify(QObject* receiver, QEvent* event) {
  if (!watching_ || depth_ > 0) return QApplication::notify(receiver, event);
  // Both may be gone afterwards.
  const char* name = receiver->metaObject()->className();
  const int type = event->type();
  const auto begun = std::chrono::steady_clock::now();
  const double cpu = cpu_now_ms();
  const double queue = queued_ms();
  ++depth_;
  const bool done = QApplication::notify(receiver, event);
  --depth_;
  const std::chrono::duration<double, std::milli> wall = std::chrono::steady_clock::now() - begun;
  ++events_;
  if (longest_.size() < kKept || wall.count() > longest_.back().wall_ms) {
    const char* word = QMetaEnum::fromType<QEvent::Type>().valueToKey(type);
    keep({wall.count(), cpu_now_ms() - cpu, queued_ms() - queue,
          fmt::format("{} {}", name, word == nullptr ? "?" : word)});
  }
  return done;
}

void WatchedApplication::keep(Kept kept) {
  const auto place = std::find_if(longest_.begin(), longest_.end(),
                                  [&](const Kept& other) { return other.wall_ms < kept.wall_ms; });
  longest_.insert(place, std::move(kept));
  if (longest_.size() > kKept) longest_.pop_back();
}

void WatchedApplication::begin() {
  watching_ = true;
  longest_.clear();
  events_ = 0;
}

Heart::Heart(std::function<void()> beat) : beat_(std::move(beat)) {
  timer_.setTimerType(Qt::PreciseTimer);
  connect(&timer_, &QTimer::timeout, this, [this] {
    gaps_ms_.push_back(static_cast<double>(since_.nsecsElapsed()) * 1e-6);
    since_.restart();
    const double queued = queued_ms();
    own_ms_.push_back(gaps_ms_.back() - (queued - queued_));
    queued_ = queued;
    beat_();
  });
}

void Heart::begin() {
  since_.start();
  queued_ = queued_ms();
  timer_.start(kFrame_ms);
}

}  // namespace walkdown::gui
