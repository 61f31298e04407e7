// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/base64.h"

#include <sodium.h>

namespace walkdown::record {

std::string base64(const std::uint8_t* data, std::size_t size) {
  std::string text(sodium_base64_encoded_len(size, sodium_base64_VARIANT_ORIGINAL), '\0');
  sodium_bin2base64(text.data(), text.size(), data, size, sodium_base64_VARIANT_ORIGINAL);
  text.pop_back();  // the terminating zero that libsodium counts
  return text;
}

std::optional<Bytes> from_base64(std::string_view text) {
  if (text.size() % 4 != 0) return std::nullopt;
  Bytes bytes(text.size() / 4 * 3);
  std::size_t size = 0;
  const char* end = nullptr;
  if (!bytes.empty() &&
      sodium_base642bin(bytes.data(), bytes.size(), text.data(), text.size(), nullptr, &size, &end,
                        sodium_base64_VARIANT_ORIGINAL) != 0) {
    return std::nullopt;
  }
  bytes.resize(size);
  // What libsodium lets pass by its version is not relied on: the text must be what we would write.
  if (base64(bytes) != text) return std::nullopt;
  return bytes;
}

}  // namespace walkdown::record
