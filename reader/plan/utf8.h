// SPDX-License-Identifier: Apache-2.0
// Whether bytes are UTF-8 (RFC 3629: no overlong forms, no surrogates, nothing above U+10FFFF).
#pragma once

#include <cstddef>
#include <string_view>

namespace walkdown::plan {

// Length of the leading bytes that are whole, well-formed characters; bytes.size() when all are.
[[nodiscard]] std::size_t utf8_prefix(std::string_view bytes);

[[nodiscard]] inline bool is_utf8(std::string_view bytes) {
  return utf8_prefix(bytes) == bytes.size();
}

}  // namespace walkdown::plan
