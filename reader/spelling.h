// SPDX-License-Identifier: Apache-2.0
// Is an unknown key of a file nearly a known one? Keys that mean nothing to us are passed over, so
// that a crew may keep notes of its own in a file; but a mistyped limit must not pass as 'no limit
// given'.
#pragma once

#include <algorithm>
#include <cstddef>
#include <numeric>
#include <span>
#include <string_view>
#include <vector>

namespace walkdown {

// Levenshtein distance: how many letters to change, add or drop.
[[nodiscard]] inline std::size_t letters_apart(std::string_view a, std::string_view b) {
  std::vector<std::size_t> row(b.size() + 1);
  std::iota(row.begin(), row.end(), std::size_t{0});
  for (std::size_t i = 0; i < a.size(); ++i) {
    std::size_t diagonal = row[0];
    row[0] = i + 1;
    for (std::size_t j = 0; j < b.size(); ++j) {
      const std::size_t changed = diagonal + (a[i] == b[j] ? 0 : 1);
      diagonal = row[j + 1];
      row[j + 1] = std::min({changed, row[j] + 1, row[j + 1] + 1});
    }
  }
  return row.back();
}

// The known key that `key` was probably meant to be; empty where it is a known one, or far from
// all of them. Short words differ by two letters without being mistakes of each other, so those
// may differ by one.
[[nodiscard]] inline std::string_view meant_key(std::string_view key,
                                                std::span<const std::string_view> known) {
  if (std::find(known.begin(), known.end(), key) != known.end()) return {};
  for (const std::string_view name : known) {
    if (letters_apart(key, name) <= (name.size() < 6 ? 1U : 2U)) return name;
  }
  return {};
}

}  // namespace walkdown
