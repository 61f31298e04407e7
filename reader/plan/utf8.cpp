// SPDX-License-Identifier: Apache-2.0
#include "reader/plan/utf8.h"

#include <cstdint>
#include <cstring>

namespace walkdown::plan {
namespace {

bool continues(unsigned char byte) { return (byte & 0xC0U) == 0x80U; }

// Bytes of the character that starts here, 0 where none does. RFC 3629, section 4: the second byte
// of E0, ED, F0 and F4 has a range of its own.
std::size_t character(const unsigned char* at, std::size_t left) {
  const unsigned char first = at[0];
  if (first < 0x80) return 1;
  if (first >= 0xC2 && first <= 0xDF) return left >= 2 && continues(at[1]) ? 2 : 0;
  if (left < 3 || !continues(at[1]) || !continues(at[2])) return 0;
  if (first >= 0xE0 && first <= 0xEF) {
    const bool overlong = first == 0xE0 && at[1] < 0xA0;
    const bool surrogate = first == 0xED && at[1] > 0x9F;
    return overlong || surrogate ? 0 : 3;
  }
  if (first < 0xF0 || first > 0xF4 || left < 4 || !continues(at[3])) return 0;
  const bool overlong = first == 0xF0 && at[1] < 0x90;
  const bool beyond = first == 0xF4 && at[1] > 0x8F;
  return overlong || beyond ? 0 : 4;
}

bool eight_ascii(const char* at) {
  std::uint64_t word = 0;
  std::memcpy(&word, at, sizeof word);
  return (word & 0x8080808080808080U) == 0;
}

}  // namespace

std::size_t utf8_prefix(std::string_view bytes) {
  std::size_t at = 0;
  while (at < bytes.size()) {
    if (bytes.size() - at >= 8 && eight_ascii(bytes.data() + at)) {
      at += 8;
      continue;
    }
    const auto* raw = reinterpret_cast<const unsigned char*>(bytes.data() + at);  // NOLINT
    const std::size_t length = character(raw, bytes.size() - at);
    if (length == 0) return at;
    at += length;
  }
  return at;
}

}  // namespace walkdown::plan
