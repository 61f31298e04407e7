// SPDX-License-Identifier: Apache-2.0
// Writes a JSON value in the canonical spelling of canonical.h.
#pragma once

#include <nlohmann/json.hpp>
#include <string>
#include <string_view>

#include "reader/result.h"

namespace walkdown::record {

// Appends the value's text to `out`. bad_input, with the path inside the value, for what a record
// does not hold: a floating-point number, a whole number beyond 2^53 - 1, a string that is not
// UTF-8, more than kMaxDepth levels, binary. `out` is then of no use.
Done append_json(const nlohmann::json& value, std::string& out);

// Appends a string with its quotes. Precondition: is_utf8(text).
void append_string(std::string_view text, std::string& out);

// Precondition: is_canonical(text). Nothing throws, nothing is rounded.
[[nodiscard]] nlohmann::json parse_canonical(std::string_view text);

}  // namespace walkdown::record
