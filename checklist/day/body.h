// SPDX-License-Identifier: Apache-2.0
// Values out of the body of an entry, which may hold anything. Internal to this folder.
#pragma once

#include <cstdint>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

namespace walkdown::day {

// Empty where the member is missing or no text.
[[nodiscard]] std::string text_in(const nlohmann::json& body, const char* name);
[[nodiscard]] std::optional<std::int64_t> whole_in(const nlohmann::json& body, const char* name);
// The texts of an array; others in it are passed over.
[[nodiscard]] std::vector<std::string> texts_in(const nlohmann::json& body, const char* name);

}  // namespace walkdown::day
