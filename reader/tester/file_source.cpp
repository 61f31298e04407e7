// SPDX-License-Identifier: Apache-2.0
#include "reader/tester/file_source.h"

#include <fcntl.h>

#include <array>
#include <cerrno>
#include <system_error>

#include "reader/tester/descriptor.h"

namespace walkdown::tester {
namespace {

Error io_error(const std::string& path, int number) {
  return Error{Code::io, "cannot read the readings",
               path + ": " + std::generic_category().message(number),
               "name a text file of tester lines, or - for standard input"};
}

}  // namespace

Result<std::uint64_t> read_lines(const std::string& path, const Framer::Sink& sink) {
  const bool standard_input = path == "-";
  Descriptor opened;
  if (!standard_input) {
    opened = Descriptor(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NOCTTY));
    if (!opened) return io_error(path, errno);
  }
  const int fd = standard_input ? STDIN_FILENO : opened.get();
  Framer framer;
  std::array<char, 65536> buffer{};
  while (true) {
    const ssize_t got = ::read(fd, buffer.data(), buffer.size());
    if (got < 0 && errno == EINTR) continue;
    if (got < 0) return io_error(path, errno);
    if (got == 0) break;
    framer.feed({buffer.data(), static_cast<std::size_t>(got)}, sink);
  }
  framer.finish(Ending::end_of_file, sink);
  return framer.lines();
}

}  // namespace walkdown::tester
