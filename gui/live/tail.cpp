// SPDX-License-Identifier: Apache-2.0
#include "gui/live/tail.h"

#include <variant>

namespace walkdown::gui {

void Tail::take_lines(std::uint64_t end, Rows& rows) {
  std::size_t at = 0;
  for (std::size_t lf = held_.find('\n'); lf != std::string::npos; lf = held_.find('\n', at)) {
    const auto line = record::parse_line(std::string_view(held_).substr(at, lf - at));
    if (!line) break;  // what the writer put there it can read; so this is not the writer's
    if (const auto* entry = std::get_if<record::EntryView>(&*line)) {
      if (entry->n >= end) break;
      rows.push_back(row_of(*entry));
    }
    at = lf + 1;
  }
  held_.erase(0, at);
}

Rows Tail::read_below(std::uint64_t end) {
  Rows rows;
  std::ifstream file(path_, std::ios::binary);
  file.seekg(static_cast<std::streamoff>(offset_));
  static constexpr std::size_t kPiece = std::size_t{1} << 20U;
  std::string piece(kPiece, '\0');
  while (file) {
    file.read(piece.data(), static_cast<std::streamsize>(piece.size()));
    const auto got = static_cast<std::size_t>(file.gcount());
    if (got == 0) break;
    offset_ += got;
    held_.append(piece, 0, got);
  }
  take_lines(end, rows);
  return rows;
}

}  // namespace walkdown::gui
