// SPDX-License-Identifier: Apache-2.0
#include "reader/plan/problem.h"

#include <fmt/format.h>

#include "reader/plan/utf8.h"

namespace walkdown::plan {
namespace {

bool printable(char c) {
  const auto byte = static_cast<unsigned char>(c);
  return byte >= 0x20 && byte != 0x7F;
}

}  // namespace

std::string shown(std::string_view raw) {
  std::string text;
  bool cut = false;
  while (!raw.empty()) {
    const std::size_t good = utf8_prefix(raw.substr(0, kMaxShown + 4));
    const std::size_t take = good == 0 ? 1 : good;
    for (const char c : raw.substr(0, take)) text += good != 0 && printable(c) ? c : '?';
    raw.remove_prefix(take);
    if (text.size() > kMaxShown) {
      text.resize(kMaxShown);
      text.resize(utf8_prefix(text));
      cut = true;
      break;
    }
  }
  return cut ? text + "..." : text;
}

std::string Problem::sentence() const {
  std::string place;
  if (row != 0) place = fmt::format("row {}", row);
  if (!column.empty()) place += fmt::format("{}column {}", place.empty() ? "" : ", ", column);
  if (!value.empty()) place += fmt::format("{}'{}'", place.empty() ? "" : ", ", value);
  return fmt::format("{}{}{}.", place, place.empty() ? "" : ": ", remedy);
}

}  // namespace walkdown::plan
