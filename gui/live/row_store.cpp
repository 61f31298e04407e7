// SPDX-License-Identifier: Apache-2.0
#include "gui/live/row_store.h"

#include <algorithm>
#include <cstring>

namespace walkdown::gui {
namespace {

constexpr std::size_t kBlock = std::size_t{256} << 10U;

}  // namespace

std::uint32_t RowStore::kind_of(std::string_view kind) {
  const auto found = std::find(kinds_.begin(), kinds_.end(), kind);
  if (found == kinds_.end()) {
    kinds_.emplace_back(kind);
    return static_cast<std::uint32_t>(kinds_.size() - 1);
  }
  return static_cast<std::uint32_t>(found - kinds_.begin());
}

const char* RowStore::copy(std::string_view text) {
  if (text.size() > left_) {
    left_ = std::max(kBlock, text.size());
    blocks_.push_back(std::make_unique<char[]>(left_));
    next_ = blocks_.back().get();
  }
  char* const at = next_;
  if (!text.empty()) std::memcpy(at, text.data(), text.size());
  next_ += text.size();
  left_ -= text.size();
  return at;
}

void RowStore::add(const Row& row) {
  kept_.push_back({row.n, row.at_ms, row.up_ms, copy(row.body),
                   static_cast<std::uint32_t>(row.body.size()), kind_of(row.kind)});
}

record::EntryView RowStore::operator[](std::size_t index) const {
  const Kept& kept = kept_[index];
  return {kept.n, kept.at_ms, kept.up_ms, kinds_[kept.kind],
          std::string_view(kept.body, kept.length)};
}

}  // namespace walkdown::gui
