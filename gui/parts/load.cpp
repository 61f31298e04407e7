// SPDX-License-Identifier: Apache-2.0
#include "gui/parts/load.h"

#include <cstdint>
#include <filesystem>
#include <fstream>

namespace walkdown::gui {
namespace {

constexpr std::uintmax_t kMost = std::uintmax_t{512} << 20U;

}  // namespace

Result<std::string> load_file(const std::string& path) {
  std::error_code failed;
  const auto status = std::filesystem::status(path, failed);
  if (std::filesystem::is_directory(status)) {
    return Error{Code::io, "this is a folder", path, "choose a file in it"};
  }
  if (!std::filesystem::exists(status)) {
    return Error{Code::io, "there is no such file", path, "choose another"};
  }
  if (!std::filesystem::is_regular_file(status)) {
    return Error{Code::io, "this is a device and no file", path, "choose another"};
  }
  const auto size = std::filesystem::file_size(path, failed);
  if (failed) return Error{Code::io, "the file cannot be read", path, failed.message()};
  if (size > kMost) return Error{Code::refused, "the file is over 512 MiB", path, ""};
  std::ifstream file(path, std::ios::binary);
  if (!file) return Error{Code::io, "the file cannot be opened", path, "choose another"};
  std::string bytes(size, '\0');
  // Read by the stream, which keeps a disk's failure to itself; an iterator over it would throw.
  file.read(bytes.data(), static_cast<std::streamsize>(size));
  if (file.bad()) return Error{Code::io, "the file cannot be read", path, ""};
  const bool same = static_cast<std::uintmax_t>(file.gcount()) == size &&
                    file.peek() == std::ifstream::traits_type::eof();
  if (!same) return Error{Code::io, "the file changed while it was read", path, "read it again"};
  return bytes;
}

}  // namespace walkdown::gui
