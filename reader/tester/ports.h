// SPDX-License-Identifier: Apache-2.0
// Which ports there are, found by name alone: none is opened, so no tester sees its lines move.
#pragma once

#include <string>
#include <vector>

namespace walkdown::tester {

struct PortName {
  std::string path;    // "/dev/ttyUSB0"
  std::string by_id;   // "/dev/serial/by-id/...", empty where there is none; prefer it: it stays
  std::string device;  // what the USB device calls itself, empty where unknown
};

struct PortRoots {
  std::string dev = "/dev";
  std::string by_id = "/dev/serial/by-id";
  std::string tty_class = "/sys/class/tty";
};

// Sorted, those with a stable name first. Ports without hardware behind them are left out.
[[nodiscard]] std::vector<PortName> list_ports(const PortRoots& roots = {});

// The name in the folder `by_id` that leads to the same device; empty where there is none.
[[nodiscard]] std::string stable_name(const std::string& path, const std::string& by_id);

}  // namespace walkdown::tester
