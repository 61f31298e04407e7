// SPDX-License-Identifier: Apache-2.0
// An extract: chosen entries of a record, each with the proof that it stands there, so that they
// can be checked without the rest. FORMAT.md section 8 has the form:
//   {"extract":1,"checkpoint":"<signed note>","station":"<vkey>"}
//   {"path":["<base64>",...]}
//   <entry line, byte for byte>, or {"withheld":<n>,"leaf":"<base64>"}
//   ...
// An entry is proved by the hash of all its bytes: nothing inside it can be blacked out. So an
// entry that names somebody who is not to be named is given as its hash alone, and only that it is
// there stays provable.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "checklist/record/checkpoint.h"
#include "checklist/record/line.h"
#include "checklist/record/vkey.h"
#include "checklist/record/whole_tree.h"
#include "reader/result.h"

namespace walkdown::record {

inline constexpr std::string_view kExtractBegins = "{\"extract\":";

struct ExtractHead {
  std::string checkpoint;  // the signed note
  VerifyKey station;       // whose signature it bears
};

struct ProofLine {
  std::vector<Hash> path;
};

struct WithheldLine {
  std::uint64_t n = 0;
  Hash leaf{};
};

[[nodiscard]] std::string extract_head_line(const ExtractHead& head);
[[nodiscard]] std::string proof_line(const ProofLine& proof);
[[nodiscard]] std::string withheld_line(const WithheldLine& withheld);

// bad_input for what the functions above would not write, byte for byte.
[[nodiscard]] Result<ExtractHead> parse_extract_head(std::string_view line);
[[nodiscard]] Result<ProofLine> parse_proof_line(std::string_view line);
[[nodiscard]] Result<WithheldLine> parse_withheld_line(std::string_view line);

// Entry lines by number; nothing in place of the line: withheld.
using Chosen = std::map<std::uint64_t, std::optional<std::string>>;

// The whole file. Precondition: the head's checkpoint is over `tree`, and every number is below its
// size.
[[nodiscard]] std::string extract_text(const ExtractHead& head, const WholeTree& tree,
                                       const Chosen& chosen);

}  // namespace walkdown::record
