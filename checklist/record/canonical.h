// SPDX-License-Identifier: Apache-2.0
// The one spelling of JSON that a record allows, checked in one pass without building a tree:
// - no white space; objects with their keys in rising order of UTF-8 bytes, none twice;
// - whole numbers only, -(2^53 - 1) .. 2^53 - 1 (RFC 7493), no sign but minus, no leading zero, no
// -0;
// - strings in UTF-8, escapes only where they must be: \" \\ \b \f \n \r \t, and \u00xx in lower
//   case for the other characters below 0x20;
// - at most kMaxDepth objects and arrays inside one another.
// Such text is what python3 writes by
//   json.dumps(value, ensure_ascii=False, separators=(',', ':'), sort_keys=True)
// and what json_text.h writes. So a line can be compared with its own re-serialisation.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace walkdown::record {

inline constexpr std::size_t kMaxDepth = 32;
inline constexpr std::int64_t kMaxWhole = (std::int64_t{1} << 53U) - 1;

// Steps over canonical JSON. Every take_ function says whether what it looks for stands at the
// cursor, and moves behind it; after a false the cursor's place is of no use, but as `at()`.
class Canonical {
 public:
  explicit Canonical(std::string_view text) : text_(text) {}

  // Inline: with a literal the comparison is a few instructions.
  bool take(std::string_view literal) {
    if (!text_.substr(at_).starts_with(literal)) return false;
    at_ += literal.size();
    return true;
  }
  bool take(char c) {
    if (at_ >= text_.size() || text_[at_] != c) return false;
    ++at_;
    return true;
  }
  bool take_value() { return value(0); }
  bool take_object() { return peek() == '{' && value(0); }
  // Range as above. `value` may be null.
  bool take_whole(std::int64_t* value);
  // The text between the quotes, as it stands there.
  bool take_string(std::string_view* inside);
  [[nodiscard]] bool at_end() const { return at_ == text_.size(); }
  [[nodiscard]] std::size_t at() const { return at_; }

 private:
  [[nodiscard]] char peek() const { return at_ < text_.size() ? text_[at_] : '\0'; }
  bool value(std::size_t depth);
  bool object(std::size_t depth);
  bool array(std::size_t depth);
  bool escape();

  std::string_view text_;
  std::size_t at_ = 0;
};

// The whole of `text` is one canonical value. UTF-8 is checked as well.
[[nodiscard]] bool is_canonical(std::string_view text);

// The characters that the inside of a canonical string stands for.
[[nodiscard]] std::string unescape(std::string_view inside);

}  // namespace walkdown::record
