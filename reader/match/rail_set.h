// SPDX-License-Identifier: Apache-2.0
// Some of a field's rails. To empty it costs what is in it, not the field's size: a search that
// looks again at a handful of rails does so thousands of times in a large field.
#pragma once

#include <cstdint>
#include <vector>

namespace walkdown::match {

class RailSet {
 public:
  explicit RailSet(std::size_t rails) : in_(rails, 0) {}

  [[nodiscard]] bool has(std::uint32_t rail) const { return in_[rail] != 0; }
  // One a rail: not 0 where it is in the set.
  [[nodiscard]] const std::vector<char>& flags() const { return in_; }

  void add(std::uint32_t rail) {
    if (in_[rail] == 0) listed_.push_back(rail);
    in_[rail] = 1;
  }
  void add_all() {
    for (std::uint32_t r = 0; r < in_.size(); ++r) add(r);
  }
  void clear() {
    for (const std::uint32_t rail : listed_) in_[rail] = 0;
    listed_.clear();
  }

 private:
  std::vector<char> in_;
  std::vector<std::uint32_t> listed_;
};

}  // namespace walkdown::match
