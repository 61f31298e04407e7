// SPDX-License-Identifier: Apache-2.0
// What the program claimed of the field at one moment: counts of verdicts and the findings. A claim
// stands directly behind the readings it speaks of, so anyone can derive it again.
#pragma once

#include <cstddef>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>

#include "reader/match/outcome.h"

namespace walkdown::audit {

// So many findings are written out with their pins and their sentence; all are counted.
inline constexpr std::size_t kFindingsWritten = 500;

// {"verdicts":{"fits":430,...},"kinds":{"shifted":1,...},"findings":[{"kind":"shifted",
//  "pins":["M01/R1/P05",...],"by":1,"confidence_pct":98,"say":"..."}]}
[[nodiscard]] nlohmann::json claim_body(const match::Outcome& outcome);

// A sentence where the claim is not what `derived` says. Confidence and sentences may differ: they
// are the words of the program that wrote them.
[[nodiscard]] std::optional<std::string> check_claim(const nlohmann::json& body,
                                                     const match::Outcome& derived);

}  // namespace walkdown::audit
