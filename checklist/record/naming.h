// SPDX-License-Identifier: Apache-2.0
// Whether an entry names somebody: what decides which entries an extract withholds. It errs to the
// side of withholding.
#pragma once

#include <nlohmann/json.hpp>
#include <string>
#include <string_view>
#include <vector>

#include "checklist/record/signoff.h"

namespace walkdown::record {

// Whether `phrase` stands in the text as words of its own, capitals (of ASCII) or not. Letters,
// digits and every byte beyond ASCII belong to a word: "Jon" is in "Jon_Weir" and not in "Jonas".
[[nodiscard]] bool has_phrase(std::string_view text, std::string_view phrase);

// Whether any string of the value, a key of an object too, has one of the phrases.
[[nodiscard]] bool says(const nlohmann::json& value, const std::vector<std::string>& phrases);

// What a person may be called by: the name, each part of it of three bytes or more, and the names
// of their keys. `people`: all that the record has enrolled.
[[nodiscard]] std::vector<std::string> phrases_of(std::string_view name,
                                                  const std::vector<Person>& people);

}  // namespace walkdown::record
