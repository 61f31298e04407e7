// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/sha256.h"

#include <openssl/evp.h>

#include <cstdlib>

namespace walkdown::record {

namespace {

// SHA-256 is in every OpenSSL provider. Without it nothing here can be right, and no caller could
// do anything about it, so the program ends rather than hash wrongly.
void insist(bool worked) {
  if (!worked) std::abort();
}

EVP_MD* fetched() {
  struct Free {
    void operator()(EVP_MD* digest) const { EVP_MD_free(digest); }
  };
  static const std::unique_ptr<EVP_MD, Free> digest{EVP_MD_fetch(nullptr, "SHA256", nullptr)};
  insist(digest != nullptr);
  return digest.get();
}

}  // namespace

void Sha256::Free::operator()(evp_md_ctx_st* context) const { EVP_MD_CTX_free(context); }

Sha256::Sha256() : context_(EVP_MD_CTX_new()) {
  insist(context_ != nullptr);
  insist(EVP_DigestInit_ex2(context_.get(), fetched(), nullptr) == 1);
}

Hash Sha256::operator()(std::string_view first, std::string_view second, std::string_view third) {
  Hash hash{};
  insist(EVP_DigestInit_ex2(context_.get(), nullptr, nullptr) == 1);
  insist(EVP_DigestUpdate(context_.get(), first.data(), first.size()) == 1);
  if (!second.empty()) insist(EVP_DigestUpdate(context_.get(), second.data(), second.size()) == 1);
  if (!third.empty()) insist(EVP_DigestUpdate(context_.get(), third.data(), third.size()) == 1);
  insist(EVP_DigestFinal_ex(context_.get(), hash.data(), nullptr) == 1);
  return hash;
}

Hash sha256(std::string_view bytes) {
  thread_local Sha256 digest;
  return digest(bytes);
}

std::string hex(const std::uint8_t* data, std::size_t size) {
  constexpr std::string_view kDigits = "0123456789abcdef";
  std::string text;
  text.reserve(size * 2);
  for (std::size_t i = 0; i < size; ++i) {
    text += kDigits[data[i] >> 4U];
    text += kDigits[data[i] & 15U];
  }
  return text;
}

}  // namespace walkdown::record
