// SPDX-License-Identifier: Apache-2.0
#include "reader/tester/port.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <libserialport.h>
#include <sys/file.h>
#include <sys/ioctl.h>
#include <sys/stat.h>
#include <sys/sysmacros.h>

#include <array>
#include <cerrno>
#include <climits>
#include <cstdlib>
#include <system_error>

#include "reader/tester/port_errors.h"
#include "reader/tester/port_settings.h"

namespace walkdown::tester {
namespace {

bool is_pseudo_terminal(int fd) {
  struct stat status {};
  if (::fstat(fd, &status) != 0) return false;
  return major(status.st_rdev) >= 136 && major(status.st_rdev) <= 143;
}

std::string resolved(const std::string& path) {
  std::array<char, PATH_MAX> full{};
  return ::realpath(path.c_str(), full.data()) != nullptr ? std::string(full.data()) : path;
}

// Opened for reading, locked, raw and silent, in this order and with nothing between.
Result<Descriptor> open_silent(const std::string& path) {
  struct stat status {};
  if (::stat(path.c_str(), &status) != 0) return cannot_open(path, errno);
  if (!S_ISCHR(status.st_mode)) return not_a_port(path);
  Descriptor fd(::open(path.c_str(), O_RDONLY | O_NOCTTY | O_NONBLOCK | O_CLOEXEC));
  if (!fd) return cannot_open(path, errno);
  if (::flock(fd.get(), LOCK_EX | LOCK_NB) != 0) return cannot_open(path, EBUSY);
  if (const int fault = make_silent(fd.get()); fault != 0) {
    return fault == ENOTTY ? not_a_port(path) : cannot_open(path, fault);
  }
  return fd;
}

sp_parity parity_of(Parity parity) {
  switch (parity) {
    case Parity::even:
      return SP_PARITY_EVEN;
    case Parity::odd:
      return SP_PARITY_ODD;
    case Parity::mark:
      return SP_PARITY_MARK;
    case Parity::space:
      return SP_PARITY_SPACE;
    case Parity::none:
      break;
  }
  return SP_PARITY_NONE;
}

// libserialport sets the speed, also those that termios has no name for.
bool set_up(sp_port* port, const PortSettings& settings) {
  return sp_set_baudrate(port, settings.baud) == SP_OK &&
         sp_set_bits(port, settings.bits) == SP_OK &&
         sp_set_parity(port, parity_of(settings.parity)) == SP_OK &&
         sp_set_stopbits(port, settings.stop) == SP_OK &&
         sp_set_flowcontrol(port, SP_FLOWCONTROL_NONE) == SP_OK;
}

}  // namespace

void Port::Close::operator()(sp_port* port) const {
  sp_close(port);
  sp_free_port(port);
}

Result<Port> Port::open(const std::string& path, const PortSettings& settings) {
  Result<Descriptor> fd = open_silent(path);
  if (!fd) return fd.error();
  if (!is_pseudo_terminal(fd->get())) {
    int modem = 0;
    const bool has_modem_lines = ::ioctl(fd->get(), TIOCMGET, &modem) == 0 || errno != ENOTTY;
    if (has_modem_lines) return set_up_hardware(*std::move(fd), resolved(path), settings);
  }
  if (const int fault = apply(fd->get(), settings); fault != 0) return refuses(path, settings);
  if (!took(fd->get(), settings)) return refuses(path, settings);
  if (::ioctl(fd->get(), TIOCEXCL) != 0) return cannot_open(path, errno);
  Port port;
  port.own_ = *std::move(fd);
  return port;
}

Result<Port> Port::open_hardware(const std::string& path, const PortSettings& settings) {
  Result<Descriptor> fd = open_silent(path);
  return fd ? set_up_hardware(*std::move(fd), path, settings) : Result<Port>(fd.error());
}

// Our own descriptor came first: between libserialport's open and its settings the line discipline
// would echo. It stays open, because it holds the lock.
Result<Port> Port::set_up_hardware(Descriptor silent, const std::string& path,
                                   const PortSettings& settings) {
  sp_port* found = nullptr;
  if (sp_get_port_by_name(path.c_str(), &found) != SP_OK) return cannot_open(path, ENODEV);
  Port port;
  port.own_ = std::move(silent);
  port.serial_.reset(found);
  if (sp_open(found, SP_MODE_READ) != SP_OK) {
    const int why = sp_last_error_code();
    return cannot_open(path, why != 0 ? why : ENODEV);
  }
  if (!set_up(found, settings)) return refuses(path, settings);
  if (sp_get_port_handle(found, &port.serial_fd_) != SP_OK) return cannot_open(path, EBADF);
  if (::fcntl(port.serial_fd_, F_SETFD, FD_CLOEXEC) != 0) return cannot_open(path, errno);
  if (const int fault = make_silent(port.serial_fd_); fault != 0) return cannot_open(path, fault);
  if (!took(port.serial_fd_, settings)) return refuses(path, settings);
  if (::ioctl(port.serial_fd_, TIOCEXCL) != 0) return cannot_open(path, errno);
  return port;
}

int Port::fd() const { return serial_ ? serial_fd_ : own_.get(); }

Port::Got Port::read(std::span<char> into) {
  const ssize_t got = ::read(fd(), into.data(), into.size());
  if (got > 0) return {State::bytes, static_cast<std::size_t>(got)};
  if (got < 0 && (errno == EAGAIN || errno == EINTR)) return {State::empty, 0};
  return {State::gone, 0};
}

}  // namespace walkdown::tester
