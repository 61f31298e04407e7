// SPDX-License-Identifier: Apache-2.0
// The files of a whole show: those that inputs.h has, and site, checklist and distances; or all of
// them in one show file.
#pragma once

#include <CLI/CLI.hpp>
#include <string>

#include "checklist/cli/inputs.h"
#include "checklist/desk/prepared.h"

namespace walkdown::cli {

struct ShowPaths {
  InputPaths inputs;
  std::string show;  // a show file; the others replace what is in it
  std::string site;
  std::string checklist;  // a file, or the name of a template: evening-show, club-show, ...
  std::string distances;
};

void add_show_inputs(CLI::App& command, ShowPaths& paths);

// The files as they are, without the templates that fill the gaps. Errors: io, forged, bad_input.
Result<show::Show> gather_show(const ShowPaths& paths);

// prepare(), with every mistake and every warning on standard error.
std::optional<desk::Prepared> prepare_aloud(const show::Show& show);

}  // namespace walkdown::cli
