// SPDX-License-Identifier: Apache-2.0
// A record's file, open for reading.
#pragma once

#include <cstddef>
#include <string>

#include "reader/result.h"

namespace walkdown::record {

class RecordFile {
 public:
  // io where there is no such file, or it is not a plain one.
  [[nodiscard]] static Result<RecordFile> open(const std::string& path);

  RecordFile(RecordFile&& other) noexcept;
  RecordFile& operator=(RecordFile&&) = delete;
  RecordFile(const RecordFile&) = delete;
  RecordFile& operator=(const RecordFile&) = delete;
  ~RecordFile();

  // Up to `size` bytes into `to`; 0 at the end. io where the medium fails.
  [[nodiscard]] Result<std::size_t> read(char* to, std::size_t size) const;

 private:
  RecordFile(int number, std::string path);

  int number_;
  std::string path_;
};

}  // namespace walkdown::record
