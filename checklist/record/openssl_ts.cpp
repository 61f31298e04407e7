// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/openssl_ts.h"

#include <openssl/err.h>
#include <openssl/pem.h>

namespace walkdown::record {

TsRequest read_request(const Bytes& der) {
  const unsigned char* at = der.data();
  TsRequest request(d2i_TS_REQ(nullptr, &at, static_cast<long>(der.size())));
  ERR_clear_error();
  return at == der.data() + der.size() ? std::move(request) : nullptr;
}

TsResponse read_response(const Bytes& der) {
  const unsigned char* at = der.data();
  TsResponse response(d2i_TS_RESP(nullptr, &at, static_cast<long>(der.size())));
  ERR_clear_error();
  return at == der.data() + der.size() ? std::move(response) : nullptr;
}

X509* signer_of(PKCS7* token) {
  STACK_OF(X509)* const signers = PKCS7_get0_signers(token, nullptr, 0);
  X509* const only = sk_X509_num(signers) == 1 ? sk_X509_value(signers, 0) : nullptr;
  sk_X509_free(signers);
  ERR_clear_error();
  return only;
}

std::string subject_of(X509* certificate) {
  const Bio out(BIO_new(BIO_s_mem()));
  // Not escaped are letters beyond ASCII: people read this.
  constexpr unsigned long kForm =
      XN_FLAG_RFC2253 & ~static_cast<unsigned long>(ASN1_STRFLGS_ESC_MSB);
  X509_NAME_print_ex(out.get(), X509_get_subject_name(certificate), 0, kForm);
  char* text = nullptr;
  const long size = BIO_get_mem_data(out.get(), &text);
  return size > 0 ? std::string(text, static_cast<std::size_t>(size)) : std::string("(no name)");
}

std::string last_complaint() {
  const unsigned long error = ERR_peek_last_error();
  const char* const reason = ERR_reason_error_string(error);
  ERR_clear_error();
  if (ERR_GET_LIB(error) == ERR_LIB_TS) {
    switch (ERR_GET_REASON(error)) {
      case TS_R_MESSAGE_IMPRINT_MISMATCH:
        return "it is over something else than this head";
      case TS_R_NONCE_MISMATCH:
      case TS_R_NONCE_NOT_RETURNED:
        return "it answers another request";
      case TS_R_SIGNATURE_FAILURE:
        return "its signature is not right";
      case TS_R_CERTIFICATE_VERIFY_ERROR:
        return "its certificate is none for time-stamps, or was not valid at its time";
      default:
        break;
    }
  }
  return reason == nullptr ? "it cannot be checked" : reason;
}

Store read_store(const std::string& pem, std::size_t& count) {
  Store store(X509_STORE_new());
  const Bio in(BIO_new_mem_buf(pem.data(), static_cast<int>(pem.size())));
  count = 0;
  while (const Certificate each{PEM_read_bio_X509(in.get(), nullptr, nullptr, nullptr)}) {
    X509_STORE_add_cert(store.get(), each.get());
    ++count;
  }
  // The end of the file is the one error that ends a good one.
  const bool whole = ERR_GET_REASON(ERR_peek_last_error()) == PEM_R_NO_START_LINE;
  ERR_clear_error();
  return whole && count > 0 ? std::move(store) : nullptr;
}

Store store_of(X509* certificate) {
  Store store(X509_STORE_new());
  X509_STORE_add_cert(store.get(), certificate);
  return store;
}

}  // namespace walkdown::record
