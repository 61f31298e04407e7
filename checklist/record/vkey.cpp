// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/vkey.h"

#include <sodium.h>

#include <algorithm>

#include "checklist/record/sha256.h"
#include "checklist/record/utf8.h"

namespace walkdown::record {

namespace {

constexpr std::size_t kLongestName = 200;

std::string typed_key(const VerifyKey& key) {
  std::string bytes(1, static_cast<char>(key.type));
  bytes.append(key.key.begin(), key.key.end());
  return bytes;
}

std::string id_hex(std::uint32_t id) {
  const std::array<std::uint8_t, 4> bytes{
      static_cast<std::uint8_t>(id >> 24U), static_cast<std::uint8_t>(id >> 16U),
      static_cast<std::uint8_t>(id >> 8U), static_cast<std::uint8_t>(id)};
  return hex(bytes.data(), bytes.size());
}

Error not_a_key(std::string_view where, const char* why) {
  return {Code::bad_input, std::string("this is no public key: ") + why,
          std::string(where.substr(0, 80)), "a public key reads name+8 hex digits+base64"};
}

// U+0085, U+00A0, U+1680, U+2000..200A, 2028, 2029, 202F, 205F, 3000: the spaces beyond ASCII,
// which C2SP signed-note keeps out of names.
bool has_wide_space(std::string_view name) {
  constexpr std::array<std::string_view, 9> kSpaces{"\xC2\x85",     "\xC2\xA0",     "\xE1\x9A\x80",
                                                    "\xE2\x80\xA8", "\xE2\x80\xA9", "\xE2\x80\xAF",
                                                    "\xE2\x81\x9F", "\xE3\x80\x80", "\xE2\x80\x8A"};
  const bool listed = std::any_of(kSpaces.begin(), kSpaces.end(), [name](std::string_view space) {
    return name.find(space) != std::string_view::npos;
  });
  if (listed) return true;
  for (std::size_t at = name.find("\xE2\x80"); at != std::string_view::npos;
       at = name.find("\xE2\x80", at + 1)) {
    const auto third = static_cast<std::uint8_t>(name[at + 2]);
    if (third >= 0x80 && third <= 0x8A) return true;
  }
  return false;
}

}  // namespace

bool is_key_name(std::string_view name) {
  return is_plain_line(name, kLongestName) && name.find_first_of(" +") == std::string_view::npos &&
         !has_wide_space(name);
}

std::uint32_t key_id(const VerifyKey& key) {
  const Hash hash = sha256(key.name + '\n' + typed_key(key));
  return (std::uint32_t{hash[0]} << 24U) | (std::uint32_t{hash[1]} << 16U) |
         (std::uint32_t{hash[2]} << 8U) | hash[3];
}

std::string text(const VerifyKey& key) {
  const std::string bytes = typed_key(key);
  return key.name + '+' + id_hex(key_id(key)) + '+' +
         base64(reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size());
}

Result<VerifyKey> parse_vkey(std::string_view from) {
  const std::size_t first = from.find('+');
  const std::size_t second = first == std::string_view::npos ? first : from.find('+', first + 1);
  if (second == std::string_view::npos) return not_a_key(from, "it has no two plus signs");
  VerifyKey key;
  key.name = from.substr(0, first);
  if (!is_key_name(key.name)) return not_a_key(from, "its name has a space, or is empty");
  const auto bytes = from_base64(from.substr(second + 1));
  if (!bytes || bytes->size() != 1 + key.key.size())
    return not_a_key(from, "it was cut or changed");
  key.type = bytes->front();
  if (key.type != kSignsNotes && key.type != kCosigns) return not_a_key(from, "it is not Ed25519");
  std::copy(bytes->begin() + 1, bytes->end(), key.key.begin());
  if (text(key) != from) return not_a_key(from, "its id is not that of its name and key");
  return key;
}

bool verify(const VerifyKey& key, std::string_view message, const Bytes& signature) {
  return signature.size() == crypto_sign_BYTES &&
         crypto_sign_verify_detached(signature.data(),
                                     reinterpret_cast<const unsigned char*>(message.data()),
                                     message.size(), key.key.data()) == 0;
}

}  // namespace walkdown::record
