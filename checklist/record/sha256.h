// SPDX-License-Identifier: Apache-2.0
// SHA-256 (FIPS 180-4) through OpenSSL, the digest fetched once and the context reused: about twice
// the speed of EVP_Digest and four times that of libsodium on lines of 300 bytes.
#pragma once

#include <array>
#include <cstdint>
#include <memory>
#include <string>
#include <string_view>

struct evp_md_ctx_st;

namespace walkdown::record {

using Hash = std::array<std::uint8_t, 32>;

// Not to be shared between threads; each makes its own.
class Sha256 {
 public:
  Sha256();

  // Hash of the parts, one after the other.
  [[nodiscard]] Hash operator()(std::string_view first, std::string_view second = {},
                                std::string_view third = {});

 private:
  struct Free {
    void operator()(evp_md_ctx_st* context) const;
  };
  std::unique_ptr<evp_md_ctx_st, Free> context_;
};

[[nodiscard]] Hash sha256(std::string_view bytes);
[[nodiscard]] std::string hex(const std::uint8_t* data, std::size_t size);
[[nodiscard]] inline std::string hex(const Hash& hash) { return hex(hash.data(), hash.size()); }
[[nodiscard]] inline std::string_view view(const Hash& hash) {
  return {reinterpret_cast<const char*>(hash.data()), hash.size()};
}

}  // namespace walkdown::record
