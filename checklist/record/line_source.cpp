// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/line_source.h"

#include <algorithm>

#include "checklist/record/record_file.h"

namespace walkdown::record {

namespace {

constexpr std::size_t kBlock = std::size_t{1} << 18U;

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
  const auto file = RecordFile::open(path);
  if (!file) return file.error();
  std::string held;
  std::size_t searched = 0;
  while (true) {
    const std::size_t before = held.size();
    held.resize(before + kBlock);
    const auto got = file->read(held.data() + before, kBlock);
    if (!got) return got.error();
    held.resize(before + *got);
    if (*got == 0) return held;
    if (!give_lines(held, searched, sink)) return std::string{};
  }
}

}  // namespace walkdown::record
