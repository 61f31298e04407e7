// SPDX-License-Identifier: Apache-2.0
// The signed head of a record, C2SP tlog-checkpoint: three lines, and no extension lines.
//   <origin>
//   <number of entries, decimal>
//   <base64 of the RFC 6962 root>
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "checklist/record/note.h"
#include "checklist/record/sha256.h"

namespace walkdown::record {

struct Checkpoint {
  std::string origin;  // printable UTF-8, no space, no plus; another for each record
  std::uint64_t size = 0;
  Hash root{};

  friend bool operator==(const Checkpoint&, const Checkpoint&) = default;
};

[[nodiscard]] std::string text(const Checkpoint& checkpoint);

// bad_input for anything that text() would not write.
[[nodiscard]] Result<Checkpoint> parse_checkpoint(std::string_view text);

}  // namespace walkdown::record
