// SPDX-License-Identifier: Apache-2.0
// OpenSSL's time-stamp objects, each freed by its holder. Internal to timestamp.cpp and its parts.
#pragma once

#include <openssl/pkcs7.h>
#include <openssl/ts.h>
#include <openssl/x509.h>

#include <memory>
#include <string>

#include "checklist/record/base64.h"

namespace walkdown::record {

template <auto free>
struct FreeBy {
  template <typename T>
  void operator()(T* object) const {
    free(object);
  }
};

using TsRequest = std::unique_ptr<TS_REQ, FreeBy<TS_REQ_free>>;
using TsResponse = std::unique_ptr<TS_RESP, FreeBy<TS_RESP_free>>;
using TsVerify = std::unique_ptr<TS_VERIFY_CTX, FreeBy<TS_VERIFY_CTX_free>>;
using TsImprint = std::unique_ptr<TS_MSG_IMPRINT, FreeBy<TS_MSG_IMPRINT_free>>;
using Algorithm = std::unique_ptr<X509_ALGOR, FreeBy<X509_ALGOR_free>>;
using Integer = std::unique_ptr<ASN1_INTEGER, FreeBy<ASN1_INTEGER_free>>;
using Certificate = std::unique_ptr<X509, FreeBy<X509_free>>;
using Store = std::unique_ptr<X509_STORE, FreeBy<X509_STORE_free>>;
using Bio = std::unique_ptr<BIO, FreeBy<BIO_free_all>>;

// Nothing where the bytes are no DER of it, or go on behind it.
[[nodiscard]] TsRequest read_request(const Bytes& der);
[[nodiscard]] TsResponse read_response(const Bytes& der);

// Of the token's one signer; nullptr where it has none inside, or several. Lives with the token.
[[nodiscard]] X509* signer_of(PKCS7* token);

// The names of a certificate's holder, as RFC 4514 writes them, in UTF-8.
[[nodiscard]] std::string subject_of(X509* certificate);

// What OpenSSL complained of last, in our words where there are some. Empties its queue.
[[nodiscard]] std::string last_complaint();

// All certificates of a PEM text; trusted as they are, whoever signed them. nullptr: none, or one
// that cannot be read.
[[nodiscard]] Store read_store(const std::string& pem, std::size_t& count);
[[nodiscard]] Store store_of(X509* certificate);

}  // namespace walkdown::record
