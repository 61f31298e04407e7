// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/progress.h"

#include <fmt/format.h>
#include <unistd.h>

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <utility>

#include "checklist/cli/files.h"

namespace walkdown::cli {

namespace {
constexpr auto kFirst = std::chrono::seconds{1};
constexpr auto kEvery = std::chrono::milliseconds{200};
}  // namespace

Progress::Progress(std::string verb, const std::string& path)
    : verb_(std::move(verb)), name_(base_name(path)), next_(Clock::now() + kFirst) {
  std::error_code failed;
  if (::isatty(STDERR_FILENO) == 0) return;
  size_ = std::filesystem::file_size(path, failed);
  if (failed) size_ = 0;
}

Progress::~Progress() {
  if (shown_) fmt::print(stderr, "\r\x1b[K");
}

void Progress::at(std::uint64_t bytes) {
  if (size_ == 0 || Clock::now() < next_) return;
  next_ = Clock::now() + kEvery;
  shown_ = true;
  fmt::print(stderr, "\r\x1b[K{} {} % of {}", verb_, std::min(bytes, size_) * 100 / size_, name_);
  (void)std::fflush(stderr);
}

}  // namespace walkdown::cli
