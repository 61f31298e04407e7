// SPDX-License-Identifier: Apache-2.0
#include "gui/app/opening.h"

#include <unistd.h>

#include <array>

#include "checklist/desk/crew.h"
#include "checklist/record/keys.h"

namespace walkdown::gui {
namespace {

std::string station_name() {
  std::array<char, 256> name{};
  if (gethostname(name.data(), name.size() - 1) != 0 || !record::is_key_name(name.data())) {
    return "station";
  }
  return name.data();
}

}  // namespace

Result<desk::Desk> open_record(const std::string& path, const std::optional<show::Show>& show,
                               const Places& places, const record::Clock& clock) {
  const auto key = record::station_key(
      places.station_key.empty() ? record::default_station_path() : places.station_key,
      station_name());
  if (!key) return key.error();
  return desk::Desk::open(path, show, *key, clock);
}

desk::Crew crew_of(const Places& places) {
  return desk::Crew(places.crew.empty() ? desk::Crew::default_folder() : places.crew);
}

}  // namespace walkdown::gui
