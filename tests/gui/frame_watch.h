// SPDX-License-Identifier: Apache-2.0
// How long the window's thread is kept by single events, and how late its frames are.
#pragma once

#include <QApplication>
#include <QElapsedTimer>
#include <QTimer>
#include <functional>
#include <string>
#include <vector>

namespace walkdown::gui {

// One event that was handled, outermost only.
struct Kept {
  double wall_ms = 0;
  double cpu_ms = 0;    // of this thread
  double queue_ms = 0;  // ready to go on, while other programs had the processors
  std::string what;     // class of the receiver and type of the event
};

class WatchedApplication : public QApplication {
 public:
  using QApplication::QApplication;

  bool notify(QObject* receiver, QEvent* event) override;

  void begin();  // forgets what was before
  [[nodiscard]] const std::vector<Kept>& longest() const { return longest_; }
  [[nodiscard]] std::size_t events() const { return events_; }

 private:
  void keep(Kept kept);

  std::vector<Kept> longest_;  // the ten longest by wall time, the longest first
  std::size_t events_ = 0;
  int depth_ = 0;
  bool watching_ = false;
};

// How long this thread has been ready and had no processor, ever. Linux,
// /proc/thread-self/schedstat.
[[nodiscard]] double queued_ms();

// Beats at 60 a second in the window's thread and keeps how far apart the beats came.
class Heart : public QObject {
 public:
  explicit Heart(std::function<void()> beat);

  void begin();
  [[nodiscard]] const std::vector<double>& gaps_ms() const { return gaps_ms_; }
  // The same without the time that other programs had the processors.
  [[nodiscard]] const std::vector<double>& own_ms() const { return own_ms_; }

 private:
  std::function<void()> beat_;
  QTimer timer_;
  QElapsedTimer since_;
  double queued_ = 0;
  std::vector<double> gaps_ms_;
  std::vector<double> own_ms_;
};

}  // namespace walkdown::gui
