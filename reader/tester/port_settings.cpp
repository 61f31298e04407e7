// SPDX-License-Identifier: Apache-2.0
#include "reader/tester/port_settings.h"

#include <termios.h>

#include <array>
#include <cerrno>
#include <utility>

namespace walkdown::tester {
namespace {

constexpr std::array<std::pair<int, speed_t>, 30> kSpeeds{{
    {50, B50},           {75, B75},           {110, B110},         {134, B134},
    {150, B150},         {200, B200},         {300, B300},         {600, B600},
    {1200, B1200},       {1800, B1800},       {2400, B2400},       {4800, B4800},
    {9600, B9600},       {19200, B19200},     {38400, B38400},     {57600, B57600},
    {115200, B115200},   {230400, B230400},   {460800, B460800},   {500000, B500000},
    {576000, B576000},   {921600, B921600},   {1000000, B1000000}, {1152000, B1152000},
    {1500000, B1500000}, {2000000, B2000000}, {2500000, B2500000}, {3000000, B3000000},
    {3500000, B3500000}, {4000000, B4000000},
}};

// B0, which means hang up, where termios has no name for the speed.
speed_t speed_of(int baud) {
  for (const auto& [number, speed] : kSpeeds) {
    if (number == baud) return speed;
  }
  return B0;
}

constexpr tcflag_t kParityFlags = PARENB | PARODD | CMSPAR;

tcflag_t parity_flags(Parity parity) {
  switch (parity) {
    case Parity::even:
      return PARENB;
    case Parity::odd:
      return PARENB | PARODD;
    case Parity::mark:
      return PARENB | PARODD | CMSPAR;
    case Parity::space:
      return PARENB | CMSPAR;
    case Parity::none:
      break;
  }
  return 0;
}

tcflag_t size_flag(int bits) {
  constexpr std::array<tcflag_t, 4> kSizes{CS5, CS6, CS7, CS8};
  return kSizes.at(static_cast<std::size_t>(bits - 5));
}

}  // namespace

int make_silent(int fd) {
  termios now{};
  if (::tcgetattr(fd, &now) != 0) return errno;
  ::cfmakeraw(&now);
  now.c_lflag &= ~static_cast<tcflag_t>(ECHO | ECHOE | ECHOK | ECHONL | ICANON | ISIG | IEXTEN);
  now.c_iflag &= ~static_cast<tcflag_t>(IXON | IXOFF | IXANY | IGNBRK | BRKINT | PARMRK);
  // CRTSCTS stands in c_cflag only; libserialport 0.1.1 clears it in another word.
  now.c_cflag &= ~static_cast<tcflag_t>(CRTSCTS | HUPCL);
  now.c_cflag |= CLOCAL | CREAD;
  // With these two a read says EAGAIN for nothing yet, and 0 for gone.
  now.c_cc[VMIN] = 1;
  now.c_cc[VTIME] = 0;
  return ::tcsetattr(fd, TCSANOW, &now) == 0 ? 0 : errno;
}

int apply(int fd, const PortSettings& settings) {
  const speed_t speed = speed_of(settings.baud);
  if (speed == B0) return EINVAL;
  termios now{};
  if (::tcgetattr(fd, &now) != 0) return errno;
  now.c_cflag &= ~(CSIZE | CSTOPB | kParityFlags);
  now.c_cflag |= size_flag(settings.bits) | parity_flags(settings.parity);
  if (settings.stop == 2) now.c_cflag |= CSTOPB;
  // A byte with a parity error is then read as NUL, which the line parser refuses.
  if (settings.parity != Parity::none) now.c_iflag |= INPCK;
  if (::cfsetispeed(&now, speed) != 0 || ::cfsetospeed(&now, speed) != 0) return errno;
  return ::tcsetattr(fd, TCSANOW, &now) == 0 ? 0 : errno;
}

bool took(int fd, const PortSettings& settings) {
  termios now{};
  if (::tcgetattr(fd, &now) != 0) return false;
  const speed_t speed = speed_of(settings.baud);
  const bool frame = (now.c_cflag & CSIZE) == size_flag(settings.bits) &&
                     (now.c_cflag & kParityFlags) == parity_flags(settings.parity) &&
                     ((now.c_cflag & CSTOPB) != 0) == (settings.stop == 2);
  return frame && (speed == B0 || ::cfgetispeed(&now) == speed || ::cfgetospeed(&now) == speed);
}

}  // namespace walkdown::tester
