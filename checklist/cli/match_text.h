// SPDX-License-Identifier: Apache-2.0
// What a diagnosis says, for a person: findings first, then the pins, then what it cannot say.
#pragma once

#include <span>
#include <string>

#include "checklist/cli/match_json.h"

namespace walkdown::cli {

// True where somebody has to act: a pin that does not fit, or a finding about the field.
[[nodiscard]] bool to_act_on(const match::Outcome& outcome);

[[nodiscard]] std::string verdict_counts(const match::Outcome& outcome);
// A line about the tester itself, empty where its repeats are as calm as its profile says.
[[nodiscard]] std::string tester_text(const match::FieldFit& field);
[[nodiscard]] std::string findings_text(const match::Outcome& outcome);
[[nodiscard]] std::string wrong_pins_text(const match::Outcome& outcome, std::size_t most = 40);
[[nodiscard]] std::string rejected_text(std::span<const RejectedLine> rejected,
                                        std::size_t most = 10);
[[nodiscard]] std::string alike_text(const AlikeGroups& alike, std::size_t most = 10);

}  // namespace walkdown::cli
