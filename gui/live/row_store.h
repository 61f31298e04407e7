// SPDX-License-Identifier: Apache-2.0
// All rows of a record, close together: a tester sends a quarter of a million lines in a minute,
// and each as an object of its own would take three times its bytes.
#pragma once

#include <deque>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "gui/live/row.h"

namespace walkdown::gui {

class RowStore {
 public:
  void add(const Row& row);
  [[nodiscard]] std::size_t size() const { return kept_.size(); }
  [[nodiscard]] bool empty() const { return kept_.empty(); }
  // Valid as long as the store. Precondition: index < size().
  [[nodiscard]] record::EntryView operator[](std::size_t index) const;

 private:
  struct Kept {
    std::uint64_t n = 0;
    std::int64_t at_ms = 0;
    std::int64_t up_ms = 0;
    const char* body = nullptr;
    std::uint32_t length = 0;
    std::uint32_t kind = 0;
  };
  [[nodiscard]] std::uint32_t kind_of(std::string_view kind);
  [[nodiscard]] const char* copy(std::string_view text);

  std::deque<Kept> kept_;
  std::deque<std::string> kinds_;                // a few; they never move
  std::vector<std::unique_ptr<char[]>> blocks_;  // of bodies; they never move
  std::size_t left_ = 0;                         // in the last block
  char* next_ = nullptr;
};

}  // namespace walkdown::gui
