// SPDX-License-Identifier: Apache-2.0
// How an entry that speaks of an older checkpoint shows that this record went through it:
//   to    number of entries of a recent checkpoint
//   path  RFC 6962 consistency proof from the older checkpoint to that one, in base64
// The proof lets a verifier that keeps only recent heads check a checkpoint of any age.
#pragma once

#include <cstdint>
#include <nlohmann/json.hpp>
#include <vector>

#include "checklist/record/checkpoint.h"
#include "checklist/record/head.h"
#include "checklist/record/merkle.h"

namespace walkdown::record {

struct HeadProof {
  std::uint64_t to = 0;
  std::vector<Hash> path;
};

// bad_input where `to` or `path` is missing or of another form.
[[nodiscard]] Result<HeadProof> parse_head_proof(const nlohmann::json& body);
void add_head_proof(const HeadProof& proof, nlohmann::json& body);

// Whether `head`, which is that of `proof.to` entries, goes on from the checkpoint.
[[nodiscard]] bool leads_to(const Checkpoint& checkpoint, const HeadProof& proof, const Head& head);

}  // namespace walkdown::record
