// SPDX-License-Identifier: Apache-2.0
// What a signed checkpoint of a record says, and what of it is kept to go on from there.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "checklist/record/merkle.h"
#include "checklist/record/times.h"
#include "checklist/record/vkey.h"

namespace walkdown::record {

// The state of a record at one of its checkpoints. A sign-off names such a head.
struct Head {
  std::string origin;
  std::uint64_t size = 0;  // entries
  Hash root{};
  std::int64_t at_ms = 0;  // of its last entry
  std::int64_t up_ms = 0;

  friend bool operator==(const Head&, const Head&) = default;
};

// Everything needed to append behind the last good checkpoint.
struct Sealed {
  std::string origin;
  std::vector<VerifyKey> stations;  // who may sign checkpoints: that of entry 0, and those enrolled
  Tree tree;
  Times times;
  bool closed = false;
  std::uint64_t bytes = 0;  // of the file, up to and with the LF of that checkpoint
  std::uint64_t lines = 0;
};

}  // namespace walkdown::record
