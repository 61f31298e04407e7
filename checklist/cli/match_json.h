// SPDX-License-Identifier: Apache-2.0
// The JSON object of `match --json`. Its members are a contract: outside checks read them.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "checklist/cli/sweep_file.h"
#include "reader/match/outcome.h"

namespace walkdown::cli {

using AlikeGroups = std::vector<std::vector<plan::PinId>>;

// `more`: further members, beside the contract's, each with a comma before it.
[[nodiscard]] std::string match_json(const match::Outcome& outcome, const AlikeGroups& alike,
                                     std::span<const RejectedLine> rejected,
                                     std::string_view more = "");

// A string as JSON writes it; bytes that are not UTF-8 become U+FFFD.
[[nodiscard]] std::string json_string(std::string_view text);
// A list of such strings.
[[nodiscard]] std::string json_list(std::span<const std::string> texts);

}  // namespace walkdown::cli
