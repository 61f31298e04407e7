// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/signing_key.h"

#include <sodium.h>

#include <algorithm>
#include <cstdlib>
#include <utility>

namespace walkdown::record {

namespace {

// Without its random source libsodium must not be used at all.
void start_sodium() {
  static const bool started = sodium_init() >= 0;
  if (!started) std::abort();
}

}  // namespace

SigningKey::SigningKey(std::string name, const Seed& seed) {
  start_sodium();
  public_.name = std::move(name);
  crypto_sign_seed_keypair(public_.key.data(), secret_.data(), seed.data());
}

SigningKey::~SigningKey() { sodium_memzero(secret_.data(), secret_.size()); }

SigningKey SigningKey::make(std::string name) {
  start_sodium();
  Seed seed{};
  randombytes_buf(seed.data(), seed.size());
  SigningKey key(std::move(name), seed);
  sodium_memzero(seed.data(), seed.size());
  return key;
}

Seed SigningKey::seed() const {
  Seed seed{};
  std::copy_n(secret_.begin(), seed.size(), seed.begin());
  return seed;
}

Bytes SigningKey::sign(std::string_view message) const {
  Bytes signature(crypto_sign_BYTES);
  crypto_sign_detached(signature.data(), nullptr,
                       reinterpret_cast<const unsigned char*>(message.data()), message.size(),
                       secret_.data());
  return signature;
}

}  // namespace walkdown::record
