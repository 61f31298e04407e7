// SPDX-License-Identifier: Apache-2.0
// Tester lines from a file or from standard input, through the same framer as a port's.
#pragma once

#include <cstdint>
#include <string>

#include "reader/result.h"
#include "reader/tester/framer.h"

namespace walkdown::tester {

// Reads to the end in constant memory and hands each line on; "-" is standard input. The value is
// the number of lines, blank ones included. Error (io): not there, no permission, a directory.
[[nodiscard]] Result<std::uint64_t> read_lines(const std::string& path, const Framer::Sink& sink);

}  // namespace walkdown::tester
