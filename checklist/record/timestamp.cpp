// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/timestamp.h"

#include <openssl/bn.h>
#include <openssl/err.h>
#include <openssl/objects.h>

#include <ctime>

#include "checklist/record/clock.h"
#include "checklist/record/openssl_ts.h"
#include "checklist/record/sha256.h"

namespace walkdown::record {

namespace {

Error forged(const std::string& why) {
  return {Code::forged, "the time-stamp does not hold: " + why, "", ""};
}
Error bad(const char* what, const char* remedy) { return {Code::bad_input, what, "", remedy}; }

bool is_sha256(TS_MSG_IMPRINT* imprint) {
  const ASN1_OBJECT* object = nullptr;
  X509_ALGOR_get0(&object, nullptr, nullptr, TS_MSG_IMPRINT_get_algo(imprint));
  return OBJ_obj2nid(object) == NID_sha256;
}

std::optional<Bytes> hash_in(TS_MSG_IMPRINT* imprint) {
  const ASN1_OCTET_STRING* const text = TS_MSG_IMPRINT_get_msg(imprint);
  const unsigned char* const data = ASN1_STRING_get0_data(text);
  Bytes bytes(data, data + ASN1_STRING_length(text));
  if (!is_sha256(imprint) || bytes.size() != Hash{}.size()) return std::nullopt;
  return bytes;
}

Bytes hash_of(std::string_view note) {
  const Hash hash = sha256(note);
  return {hash.begin(), hash.end()};
}

// Its words, or nothing where it granted.
std::optional<std::string> declined(TS_RESP* response) {
  TS_STATUS_INFO* const info = TS_RESP_get_status_info(response);
  const std::int64_t status = ASN1_INTEGER_get(TS_STATUS_INFO_get0_status(info));
  if (status == TS_STATUS_GRANTED || status == TS_STATUS_GRANTED_WITH_MODS) return std::nullopt;
  std::string words = "status " + std::to_string(status);
  const auto* const texts = TS_STATUS_INFO_get0_text(info);
  for (int i = 0; i < sk_ASN1_UTF8STRING_num(texts); ++i) {
    const ASN1_UTF8STRING* const text = sk_ASN1_UTF8STRING_value(texts, i);
    words += ", \"" +
             std::string(reinterpret_cast<const char*>(ASN1_STRING_get0_data(text)),
                         static_cast<std::size_t>(ASN1_STRING_length(text))) +
             '"';
  }
  return words;
}

std::optional<std::int64_t> time_of(TS_RESP* response) {
  std::tm at{};
  if (ASN1_TIME_to_tm(TS_TST_INFO_get_time(TS_RESP_get_tst_info(response)), &at) != 1) {
    return std::nullopt;
  }
  return static_cast<std::int64_t>(timegm(&at));
}

// A token is judged as of its own time: it shall stand when its certificate has run out since.
void judge_at(Store& store, std::int64_t at_s) {
  X509_STORE_set_flags(store.get(), X509_V_FLAG_PARTIAL_CHAIN);
  X509_VERIFY_PARAM_set_time(X509_STORE_get0_param(store.get()), static_cast<std::time_t>(at_s));
}

TsVerify wanted(const Bytes& hash, TS_REQ* request) {
  TsVerify verify(request == nullptr ? TS_VERIFY_CTX_new()
                                     : TS_REQ_to_TS_VERIFY_CTX(request, nullptr));
  if (request == nullptr) {
    auto* const copy = static_cast<unsigned char*>(OPENSSL_memdup(hash.data(), hash.size()));
    TS_VERIFY_CTX_set_imprint(verify.get(), copy, static_cast<long>(hash.size()));
    TS_VERIFY_CTX_set_flags(verify.get(), TS_VFY_VERSION | TS_VFY_IMPRINT);
  }
  TS_VERIFY_CTX_add_flags(verify.get(), TS_VFY_SIGNATURE);
  return verify;
}

// The request is over this hash and has a nonce; else an answer to it proves less than it should.
std::optional<std::string> unfit(TS_REQ* request, const Bytes& hash) {
  if (hash_in(TS_REQ_get_msg_imprint(request)) != hash) return "its request is over another head";
  if (TS_REQ_get_nonce(request) == nullptr) return "its request has no nonce";
  return std::nullopt;
}

}  // namespace

Result<Bytes> time_stamp_request(std::string_view note, std::uint64_t nonce) {
  const TsRequest request(TS_REQ_new());
  const TsImprint imprint(TS_MSG_IMPRINT_new());
  const Algorithm sha256(X509_ALGOR_new());
  const Integer number(ASN1_INTEGER_new());
  Bytes hash = hash_of(note);
  X509_ALGOR_set0(sha256.get(), OBJ_nid2obj(NID_sha256), V_ASN1_NULL, nullptr);
  const bool made =
      TS_MSG_IMPRINT_set_algo(imprint.get(), sha256.get()) == 1 &&
      TS_MSG_IMPRINT_set_msg(imprint.get(), hash.data(), static_cast<int>(hash.size())) == 1 &&
      TS_REQ_set_version(request.get(), 1) == 1 &&
      TS_REQ_set_msg_imprint(request.get(), imprint.get()) == 1 &&
      ASN1_INTEGER_set_uint64(number.get(), nonce) == 1 &&
      TS_REQ_set_nonce(request.get(), number.get()) == 1 &&
      TS_REQ_set_cert_req(request.get(), 1) == 1;
  const int size = made ? i2d_TS_REQ(request.get(), nullptr) : 0;
  if (size <= 0) return Error{Code::io, "no request could be made: " + last_complaint(), "", ""};
  Bytes der(static_cast<std::size_t>(size));
  unsigned char* at = der.data();
  i2d_TS_REQ(request.get(), &at);
  return der;
}

std::string stamp_time(std::int64_t at_ms) { return rfc3339(at_ms).substr(0, 19) + 'Z'; }

Result<TimeStamp> check_time_stamp(std::string_view note, const Bytes* request,
                                   const Bytes& response) {
  const TsResponse answer = read_response(response);
  if (!answer) return bad("this is no answer of a time-stamp authority", "give its .tsr file");
  if (auto words = declined(answer.get())) {
    return Error{Code::refused, "the authority gave no time-stamp: " + *words, "", "ask again"};
  }
  TsRequest asked;
  const Bytes hash = hash_of(note);
  if (request != nullptr) {
    asked = read_request(*request);
    if (!asked) return bad("this is no time-stamp request", "give the .tsq file that was sent");
    if (const auto why = unfit(asked.get(), hash)) return forged(*why);
  }
  PKCS7* const token = TS_RESP_get_token(answer.get());
  if (token == nullptr) return forged("the answer has no token");
  if (stamped_hash(response) != hash) return forged("it is over something else than this head");
  X509* const signer = signer_of(token);
  if (signer == nullptr) return forged("its certificate is not in it");
  const auto at_s = time_of(answer.get());
  if (!at_s || *at_s < 0) return forged("its time cannot be read");
  Store store = store_of(signer);
  judge_at(store, *at_s);
  const TsVerify verify = wanted(hash, asked.get());
  TS_VERIFY_CTX_set_store(verify.get(), store.release());  // freed with it
  if (TS_RESP_verify_response(verify.get(), answer.get()) != 1) return forged(last_complaint());
  ERR_clear_error();
  return TimeStamp{*at_s * 1000, subject_of(signer)};
}

std::optional<Bytes> stamped_hash(const Bytes& response) {
  const TsResponse answer = read_response(response);
  if (!answer || TS_RESP_get_tst_info(answer.get()) == nullptr) return std::nullopt;
  return hash_in(TS_TST_INFO_get_msg_imprint(TS_RESP_get_tst_info(answer.get())));
}

std::optional<std::string> not_vouched(const Bytes& response, const std::string& authorities) {
  const TsResponse answer = read_response(response);
  std::size_t count = 0;
  Store store = read_store(authorities, count);
  const auto at_s = answer ? time_of(answer.get()) : std::nullopt;
  if (!store || !at_s) return "the authorities' certificates cannot be read";
  judge_at(store, *at_s);
  const bool led =
      TS_RESP_verify_signature(TS_RESP_get_token(answer.get()), nullptr, store.get(), nullptr) == 1;
  ERR_clear_error();
  if (led) return std::nullopt;
  return "its certificate leads to none of the authorities given";
}

Result<std::size_t> count_certificates(const std::string& pem) {
  std::size_t count = 0;
  if (read_store(pem, count)) return count;
  return bad("these are no certificates", "give a PEM file: BEGIN CERTIFICATE ... END CERTIFICATE");
}

}  // namespace walkdown::record
