// SPDX-License-Identifier: Apache-2.0
#include "gui/day/file_hash.h"

#include <filesystem>
#include <fstream>
#include <iterator>

#include "checklist/record/sha256.h"

namespace walkdown::gui {

Result<std::string> sha256_of_file(const std::string& path) {
  static constexpr std::uintmax_t kMost = std::uintmax_t{512} << 20U;
  std::error_code error;
  const auto size = std::filesystem::file_size(path, error);
  if (error) return Error{Code::io, "the file cannot be read", path, error.message()};
  if (size > kMost) return Error{Code::refused, "the file is over 512 MiB", path, ""};
  std::ifstream file(path, std::ios::binary);
  const std::string bytes((std::istreambuf_iterator<char>(file)), {});
  if (!file.good() && !file.eof()) return Error{Code::io, "the file cannot be read", path, ""};
  if (bytes.size() != size) return Error{Code::io, "the file changed while it was read", path, ""};
  return record::hex(record::sha256(bytes));
}

}  // namespace walkdown::gui
