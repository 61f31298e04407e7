// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/line_source.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <system_error>

namespace walkdown::record {

namespace {

constexpr std::size_t kBlock = std::size_t{1} << 18U;

Error failed(const std::string& path, int number) {
  return {Code::io, "the record cannot be read: " + std::generic_category().message(number), path,
          number == ENOENT ? "check the name" : ""};
}

class Descriptor {
 public:
  explicit Descriptor(const std::string& path)
      : number_(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK)) {}
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;
  Descriptor(Descriptor&&) = delete;
  Descriptor& operator=(Descriptor&&) = delete;
  ~Descriptor() {
    if (number_ >= 0) ::close(number_);
  }
  [[nodiscard]] int get() const { return number_; }

 private:
  int number_;
};

// Gives every whole line of `held` to the sink and takes them off. False where the sink had enough.
bool give_lines(std::string& held, std::size_t& searched, const LineSink& sink) {
  std::size_t begin = 0;
  while (true) {
    const std::size_t end = held.find('\n', std::max(begin, searched));
    if (end == std::string::npos) break;
    if (!sink.line(std::string_view(held).substr(begin, end - begin))) return false;
    begin = end + 1;
  }
  held.erase(0, begin);
  searched = held.size();
  if (held.size() <= sink.longest()) return true;
  sink.too_long();
  return false;
}

}  // namespace

Result<std::string> read_lines(const std::string& path, const LineSink& sink) {
  const Descriptor file(path);
  if (file.get() < 0) return failed(path, errno);
  struct stat found {};
  if (::fstat(file.get(), &found) != 0) return failed(path, errno);
  if (!S_ISREG(found.st_mode)) return failed(path, S_ISDIR(found.st_mode) ? EISDIR : EINVAL);
  std::string held;
  std::size_t searched = 0;
  while (true) {
    const std::size_t before = held.size();
    held.resize(before + kBlock);
    const ssize_t got = ::read(file.get(), held.data() + before, kBlock);
    held.resize(before + (got > 0 ? static_cast<std::size_t>(got) : 0));
    if (got < 0 && errno == EINTR) continue;
    if (got < 0) return failed(path, errno);
    if (got == 0) return held;
    if (!give_lines(held, searched, sink)) return std::string{};
  }
}

}  // namespace walkdown::record
