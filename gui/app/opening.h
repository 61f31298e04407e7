// SPDX-License-Identifier: Apache-2.0
// A desk for the window: a record gone on with, a new one, or the demo's.
#pragma once

#include <memory>
#include <string>

#include "checklist/desk/crew.h"
#include "checklist/desk/desk.h"
#include "checklist/show/show.h"

namespace walkdown::gui {

// Where things are on this computer.
struct Places {
  std::string station_key;  // empty: the default of record/keys.h
  std::string crew;         // empty: the default of desk/crew.h
};

// `clock` outlives the desk. Errors: as desk::Desk::open.
[[nodiscard]] Result<desk::Desk> open_record(const std::string& path,
                                             const std::optional<show::Show>& show,
                                             const Places& places, const record::Clock& clock);
[[nodiscard]] desk::Crew crew_of(const Places& places);

}  // namespace walkdown::gui
