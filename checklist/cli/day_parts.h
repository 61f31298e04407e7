// SPDX-License-Identifier: Apache-2.0
// The parts of `walkdown day`, one file a subject.
#pragma once

#include <CLI/CLI.hpp>
#include <memory>
#include <string>
#include <utility>

#include "checklist/cli/commands.h"
#include "checklist/cli/day_desk.h"

namespace walkdown::cli {

void add_day_look(CLI::App& day, Run& chosen);        // open, status, plan, close, note
void add_day_people(CLI::App& day, Run& chosen);      // enrol, in, out, tag
void add_day_items(CLI::App& day, Run& chosen);       // show-time, answer, second, pause
void add_day_weather(CLI::App& day, Run& chosen);     // wind, thunder
void add_day_keys(CLI::App& day, Run& chosen);        // key
void add_day_stops(CLI::App& day, Run& chosen);       // hold, lift, release, withdraw
void add_day_faults(CLI::App& day, Run& chosen);      // waive, waive-pin, rehook
void add_day_witness(CLI::App& day, Run& chosen);     // witness
void add_day_time_stamp(CLI::App& day, Run& chosen);  // time-stamp

// One command with arguments of its own; `run` is called when it was chosen.
template <typename Arguments>
CLI::App* add_part(CLI::App& parent, const char* name, const char* help, const char* example,
                   Run& chosen, std::shared_ptr<Arguments> arguments,
                   Status (*run)(const Arguments&)) {
  CLI::App* command = parent.add_subcommand(name, help);
  command->footer(std::string("Example: walkdown ") + example);
  command->callback(
      [arguments, run, &chosen] { chosen = [arguments, run] { return run(*arguments); }; });
  return command;
}

}  // namespace walkdown::cli
