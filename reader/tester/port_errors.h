// SPDX-License-Identifier: Apache-2.0
// The sentences for a port that cannot be opened.
#pragma once

#include <string>

#include "reader/result.h"
#include "reader/tester/profile.h"

namespace walkdown::tester {

// From errno. For EACCES it names the group that may open the port, and how to join it.
[[nodiscard]] Error cannot_open(const std::string& path, int number);
[[nodiscard]] Error not_a_port(const std::string& path);
// The driver does not take these settings, or took others without a word.
[[nodiscard]] Error refuses(const std::string& path, const PortSettings& settings);

}  // namespace walkdown::tester
