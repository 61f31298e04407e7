// SPDX-License-Identifier: Apache-2.0
// One function a command: it adds the command and its options, and what runs when it was chosen.
#pragma once

#include <CLI/CLI.hpp>
#include <functional>

#include "checklist/cli/status.h"

namespace walkdown::cli {

using Run = std::function<Status()>;

// `chosen` is set when the command was given.
void add_plan(CLI::App& app, Run& chosen);
void add_match(CLI::App& app, Run& chosen);
void add_read(CLI::App& app, Run& chosen);
void add_simulate(CLI::App& app, Run& chosen);
void add_demo(CLI::App& app, Run& chosen);
void add_crew(CLI::App& app, Run& chosen);
void add_show(CLI::App& app, Run& chosen);
void add_day(CLI::App& app, Run& chosen);
void add_verify(CLI::App& app, Run& chosen);
void add_report(CLI::App& app, Run& chosen);
void add_extract(CLI::App& app, Run& chosen);
void add_export(CLI::App& app, Run& chosen);

}  // namespace walkdown::cli
