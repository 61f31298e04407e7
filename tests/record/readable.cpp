// SPDX-License-Identifier: Apache-2.0
#include "tests/record/readable.h"

#include <algorithm>
#include <cctype>

namespace walkdown::record::test {

std::string readable(const std::string& text) {
  constexpr std::ptrdiff_t kShortest = 20;
  const auto digit = [](unsigned char c) {
    return std::isalnum(c) != 0 || c == '+' || c == '/' || c == '=';
  };
  std::string kept;
  for (auto at = text.begin(); at != text.end();) {
    const auto end = digit(*at) ? std::find_if_not(at, text.end(), digit) : std::next(at);
    if (end - at < kShortest) kept.append(at, end);
    at = end;
  }
  return kept;
}

}  // namespace walkdown::record::test
