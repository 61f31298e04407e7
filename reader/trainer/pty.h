// SPDX-License-Identifier: Apache-2.0
// A tester on a pseudo-terminal: it is the instrument, and writes to its own side alone. Whoever
// listens opens path(), as a port.
//
// One thread of its own sends the lines that were queued. All functions may be called from any
// thread.
#pragma once

#include <chrono>
#include <memory>
#include <string>
#include <vector>

#include "reader/result.h"

namespace walkdown::trainer {

class TesterPty {
 public:
  // `lines_per_s`: 0 sends as fast as the reader takes them.
  [[nodiscard]] static Result<std::unique_ptr<TesterPty>> open(double lines_per_s = 0);

  // Waits up to two seconds for its reader, because what is unread at a hang-up is lost.
  ~TesterPty();
  TesterPty(const TesterPty&) = delete;
  TesterPty& operator=(const TesterPty&) = delete;

  // Stays the same over unplug() and replug().
  [[nodiscard]] const std::string& path() const;

  // Queues lines, each without its line end; returns at once. While unplugged they are kept.
  void send(std::vector<std::string> lines);
  void set_rate(double lines_per_s);
  [[nodiscard]] std::size_t queued() const;  // lines not yet sent

  // Waits until all is sent and the reader has taken every byte. False when the time is over.
  [[nodiscard]] bool wait_until_read(std::chrono::milliseconds at_most);

  // The cable out (a hang-up for the reader, at once) and in again.
  void unplug();
  [[nodiscard]] Done replug();

 private:
  struct State;
  explicit TesterPty(std::unique_ptr<State> state);
  std::unique_ptr<State> state_;
};

}  // namespace walkdown::trainer
