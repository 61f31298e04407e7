// SPDX-License-Identifier: Apache-2.0
#include "checklist/show/show.h"

#include <algorithm>
#include <array>
#include <limits>
#include <utility>

namespace walkdown::show {
namespace {

constexpr std::array<std::string_view, kRoles> kWords = {
    "plan", "columns", "igniters", "tester", "modules", "site", "checklist", "distances"};
constexpr std::string_view kTemperature = "temp_milli_degc";

Error refused(std::string what, std::string where) {
  return Error{Code::bad_input, std::move(what), std::move(where),
               "the show in this record was not written by walkdown"};
}

Result<File> file_from(Role role, const nlohmann::json& json) {
  const std::string where(word(role));
  if (!json.is_object() || json.size() != 2 || !json.contains("name") || !json.contains("text")) {
    return refused("a file of the show needs a name and a text, and nothing else", where);
  }
  if (!json["name"].is_string() || !json["text"].is_string()) {
    return refused("name and text of a file of the show must be strings", where);
  }
  return File{role, json["name"].get<std::string>(), json["text"].get<std::string>()};
}

Result<std::int32_t> temperature_from(const nlohmann::json& json) {
  if (!json.is_number_integer())
    return refused("must be a whole number", std::string(kTemperature));
  const auto value = json.get<std::int64_t>();
  if (value < -100000 || value > 100000) {
    return refused("must lie between -100000 and 100000", std::string(kTemperature));
  }
  return static_cast<std::int32_t>(value);
}

}  // namespace

std::string_view word(Role role) { return kWords.at(static_cast<std::size_t>(role)); }

std::optional<Role> role_of(std::string_view word) {
  const auto* const found = std::find(kWords.begin(), kWords.end(), word);
  if (found == kWords.end()) return std::nullopt;
  return static_cast<Role>(found - kWords.begin());
}

const File* Show::find(Role role) const {
  const auto found =
      std::find_if(files.begin(), files.end(), [&](const File& file) { return file.role == role; });
  return found == files.end() ? nullptr : &*found;
}

void Show::put(File file) {
  const auto place = std::lower_bound(files.begin(), files.end(), file.role,
                                      [](const File& a, Role role) { return a.role < role; });
  if (place != files.end() && place->role == file.role) {
    *place = std::move(file);
  } else {
    files.insert(place, std::move(file));
  }
}

nlohmann::json to_json(const Show& show) {
  nlohmann::json json = nlohmann::json::object();
  for (const File& file : show.files) {
    json[std::string(word(file.role))] = {{"name", file.name}, {"text", file.text}};
  }
  if (show.temp_milli_degc) json[std::string(kTemperature)] = *show.temp_milli_degc;
  return json;
}

Result<Show> from_json(const nlohmann::json& json) {
  if (!json.is_object()) return refused("the show must be an object", "");
  Show show;
  for (const auto& [key, value] : json.items()) {
    if (key == kTemperature) {
      const auto temperature = temperature_from(value);
      if (!temperature) return temperature.error();
      show.temp_milli_degc = *temperature;
      continue;
    }
    const auto role = role_of(key);
    if (!role) return refused("the show has an unknown part", key);
    auto file = file_from(*role, value);
    if (!file) return file.error();
    show.put(std::move(file).value());
  }
  return show;
}

}  // namespace walkdown::show
