// SPDX-License-Identifier: Apache-2.0
#include "checklist/day/body.h"

#include <limits>

namespace walkdown::day {

std::string text_in(const nlohmann::json& body, const char* name) {
  if (!body.is_object()) return {};
  const auto found = body.find(name);
  return found != body.end() && found->is_string() ? found->get<std::string>() : std::string();
}

std::optional<std::int64_t> whole_in(const nlohmann::json& body, const char* name) {
  if (!body.is_object()) return std::nullopt;
  const auto found = body.find(name);
  if (found == body.end() || !found->is_number_integer()) return std::nullopt;
  if (found->is_number_unsigned() &&
      found->get<std::uint64_t>() > std::uint64_t{std::numeric_limits<std::int64_t>::max()}) {
    return std::nullopt;
  }
  return found->get<std::int64_t>();
}

std::vector<std::string> texts_in(const nlohmann::json& body, const char* name) {
  std::vector<std::string> texts;
  if (!body.is_object()) return texts;
  const auto found = body.find(name);
  if (found == body.end() || !found->is_array()) return texts;
  for (const nlohmann::json& each : *found) {
    if (each.is_string()) texts.push_back(each.get<std::string>());
  }
  return texts;
}

}  // namespace walkdown::day
