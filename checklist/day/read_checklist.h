// SPDX-License-Identifier: Apache-2.0
// Reads a checklist from TOML (FORMAT.md). Every mistake is listed, each with its line.
#pragma once

#include <string_view>
#include <vector>

#include "checklist/day/checklist.h"
#include "reader/result.h"

namespace walkdown::day {

struct ChecklistRead {
  Checklist checklist;
  std::vector<Error> mistakes;  // usable only when there is none
};

// Besides what the format asks, these are mistakes: a word that says nothing ("ok", "n/a") among
// the choices; a confirm that nothing could refuse; a limit without a source; needs that run in a
// circle or forward past a pause; a killer item that is not asked again in the last stage before
// the release; broken_by, valid_for or second where nothing could come of them; an answer of the
// release that is valid for no longer than the show lasts.
[[nodiscard]] ChecklistRead read_checklist(std::string_view toml, std::string_view file_name);

}  // namespace walkdown::day
