// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/record_file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <system_error>
#include <utility>

namespace walkdown::record {

namespace {

Error failed(const std::string& path, int number) {
  return {Code::io, "the record cannot be read: " + std::generic_category().message(number), path,
          number == ENOENT   ? "check the name"
          : number == EISDIR ? "it is a folder, name a file in it"
                             : ""};
}

}  // namespace

RecordFile::RecordFile(int number, std::string path) : number_(number), path_(std::move(path)) {}

RecordFile::RecordFile(RecordFile&& other) noexcept
    : number_(std::exchange(other.number_, -1)), path_(std::move(other.path_)) {}

RecordFile::~RecordFile() {
  if (number_ >= 0) ::close(number_);
}

Result<RecordFile> RecordFile::open(const std::string& path) {
  RecordFile file(::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK), path);
  if (file.number_ < 0) return failed(path, errno);
  struct stat found {};
  if (::fstat(file.number_, &found) != 0) return failed(path, errno);
  if (!S_ISREG(found.st_mode)) return failed(path, S_ISDIR(found.st_mode) ? EISDIR : EINVAL);
  return file;
}

Result<std::size_t> RecordFile::read(char* to, std::size_t size) const {
  ssize_t got = -1;
  do {
    got = ::read(number_, to, size);
  } while (got < 0 && errno == EINTR);
  if (got < 0) return failed(path_, errno);
  return static_cast<std::size_t>(got);
}

}  // namespace walkdown::record
