// SPDX-License-Identifier: Apache-2.0
// What a person signs, in words and facts, made from the body of the entry alone. Whoever signs and
// whoever checks call the same function, so a note can vouch for nothing but its own entry.
#pragma once

#include <nlohmann/json.hpp>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "checklist/day/checklist.h"

namespace walkdown::day {

struct Statement {
  std::string text;  // after "I state: ", without the full stop
  std::vector<std::pair<std::string, std::string>> facts;
};

// Facts are the members of the body in order of name, '_' written as '-', but for `by`, `role`,
// `signoff` and what is empty: whole numbers and texts as they are, lists joined by ", ".
[[nodiscard]] Statement statement(const Checklist& checklist, std::string_view kind,
                                  const nlohmann::json& body);

}  // namespace walkdown::day
