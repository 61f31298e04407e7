// SPDX-License-Identifier: Apache-2.0
#include "checklist/desk/bell.h"

#include <utility>

namespace walkdown::desk {

Bell::Bell() : thread_([this] { run(); }) {}

Bell::~Bell() {
  {
    const std::lock_guard lock(mutex_);
    stop_ = true;
  }
  wake_.notify_one();
  thread_.join();
}

void Bell::written(std::uint64_t n) {
  {
    const std::lock_guard lock(mutex_);
    written_ = n + 1;
  }
  wake_.notify_one();
}

void Bell::listen(Ring ring) {
  const std::lock_guard none_runs(ringing_);
  const std::lock_guard lock(mutex_);
  ring_ = std::move(ring);
  told_ = written_;
}

void Bell::run() {
  while (true) {
    {
      std::unique_lock lock(mutex_);
      wake_.wait(lock, [this] { return stop_ || written_ > told_; });
      if (stop_) return;
    }
    const std::lock_guard one_at_a_time(ringing_);
    std::unique_lock lock(mutex_);
    const std::uint64_t first = std::exchange(told_, written_);
    const std::uint64_t end = written_;
    const Ring ring = ring_;
    lock.unlock();
    if (ring && end > first) ring(first, end);
  }
}

}  // namespace walkdown::desk
