// SPDX-License-Identifier: Apache-2.0
// Base64 of RFC 4648 section 4, with padding, in its canonical form only.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace walkdown::record {

using Bytes = std::vector<std::uint8_t>;

[[nodiscard]] std::string base64(const std::uint8_t* data, std::size_t size);
[[nodiscard]] inline std::string base64(const Bytes& bytes) {
  return base64(bytes.data(), bytes.size());
}

// Nothing for text that base64() would not have written: wrong length, another alphabet, white
// space, missing padding, or unused bits that are not zero. So no two texts mean the same bytes.
[[nodiscard]] std::optional<Bytes> from_base64(std::string_view text);

}  // namespace walkdown::record
