// SPDX-License-Identifier: Apache-2.0
#include "reader/tester/port_errors.h"

#include <fmt/format.h>
#include <grp.h>
#include <sys/stat.h>

#include <array>
#include <cerrno>
#include <system_error>

namespace walkdown::tester {
namespace {

// The name of the group that owns the file; its number where it has no name; empty where unknown.
std::string group_of(const std::string& path) {
  struct stat status {};
  if (::stat(path.c_str(), &status) != 0) return {};
  std::array<char, 16384> room{};
  group entry{};
  group* found = nullptr;
  ::getgrgid_r(status.st_gid, &entry, room.data(), room.size(), &found);
  return found != nullptr ? found->gr_name : std::to_string(status.st_gid);
}

Error no_permission(const std::string& path) {
  const std::string group = group_of(path);
  if (group.empty()) {
    return {Code::io, "cannot open the port", path + ": no permission",
            "ask who runs this machine"};
  }
  return {Code::io, "cannot open the port",
          fmt::format("{} belongs to the group {}, and you are not in it", path, group),
          fmt::format("run 'sudo usermod -aG {} \"$USER\"', log out and in again", group)};
}

}  // namespace

Error cannot_open(const std::string& path, int number) {
  if (number == EACCES || number == EPERM) return no_permission(path);
  if (number == EBUSY || number == EWOULDBLOCK) {
    return {Code::busy, "cannot open the port", path + " is in use by another program",
            "close that program, then try again"};
  }
  if (number == ENOENT || number == ENODEV || number == ENXIO) {
    return {Code::io, "cannot open the port", path + " is not there",
            "plug the tester in, and see 'ls /dev/serial/by-id' for its name"};
  }
  return {Code::io, "cannot open the port", path + ": " + std::generic_category().message(number),
          ""};
}

Error not_a_port(const std::string& path) {
  return {Code::io, "cannot open the port", path + " is not a serial port",
          "name a device such as those in /dev/serial/by-id; a file is read by 'walkdown match'"};
}

Error refuses(const std::string& path, const PortSettings& settings) {
  constexpr std::array<char, 5> kLetters{'N', 'E', 'O', 'M', 'S'};
  return {Code::io, "cannot set the port up",
          fmt::format("{} does not take {} baud {}{}{}", path, settings.baud, settings.bits,
                      kLetters.at(static_cast<std::size_t>(settings.parity)), settings.stop),
          "see the tester's sheet for its settings, and correct the profile"};
}

}  // namespace walkdown::tester
