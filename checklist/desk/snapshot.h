// SPDX-License-Identifier: Apache-2.0
// What a desk leaves beside its record when it ends, so that the next one need not fold all of it
// again: <record>.snapshot. The record is verified in full all the same; a snapshot whose head is
// not one of the record's, or that this station did not make, is not looked at.
//
// The file: "walkdown day 1\n\n", length of the payload (8 bytes), HMAC-SHA-512-256 of the payload
// under a key that only this station can derive (32 bytes), payload. Integers are little-endian.
#pragma once

#include <optional>
#include <string>

#include "checklist/record/merkle.h"
#include "checklist/record/signing_key.h"
#include "reader/result.h"

namespace walkdown::desk {

struct Snapshot {
  std::string origin;
  std::uint64_t size = 0;  // entries folded
  record::Hash root{};     // of the tree over them
  std::string folded;      // Folded::save()
};

[[nodiscard]] std::string snapshot_path(const std::string& record_path);

// Errors: io.
Done save_snapshot(const std::string& path, const Snapshot& snapshot,
                   const record::SigningKey& station);
// Nothing where there is none, or it is not whole, or not this station's.
std::optional<Snapshot> load_snapshot(const std::string& path, const record::SigningKey& station);

}  // namespace walkdown::desk
