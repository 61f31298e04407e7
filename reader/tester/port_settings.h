// SPDX-License-Identifier: Apache-2.0
// The terminal settings of a port that is only listened to. They configure; they send nothing.
#pragma once

#include "reader/tester/profile.h"

namespace walkdown::tester {

// Raw, no echo, no flow control, no hang-up on close, modem lines ignored; the speed is left alone.
// Returns 0 or errno.
[[nodiscard]] int make_silent(int fd);

// Speed, bits, parity and stop bits by termios. Returns 0 or errno; EINVAL for a speed that termios
// has no name for.
[[nodiscard]] int apply(int fd, const PortSettings& settings);

// True where the terminal is set as asked (a driver may take another speed and say nothing).
[[nodiscard]] bool took(int fd, const PortSettings& settings);

}  // namespace walkdown::tester
