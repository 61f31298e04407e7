// SPDX-License-Identifier: Apache-2.0
// Tells a listener, from a thread of its own, that entries were written, so that a slow listener
// never holds up the writer. Internal to this folder.
#pragma once

#include <condition_variable>
#include <cstdint>
#include <functional>
#include <mutex>
#include <thread>

namespace walkdown::desk {

class Bell {
 public:
  // Entries first .. end - 1.
  using Ring = std::function<void(std::uint64_t first, std::uint64_t end)>;

  Bell();
  Bell(const Bell&) = delete;
  Bell& operator=(const Bell&) = delete;
  Bell(Bell&&) = delete;
  Bell& operator=(Bell&&) = delete;
  ~Bell();

  void written(std::uint64_t n);
  // Returns once the listener before is not running and will not be called again. Must not be
  // called by a listener.
  void listen(Ring ring);

 private:
  void run();

  std::mutex mutex_;
  std::mutex ringing_;  // held while a listener runs
  std::condition_variable wake_;
  Ring ring_;
  std::uint64_t told_ = 0;     // entries below were told
  std::uint64_t written_ = 0;  // entries below are written
  bool stop_ = false;
  std::thread thread_;
};

}  // namespace walkdown::desk
