// SPDX-License-Identifier: Apache-2.0
// A public Ed25519 key as text, in the vkey form of C2SP signed-note:
//   <name>+<key id, 8 hex digits>+<base64(type byte || 32 key bytes)>
// The key id is the first four bytes of SHA-256(name || LF || type byte || key). Type 0x01 signs
// the note itself; 0x04 is the timestamped cosignature of C2SP tlog-cosignature.
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

#include "checklist/record/base64.h"
#include "reader/result.h"

namespace walkdown::record {

inline constexpr std::uint8_t kSignsNotes = 0x01;
inline constexpr std::uint8_t kCosigns = 0x04;

// A name of 1 to 200 bytes of printable UTF-8 without space and without plus.
[[nodiscard]] bool is_key_name(std::string_view name);

struct VerifyKey {
  std::string name;
  std::uint8_t type = kSignsNotes;
  std::array<std::uint8_t, 32> key{};

  friend bool operator==(const VerifyKey&, const VerifyKey&) = default;
};

[[nodiscard]] std::uint32_t key_id(const VerifyKey& key);
[[nodiscard]] std::string text(const VerifyKey& key);

// bad_input where the text is not what text() would write, or the id is not that of name and key.
[[nodiscard]] Result<VerifyKey> parse_vkey(std::string_view text);

// Pure Ed25519 (RFC 8032) of the message itself; false as well for degenerate keys.
[[nodiscard]] bool verify(const VerifyKey& key, std::string_view message, const Bytes& signature);

}  // namespace walkdown::record
