// SPDX-License-Identifier: Apache-2.0
// The secret half of an Ed25519 key. It lives only as long as it is needed, and wipes itself.
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

#include "checklist/record/vkey.h"

namespace walkdown::record {

using Seed = std::array<std::uint8_t, 32>;  // the 32 secret bytes of RFC 8032

class SigningKey {
 public:
  // Precondition: is_key_name(name).
  SigningKey(std::string name, const Seed& seed);
  SigningKey(const SigningKey&) = default;
  SigningKey(SigningKey&&) = default;
  SigningKey& operator=(const SigningKey&) = default;
  SigningKey& operator=(SigningKey&&) = default;
  ~SigningKey();

  // A new key from the system's random source.
  [[nodiscard]] static SigningKey make(std::string name);

  [[nodiscard]] const VerifyKey& verify_key() const { return public_; }
  [[nodiscard]] Seed seed() const;
  // RFC 8032 Ed25519 over the message itself, 64 bytes.
  [[nodiscard]] Bytes sign(std::string_view message) const;

 private:
  VerifyKey public_;
  std::array<std::uint8_t, 64> secret_{};
};

}  // namespace walkdown::record
