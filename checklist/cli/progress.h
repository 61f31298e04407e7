// SPDX-License-Identifier: Apache-2.0
// How far a long look at a file has come: on standard error, in place, where that is a terminal and
// the work takes more than a second.
#pragma once

#include <chrono>
#include <cstdint>
#include <string>

namespace walkdown::cli {

class Progress {
 public:
  // "checked 43 % of day.record"
  Progress(std::string verb, const std::string& path);
  Progress(const Progress&) = delete;
  Progress& operator=(const Progress&) = delete;
  Progress(Progress&&) = delete;
  Progress& operator=(Progress&&) = delete;
  ~Progress();  // wipes the line

  void at(std::uint64_t bytes);

 private:
  using Clock = std::chrono::steady_clock;
  std::string verb_, name_;
  std::uint64_t size_ = 0;  // 0: nothing is shown
  Clock::time_point next_;
  bool shown_ = false;
};

}  // namespace walkdown::cli
