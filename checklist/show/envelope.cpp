// SPDX-License-Identifier: Apache-2.0
#include "checklist/show/envelope.h"

#include <fmt/format.h>

#include <array>
#include <cstdint>

#include "checklist/record/sha256.h"
#include "checklist/show/archive.h"

namespace walkdown::show {
namespace {

// CR LF and 0x1A tell a file that was sent as text; the rest tells a person with an editor.
constexpr std::string_view kMagic{"walkdown-show\r\n\x1A", 16};
constexpr std::uint32_t kEnvelope = 1;
constexpr std::size_t kVersionAt = 16;
constexpr std::size_t kLengthAt = 20;
constexpr std::size_t kHashAt = 28;
constexpr std::size_t kPayloadAt = kHashAt + 32;

template <typename Whole>
void put(std::string& to, Whole value) {
  for (std::size_t i = 0; i < sizeof value; ++i) {
    to += static_cast<char>(value & 0xFFU);
    value = static_cast<Whole>(value >> 8U);
  }
}

template <typename Whole>
Whole get(std::string_view from) {
  Whole value = 0;
  for (std::size_t i = sizeof value; i-- > 0;) {
    value = static_cast<Whole>((value << 8U) | static_cast<unsigned char>(from[i]));
  }
  return value;
}

record::Hash hash_of(std::string_view head, std::string_view payload) {
  record::Sha256 sha256;
  return sha256(head, payload);
}

}  // namespace

std::string wrap(std::string_view payload) {
  std::string bytes(kMagic);
  put(bytes, kEnvelope);
  put(bytes, std::uint64_t{payload.size()});
  const record::Hash hash = hash_of(bytes, payload);
  bytes += record::view(hash);
  bytes += payload;
  return bytes;
}

Result<std::string_view> unwrap(std::string_view bytes, std::string_view file_name) {
  const std::string where(file_name);
  if (!bytes.starts_with(kMagic)) {
    return Error{Code::bad_input, "this is not a show file", where,
                 "choose a file that `walkdown show pack` has written"};
  }
  const std::string again = "pack the show again, or copy the file once more";
  if (bytes.size() < kPayloadAt) {
    return Error{Code::forged, "the show file is cut short", where, again};
  }
  if (const auto version = get<std::uint32_t>(bytes.substr(kVersionAt)); version != kEnvelope) {
    return Error{Code::bad_input, fmt::format("the show file has envelope version {}", version),
                 where, "open it with the walkdown that wrote it, or a newer one"};
  }
  const auto length = get<std::uint64_t>(bytes.substr(kLengthAt));
  const std::string_view payload = bytes.substr(kPayloadAt);
  if (length != payload.size()) {
    return Error{
        Code::forged,
        fmt::format("the show file has {} bytes inside and says {}", payload.size(), length), where,
        again};
  }
  const record::Hash hash = hash_of(bytes.substr(0, kHashAt), payload);
  if (bytes.substr(kHashAt, hash.size()) != record::view(hash)) {
    return Error{Code::forged, "the show file is damaged: its hash does not hold", where, again};
  }
  return payload;
}

}  // namespace walkdown::show
