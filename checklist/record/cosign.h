// SPDX-License-Identifier: Apache-2.0
// A witness signs a checkpoint on a machine of their own (C2SP tlog-cosignature, Ed25519), from a
// file or a QR code; the signature comes back, sooner or later, and becomes an entry `cosign`:
//   note      the checkpoint's text with the witness's signature line, and no other
//   to, path  that this record went through it (head_proof.h)
#pragma once

#include <cstdint>
#include <nlohmann/json.hpp>
#include <string>
#include <string_view>
#include <vector>

#include "checklist/record/checkpoint.h"
#include "checklist/record/head_proof.h"
#include "checklist/record/signing_key.h"

namespace walkdown::record {

// Signs the checkpoint of a signed note as a witness: what comes back is a note with the witness's
// line alone. `time_s`: seconds since 1970. The caller has checked the record up to it.
[[nodiscard]] Result<std::string> cosign(std::string_view checkpoint_note,
                                         const SigningKey& witness, std::int64_t time_s);

struct Cosigned {
  Note note;
  Checkpoint checkpoint;
  std::uint64_t time_s = 0;
  HeadProof proof;
};

// Takes the note apart; `proof` stays empty.
[[nodiscard]] Result<Cosigned> parse_cosigned(std::string_view note);
[[nodiscard]] Result<Cosigned> parse_cosign_body(const nlohmann::json& body);
[[nodiscard]] nlohmann::json cosign_body(std::string_view note, std::uint64_t to,
                                         const std::vector<Hash>& path);

// `key` of either type: the same 32 bytes sign notes under one id and cosign under another.
[[nodiscard]] bool is_cosigned_by(const Cosigned& cosigned, const VerifyKey& key);

}  // namespace walkdown::record
