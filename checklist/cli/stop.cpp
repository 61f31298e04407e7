// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/stop.h"

#include <array>
#include <atomic>
#include <csignal>

namespace walkdown::cli {
namespace {

std::atomic<bool> asked{false};  // NOLINT: a signal has no other way to reach the program
static_assert(std::atomic<bool>::is_always_lock_free);

extern "C" void note_stop(int /*number*/) { asked.store(true); }

}  // namespace

void catch_stop() {
  struct sigaction action {};
  action.sa_handler = note_stop;
  sigemptyset(&action.sa_mask);
  for (const int number : std::array{SIGINT, SIGTERM, SIGHUP}) {
    sigaction(number, &action, nullptr);
  }
}

bool stop_asked() { return asked.load(); }

}  // namespace walkdown::cli
