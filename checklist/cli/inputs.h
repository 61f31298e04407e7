// SPDX-License-Identifier: Apache-2.0
// The files that most commands take, read once and in one way.
#pragma once

#include <CLI/CLI.hpp>
#include <optional>
#include <string>

#include "checklist/audit/planned.h"
#include "checklist/show/show.h"

namespace walkdown::cli {

struct InputPaths {
  std::string plan;
  std::string columns;
  std::string igniters;
  std::string tester;
  std::string modules;
  std::optional<double> temp_degc;
};

enum class PlanAs { positional, option };
void add_inputs(CLI::App& command, InputPaths& paths, PlanAs plan_as);
void add_temperature(CLI::App& command, InputPaths& paths);

// The temperature, where one was given. usage: outside -60..80 degC.
Done put_temperature(const InputPaths& paths, show::Show& show);

// The files as a show. Errors: io; usage for a temperature outside -60..80 degC.
Result<show::Show> gather(const InputPaths& paths);

struct Inputs {
  show::Show show;  // complete: with the templates that were taken where no file was named
  audit::Planned planned;
};

// gather() and import. Writes every error, and every warning, to standard error as a sentence each.
std::optional<Inputs> load_inputs(const InputPaths& paths);

}  // namespace walkdown::cli
