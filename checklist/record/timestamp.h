// SPDX-License-Identifier: Apache-2.0
// A time-stamp of RFC 3161: an authority signs that it was shown a hash at a time. What is hashed
// (SHA-256) is a signed checkpoint, the whole note as it stands in the record, so that
// `openssl ts -query -data head.note -sha256` asks for the same. Requests and answers are DER, the
// bytes of the files .tsq and .tsr that the openssl command writes and reads.
//
// A token is checked against the certificate inside it: it is that certificate's, which is one for
// time-stamps and nothing else and was valid at that time. Whose certificate it is, no token can
// say; not_vouched() asks it of certificates that the reader trusts.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "checklist/record/base64.h"
#include "reader/result.h"

namespace walkdown::record {

// A question for an authority; its certificate is to come with the answer. `nonce`: chance, so that
// an older answer cannot pass for the answer to this. io where OpenSSL refuses.
[[nodiscard]] Result<Bytes> time_stamp_request(std::string_view note, std::uint64_t nonce);

struct TimeStamp {
  std::int64_t at_ms = 0;  // the authority's time, UTC, to the second
  std::string authority;   // the subject of its certificate, as RFC 4514 writes it
};

// "2026-07-04T19:02:11Z": no authority is nearer than a second.
[[nodiscard]] std::string stamp_time(std::int64_t at_ms);

// forged unless `response` grants a token over this note, rightly signed, and (where there is a
// request) answers this request; bad_input where one of them is no DER of its kind; refused where
// the authority declined, with its own words.
[[nodiscard]] Result<TimeStamp> check_time_stamp(std::string_view note, const Bytes* request,
                                                 const Bytes& response);

// The 32 bytes that the answer's token is over. Nothing where there is no token, or another hash.
[[nodiscard]] std::optional<Bytes> stamped_hash(const Bytes& response);

// Why the certificate in the token leads to none of `authorities` (PEM) at the token's time;
// nothing where it does. Precondition: check_time_stamp() found it good.
[[nodiscard]] std::optional<std::string> not_vouched(const Bytes& response,
                                                     const std::string& authorities);

// How many certificates a PEM text has. bad_input where it has none, or one cannot be read.
[[nodiscard]] Result<std::size_t> count_certificates(const std::string& pem);

}  // namespace walkdown::record
