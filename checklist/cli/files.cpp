// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/files.h"

#include <cerrno>
#include <cstdio>
#include <filesystem>
#include <memory>
#include <system_error>

namespace walkdown::cli {
namespace {

struct Close {
  void operator()(std::FILE* file) const {
    if (file != nullptr && file != stdin)
      (void)std::fclose(file);  // NOLINT(cppcoreguidelines-owning-memory)
  }
};
using File = std::unique_ptr<std::FILE, Close>;

Error system_error(std::string what, const std::string& path, int number) {
  return Error{Code::io, std::move(what), path,
               std::error_code(number, std::generic_category()).message()};
}

Done put_all(const std::string& path, std::string_view bytes) {
  errno = 0;
  File file(std::fopen(path.c_str(), "wbe"));
  if (!file) return system_error("cannot write the file", path, errno);
  const bool whole = std::fwrite(bytes.data(), 1, bytes.size(), file.get()) == bytes.size() &&
                     std::fflush(file.get()) == 0;
  if (!whole) return system_error("cannot write the file", path, errno);
  return done();
}

}  // namespace

Result<std::string> read_file(const std::string& path) {
  std::error_code ignored;
  if (path != "-" && std::filesystem::is_directory(path, ignored)) {
    return Error{Code::io, "cannot read the file", path, "it is a folder, name a file in it"};
  }
  errno = 0;
  const File file(path == "-" ? stdin : std::fopen(path.c_str(), "rbe"));
  if (!file) return system_error("cannot open the file", path, errno);
  std::string bytes;
  std::string block(1U << 16U, '\0');
  while (const std::size_t got = std::fread(block.data(), 1, block.size(), file.get())) {
    bytes.append(block, 0, got);
  }
  if (std::ferror(file.get()) != 0) return system_error("cannot read the file", path, errno);
  return bytes;
}

Done write_file(const std::string& path, std::string_view bytes) {
  namespace fs = std::filesystem;
  std::error_code failed;
  // A device, a pipe or a terminal takes the bytes; renaming would put a file in its place.
  const fs::file_status there = fs::status(path, failed);
  if (fs::is_directory(there)) {
    return Error{Code::io, "cannot write the file", path, "it is a folder, name a file in it"};
  }
  if (fs::exists(there) && !fs::is_regular_file(there)) return put_all(path, bytes);
  // Where a link stands, what it leads to is meant.
  const bool is_link = fs::is_symlink(fs::symlink_status(path, failed));
  failed.clear();  // that a new file is not there yet is told as a failure
  const fs::path target = is_link ? fs::weakly_canonical(path, failed) : fs::path(path);
  if (failed) return Error{Code::io, "cannot put the file in place", path, failed.message()};
  const std::string beside = target.string() + ".part";
  if (Done kept = put_all(beside, bytes); !kept) {
    fs::remove(beside, failed);
    Error error = kept.error();
    error.where = path;  // as it was typed
    return error;
  }
  fs::rename(beside, target, failed);
  if (failed) return Error{Code::io, "cannot put the file in place", path, failed.message()};
  return done();
}

std::string base_name(const std::string& path) {
  return path == "-" ? "standard input" : std::filesystem::path(path).filename().string();
}

}  // namespace walkdown::cli
