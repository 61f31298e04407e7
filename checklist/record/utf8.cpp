// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/utf8.h"

#include <algorithm>
#include <cstdint>
#include <cstring>

namespace walkdown::record {

namespace {

std::uint8_t byte(char c) { return static_cast<std::uint8_t>(c); }

bool is_ascii_block(const char* text) {
  std::uint64_t block = 0;
  std::memcpy(&block, text, sizeof block);
  return (block & 0x8080808080808080U) == 0;
}

// Length of the sequence that begins with this byte, and the least second byte and the greatest
// (RFC 3629 section 4); length 0 for a byte that begins none.
struct Lead {
  std::size_t length = 0;
  std::uint8_t low = 0x80;
  std::uint8_t high = 0xbf;
};

Lead lead_of(std::uint8_t first) {
  if (first >= 0xc2 && first <= 0xdf) return {2};
  if (first == 0xe0) return {3, 0xa0, 0xbf};
  if (first == 0xed) return {3, 0x80, 0x9f};
  if (first >= 0xe1 && first <= 0xef) return {3};
  if (first == 0xf0) return {4, 0x90, 0xbf};
  if (first >= 0xf1 && first <= 0xf3) return {4};
  if (first == 0xf4) return {4, 0x80, 0x8f};
  return {};
}

bool is_tail(char c) { return (byte(c) & 0xc0U) == 0x80; }

}  // namespace

bool is_utf8(std::string_view text) {
  for (std::size_t i = 0; i < text.size();) {
    if (text.size() - i >= 8 && is_ascii_block(text.data() + i)) {
      i += 8;
      continue;
    }
    if (byte(text[i]) < 0x80) {
      ++i;
      continue;
    }
    const Lead lead = lead_of(byte(text[i]));
    if (lead.length == 0 || text.size() - i < lead.length) return false;
    const std::uint8_t second = byte(text[i + 1]);
    if (second < lead.low || second > lead.high) return false;
    const std::string_view rest = text.substr(i + 2, lead.length - 2);
    if (!std::all_of(rest.begin(), rest.end(), is_tail)) return false;
    i += lead.length;
  }
  return true;
}

bool is_printable(std::string_view text) {
  return is_utf8(text) && std::none_of(text.begin(), text.end(),
                                       [](char c) { return byte(c) < 0x20 || byte(c) == 0x7f; });
}

bool is_plain_line(std::string_view text, std::size_t limit) {
  return !text.empty() && text.size() <= limit && text.front() != ' ' && text.back() != ' ' &&
         is_printable(text);
}

}  // namespace walkdown::record
