// SPDX-License-Identifier: Apache-2.0
#include "reader/tester/ports.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <system_error>
#include <tuple>

namespace walkdown::tester {
namespace {

namespace fs = std::filesystem;

std::string first_line(const fs::path& file) {
  std::ifstream in(file);
  std::string line;
  std::getline(in, line);
  return line.substr(0, 200);
}

// A serial driver makes a node for each UART it could have; type 0 means that there is none.
bool has_hardware(const fs::path& tty) {
  std::error_code error;
  return fs::exists(tty / "device", error) && first_line(tty / "type") != "0";
}

// The USB device is a few folders above its terminal.
std::string product(const fs::path& tty) {
  std::error_code error;
  fs::path folder = fs::canonical(tty / "device", error);
  for (int up = 0; up < 5 && !error && folder.has_relative_path(); ++up) {
    if (fs::exists(folder / "product", error)) return first_line(folder / "product");
    folder = folder.parent_path();
  }
  return {};
}

std::vector<fs::path> entries(const std::string& folder) {
  std::vector<fs::path> found;
  std::error_code error;
  for (fs::directory_iterator it(folder, error), end; !error && it != end; it.increment(error)) {
    found.push_back(it->path());
  }
  std::sort(found.begin(), found.end());
  return found;
}

}  // namespace

std::string stable_name(const std::string& path, const std::string& by_id) {
  std::error_code error;
  const fs::path device = fs::canonical(path, error);
  if (error) return {};
  for (const fs::path& link : entries(by_id)) {
    if (fs::canonical(link, error) == device && !error) return link.string();
  }
  return {};
}

std::vector<PortName> list_ports(const PortRoots& roots) {
  std::vector<PortName> ports;
  for (const fs::path& tty : entries(roots.tty_class)) {
    if (!has_hardware(tty)) continue;
    const std::string path = roots.dev + "/" + tty.filename().string();
    ports.push_back({path, stable_name(path, roots.by_id), product(tty)});
  }
  std::sort(ports.begin(), ports.end(), [](const PortName& a, const PortName& b) {
    return std::tuple(a.by_id.empty(), a.path) < std::tuple(b.by_id.empty(), b.path);
  });
  return ports;
}

}  // namespace walkdown::tester
