// SPDX-License-Identifier: Apache-2.0
// libserialport asks a port for its modem lines, which a pseudo-terminal has not. In this program
// ioctl() answers that question for pseudo-terminals, while a test asks for it, so that the
// hardware path runs without hardware. It also notes every request that would send something.
#include "tests/tester/modem_lines.h"

#include <sys/ioctl.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <sys/sysmacros.h>
#include <termios.h>
#include <unistd.h>

#include <atomic>
#include <cstdarg>

namespace walkdown::tester {
namespace {

std::atomic<bool> pretend{false};
std::atomic<int> sending{0};

bool is_pseudo_terminal(int fd) {
  struct stat status {};
  return ::fstat(fd, &status) == 0 && major(status.st_rdev) >= 136 && major(status.st_rdev) <= 143;
}

}  // namespace

ModemLines::ModemLines() { pretend = true; }
ModemLines::~ModemLines() { pretend = false; }
int sending_requests() { return sending; }

}  // namespace walkdown::tester

extern "C" int ioctl(int fd, unsigned long request, ...) noexcept {
  va_list list;
  va_start(list, request);
  void* argument = va_arg(list, void*);
  va_end(list);
  using namespace walkdown::tester;
  if (request == TIOCSTI || request == TCSBRK || request == TCSBRKP || request == TIOCSBRK ||
      request == TCXONC) {
    ++sending;
  }
  const bool modem =
      request == TIOCMGET || request == TIOCMSET || request == TIOCMBIS || request == TIOCMBIC;
  if (modem && pretend && is_pseudo_terminal(fd)) {
    if (request == TIOCMGET) *static_cast<int*>(argument) = 0;
    return 0;
  }
  return static_cast<int>(::syscall(SYS_ioctl, fd, request, argument));
}
