// SPDX-License-Identifier: Apache-2.0
// A small record with one of everything, and the means to make forgeries of it.
#pragma once

#include <string>
#include <vector>

#include "checklist/record/signoff.h"
#include "checklist/record/writer.h"
#include "tests/record/scratch.h"

namespace walkdown::record::test {

[[nodiscard]] Person lead_person();
[[nodiscard]] Person witness_person();

// What the lead says of the field at this head.
[[nodiscard]] SignOff field_clear(const Head& head, std::int64_t at_ms);
[[nodiscard]] std::string signed_by_lead(const SignOff& sign_off);

// open | enrol lead, witness | two readings, a rejected line | sign-off | cosignature | close.
[[nodiscard]] std::string sample_record();

// Entries sealed one commit each, by whoever holds the station's key: a record with every hash and
// every signature right, whatever the entries say.
[[nodiscard]] std::string resealed(const std::vector<std::vector<std::string>>& commits,
                                   const std::string& origin, const SigningKey& station);

[[nodiscard]] std::vector<std::string> lines_of(const std::string& text);
[[nodiscard]] std::string text_of(const std::vector<std::string>& lines);
// The entry lines between the checkpoints.
[[nodiscard]] std::vector<std::vector<std::string>> commits_of(const std::string& text);

}  // namespace walkdown::record::test
