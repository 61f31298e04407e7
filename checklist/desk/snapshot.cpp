// SPDX-License-Identifier: Apache-2.0
#include "checklist/desk/snapshot.h"

#include <sodium.h>

#include <cstring>
#include <filesystem>
#include <fstream>

#include "checklist/record/sha256.h"

namespace walkdown::desk {
namespace {

constexpr std::string_view kMagic = "walkdown day 1\n\n";
constexpr std::size_t kLengthBytes = 8;
constexpr std::size_t kHead = 16 + kLengthBytes + crypto_auth_BYTES;
constexpr std::size_t kMostBytes = std::size_t{1} << 30U;
static_assert(kMagic.size() == 16);

record::Hash key_of(const record::SigningKey& station) {
  const record::Seed seed = station.seed();
  std::string text = "walkdown snapshot of station ";
  text.append(reinterpret_cast<const char*>(seed.data()), seed.size());
  const record::Hash key = record::sha256(text);
  sodium_memzero(text.data(), text.size());
  return key;
}

void put(std::string& bytes, std::uint64_t value) {
  for (std::size_t i = 0; i < kLengthBytes; ++i) {
    bytes += static_cast<char>((value >> (8 * i)) & 0xFFU);
  }
}

std::uint64_t whole_at(std::string_view bytes) {
  std::uint64_t value = 0;
  for (std::size_t i = 0; i < kLengthBytes; ++i) {
    value |= std::uint64_t{static_cast<unsigned char>(bytes[i])} << (8 * i);
  }
  return value;
}

const unsigned char* raw(std::string_view bytes) {
  return reinterpret_cast<const unsigned char*>(bytes.data());
}

std::string payload_of(const Snapshot& snapshot) {
  std::string payload;
  payload.reserve(64 + snapshot.origin.size() + snapshot.folded.size());
  put(payload, snapshot.size);
  payload.append(reinterpret_cast<const char*>(snapshot.root.data()), snapshot.root.size());
  put(payload, snapshot.origin.size());
  return payload + snapshot.origin + snapshot.folded;
}

std::optional<Snapshot> parse(std::string_view payload) {
  Snapshot snapshot;
  const std::size_t fixed = kLengthBytes + snapshot.root.size() + kLengthBytes;
  if (payload.size() < fixed) return std::nullopt;
  snapshot.size = whole_at(payload);
  std::memcpy(snapshot.root.data(), payload.data() + kLengthBytes, snapshot.root.size());
  const std::uint64_t name = whole_at(payload.substr(fixed - kLengthBytes));
  payload.remove_prefix(fixed);
  if (name > payload.size()) return std::nullopt;
  snapshot.origin = payload.substr(0, name);
  snapshot.folded = payload.substr(name);
  return snapshot;
}

std::optional<std::string> read_whole(const std::string& path) {
  std::error_code failed;
  const auto size = std::filesystem::file_size(path, failed);
  if (failed || size < kHead || size > kMostBytes) return std::nullopt;
  std::ifstream file(path, std::ios::binary);
  std::string bytes(size, '\0');
  if (!file.read(bytes.data(), static_cast<std::streamsize>(size))) return std::nullopt;
  return bytes;
}

}  // namespace

std::string snapshot_path(const std::string& record_path) { return record_path + ".snapshot"; }

// Not synced: one that a crash cuts off is one that does not fit.
Done save_snapshot(const std::string& path, const Snapshot& snapshot,
                   const record::SigningKey& station) {
  const std::string payload = payload_of(snapshot);
  std::string head(kMagic);
  put(head, payload.size());
  record::Hash mac{};
  static_assert(sizeof(mac) == crypto_auth_BYTES);
  crypto_auth(mac.data(), raw(payload), payload.size(), key_of(station).data());
  head.append(reinterpret_cast<const char*>(mac.data()), mac.size());
  const std::string beside = path + ".new";
  {
    std::ofstream file(beside, std::ios::binary | std::ios::trunc);
    file << head << payload;
    if (!file.flush()) return Error{Code::io, "the snapshot cannot be written", beside, ""};
  }
  std::error_code failed;
  std::filesystem::rename(beside, path, failed);
  if (failed) return Error{Code::io, "the snapshot cannot be written", path, failed.message()};
  return done();
}

std::optional<Snapshot> load_snapshot(const std::string& path, const record::SigningKey& station) {
  const auto bytes = read_whole(path);
  if (!bytes || !bytes->starts_with(kMagic)) return std::nullopt;
  const std::string_view payload = std::string_view(*bytes).substr(kHead);
  if (whole_at(std::string_view(*bytes).substr(kMagic.size())) != payload.size()) {
    return std::nullopt;
  }
  const std::string_view mac = std::string_view(*bytes).substr(kMagic.size() + kLengthBytes);
  if (crypto_auth_verify(raw(mac), raw(payload), payload.size(), key_of(station).data()) != 0) {
    return std::nullopt;
  }
  return parse(payload);
}

}  // namespace walkdown::desk
