// SPDX-License-Identifier: Apache-2.0
// Reads what was added to the record's file since the last look. The window shows what it read
// here and nothing else, so nothing is on the screen that is not on disk.
#pragma once

#include <cstdint>
#include <fstream>
#include <string>

#include "gui/live/row.h"

namespace walkdown::gui {

class Tail {
 public:
  explicit Tail(std::string path) : path_(std::move(path)) {}

  // Entries below `end` that were not given out yet: those that are acknowledged. What follows is
  // left for the next look.
  [[nodiscard]] Rows read_below(std::uint64_t end);

 private:
  void take_lines(std::uint64_t end, Rows& rows);

  std::string path_;
  std::uint64_t offset_ = 0;  // of what was read of the file
  std::string held_;          // read, and not yet given out
};

}  // namespace walkdown::gui
