// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/canonical.h"

#include <algorithm>

#include "checklist/record/plain_run.h"
#include "checklist/record/utf8.h"

namespace walkdown::record {

namespace {

int hex_digit(char c) {
  if (c >= '0' && c <= '9') return c - '0';
  if (c >= 'a' && c <= 'f') return c - 'a' + 10;
  return -1;
}

char short_escape(char letter) {
  switch (letter) {
    case '"':
      return '"';
    case '\\':
      return '\\';
    case 'b':
      return '\b';
    case 'f':
      return '\f';
    case 'n':
      return '\n';
    case 'r':
      return '\r';
    case 't':
      return '\t';
    default:
      return '\0';
  }
}

bool has_short_escape(int code) {
  return code == '\b' || code == '\f' || code == '\n' || code == '\r' || code == '\t';
}

// Order of two keys as they stand between their quotes. Where the first byte that differs is plain
// on both sides, and so is all before it, the order is that of these bytes.
bool rises(std::string_view before, std::string_view after) {
  const std::size_t common = std::min(before.size(), after.size());
  for (std::size_t i = 0; i < common; ++i) {
    if (before[i] == '\\' || after[i] == '\\') return unescape(before) < unescape(after);
    if (before[i] != after[i]) {
      return static_cast<unsigned char>(before[i]) < static_cast<unsigned char>(after[i]);
    }
  }
  return before.size() < after.size();
}

}  // namespace

bool Canonical::take_whole(std::int64_t* value) {
  const std::size_t begin = at_;
  const bool minus = peek() == '-';
  if (minus) ++at_;
  const std::size_t first = at_;
  std::int64_t magnitude = 0;
  for (; peek() >= '0' && peek() <= '9'; ++at_) {
    magnitude = magnitude * 10 + (peek() - '0');
    if (magnitude > kMaxWhole) return false;
  }
  const std::size_t count = at_ - first;
  if (count == 0 || (text_[first] == '0' && (count > 1 || minus))) {
    at_ = begin;
    return false;
  }
  if (value != nullptr) *value = minus ? -magnitude : magnitude;
  return true;
}

bool Canonical::escape() {
  const char letter = at_ + 1 < text_.size() ? text_[at_ + 1] : '\0';
  if (short_escape(letter) != '\0') {
    at_ += 2;
    return true;
  }
  const std::string_view code = text_.substr(at_, 6);
  if (code.size() < 6 || !code.starts_with("\\u00") || (code[4] != '0' && code[4] != '1')) {
    return false;
  }
  const int low = hex_digit(code[5]);
  if (low < 0 || has_short_escape((code[4] - '0') * 16 + low)) return false;
  at_ += 6;
  return true;
}

bool Canonical::take_string(std::string_view* inside) {
  if (peek() != '"') return false;
  const std::size_t begin = ++at_;
  while (true) {
    at_ = plain_run(text_, at_);
    if (peek() == '"') break;
    if (peek() != '\\' || !escape()) return false;
  }
  if (inside != nullptr) *inside = text_.substr(begin, at_ - begin);
  ++at_;
  return true;
}

bool Canonical::object(std::size_t depth) {
  ++at_;
  if (take('}')) return true;
  std::string_view before;
  for (bool first = true;; first = false) {
    std::string_view key;
    if (!take_string(&key)) return false;
    if (!first && !rises(before, key)) return false;
    before = key;
    if (!take(':') || !value(depth)) return false;
    if (take('}')) return true;
    if (!take(',')) return false;
  }
}

bool Canonical::array(std::size_t depth) {
  ++at_;
  if (take(']')) return true;
  while (true) {
    if (!value(depth)) return false;
    if (take(']')) return true;
    if (!take(',')) return false;
  }
}

bool Canonical::value(std::size_t depth) {
  switch (peek()) {
    case '{':
      return depth < kMaxDepth && object(depth + 1);
    case '[':
      return depth < kMaxDepth && array(depth + 1);
    case '"':
      return take_string(nullptr);
    case 't':
      return take("true");
    case 'f':
      return take("false");
    case 'n':
      return take("null");
    default:
      return take_whole(nullptr);
  }
}

bool is_canonical(std::string_view text) {
  Canonical json(text);
  return json.take_value() && json.at_end() && is_utf8(text);
}

std::string unescape(std::string_view inside) {
  std::string out;
  out.reserve(inside.size());
  for (std::size_t i = 0; i < inside.size(); ++i) {
    if (inside[i] != '\\' || i + 1 >= inside.size()) {
      out += inside[i];
    } else if (inside[i + 1] == 'u' && i + 5 < inside.size()) {
      out += static_cast<char>(hex_digit(inside[i + 4]) * 16 + hex_digit(inside[i + 5]));
      i += 5;
    } else {
      out += short_escape(inside[++i]);
    }
  }
  return out;
}

}  // namespace walkdown::record
