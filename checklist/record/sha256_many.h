// SPDX-License-Identifier: Apache-2.0
// SHA-256 of many short messages at once. One message after the other leaves a processor with SHA
// instructions waiting for its own results most of the time; two at once take hardly longer than
// one. OpenSSL has no call for this, and hashing is most of the work of a verifier. Where the
// processor has no such instructions OpenSSL does it, one message at a time.
#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <string_view>

#include "checklist/record/sha256.h"

namespace walkdown::record {

// A message with its padding (FIPS 180-4 section 5.1.1) behind it, up to a whole block.
struct Padded {
  const char* data = nullptr;
  std::size_t size = 0;  // without the padding
};

// How many bytes a message has with its padding.
[[nodiscard]] constexpr std::size_t padded_size(std::size_t size) {
  return (size + 9 + 63) / 64 * 64;
}

// Writes the padding of a message of `size` bytes that begins at `data`. Precondition: there is
// room for padded_size(size) bytes.
void pad(char* data, std::size_t size);

// Precondition: out.size() >= messages.size(), every message is padded.
void sha256_many(std::span<const Padded> messages, std::span<Hash> out);

// The same by OpenSSL alone: for processors without the instructions, and to test against.
void sha256_many_plain(std::span<const Padded> messages, std::span<Hash> out);

}  // namespace walkdown::record
