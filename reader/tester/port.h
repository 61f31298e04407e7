// SPDX-License-Identifier: Apache-2.0
// A serial port that is only ever listened to.
//
// It is opened for reading alone, set raw and silent before anything else, so that the kernel does
// not echo what the tester sends back at it, and locked twice (flock, and TIOCEXCL, which alone
// does not stop root). Flow control is off: XON and XOFF would be bytes towards the tester. No
// function here writes, sends a break, or suspends the line. One thing is the kernel's own: opening
// a hardware port raises its DTR and RTS lines; a tester that must not see that needs a cable
// without them.
//
// Hardware is set up by libserialport. A pseudo-terminal, and any other terminal without modem
// lines, is set up directly: libserialport does not open these.
#pragma once

#include <cstddef>
#include <memory>
#include <span>
#include <string>

#include "reader/result.h"
#include "reader/tester/descriptor.h"
#include "reader/tester/profile.h"

struct sp_port;

namespace walkdown::tester {

class Port {
 public:
  // Error: io (not there, no permission: names the group that may; not a terminal; the settings do
  // not take), busy (another program has it). `path` may be a link, as those in /dev/serial/by-id.
  [[nodiscard]] static Result<Port> open(const std::string& path, const PortSettings& settings);

  enum class State : std::uint8_t { bytes, empty, gone };
  struct Got {
    State state = State::empty;
    std::size_t bytes = 0;
  };
  // Never blocks. `gone` is an unplugged device or a closed pseudo-terminal: close and open again.
  [[nodiscard]] Got read(std::span<char> into);

  // To poll() on. POLLHUP, POLLERR and POLLNVAL mean gone.
  [[nodiscard]] int fd() const;
  [[nodiscard]] bool by_libserialport() const { return serial_ != nullptr; }

  // For tests: the hardware path, on the path as given. open() chooses it by itself.
  [[nodiscard]] static Result<Port> open_hardware(const std::string& path,
                                                  const PortSettings& settings);

 private:
  struct Close {
    void operator()(sp_port* port) const;
  };
  Port() = default;
  static Result<Port> set_up_hardware(Descriptor silent, const std::string& path,
                                      const PortSettings& settings);

  // Declared first, closed last: it holds the lock.
  Descriptor own_;
  std::unique_ptr<sp_port, Close> serial_;
  int serial_fd_ = -1;
};

}  // namespace walkdown::tester
