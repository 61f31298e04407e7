// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string_view>

namespace walkdown::record {

// Well-formed UTF-8 of RFC 3629: no overlong form, no surrogate, nothing above U+10FFFF.
[[nodiscard]] bool is_utf8(std::string_view text);

// Well-formed, and no control character: below 0x20, or 0x7f.
[[nodiscard]] bool is_printable(std::string_view text);

// One line a person wrote: printable, not empty, no space at either end, at most `limit` bytes.
[[nodiscard]] bool is_plain_line(std::string_view text, std::size_t limit);

}  // namespace walkdown::record
