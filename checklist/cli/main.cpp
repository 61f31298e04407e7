// SPDX-License-Identifier: Apache-2.0
// walkdown: reads and records. It never fires, arms or transmits.
#include <CLI/CLI.hpp>
#include <exception>

#include "checklist/cli/commands.h"

namespace {

using walkdown::cli::Status;

// The command that was given last, of those that are a group of others.
const CLI::App& last_group(const CLI::App& app) {
  const auto given = app.get_subcommands();
  return given.empty() ? app : last_group(*given.front());
}

// Which words there are, where one of them is missing or wrong.
std::string choices(const CLI::App& app) {
  std::string group = app.get_name();
  for (const CLI::App* up = app.get_parent(); up != nullptr; up = up->get_parent()) {
    group.insert(0, up->get_name() + ' ');
  }
  std::string list;
  for (const CLI::App* each : app.get_subcommands([](const CLI::App*) { return true; })) {
    list += (list.empty() ? "" : ", ") + each->get_name();
  }
  const auto rest = app.remaining(true);
  const std::string what =
      rest.empty() ? group + " needs a command" : group + " has no command \"" + rest.front() + '"';
  return what + "; choose one of: " + list + '.';
}

// As CLI11 says it, but for a missing command.
int say(const CLI::App& app, const CLI::ParseError& error) {
  const CLI::App& group = last_group(app);
  const bool missing = group.get_require_subcommand_min() > 0 && group.get_subcommands().empty();
  if (error.get_exit_code() == 0 || !missing) return app.exit(error);
  walkdown::cli::complain(choices(group));
  return error.get_exit_code();
}

Status run(int argc, char** argv) {
  CLI::App app{
      "Proves the wiring of an electrically fired display, and keeps the record of it.\n"
      "It reads and records; it never fires, arms or transmits.",
      "walkdown"};
  app.require_subcommand(1);
  app.set_version_flag("--version", "walkdown 0.1.0");
  app.footer("Exit status: 0 nothing to act on, 1 something to act on, 2 could not be done.");
  walkdown::cli::Run chosen;
  for (auto* add :
       {walkdown::cli::add_plan, walkdown::cli::add_match, walkdown::cli::add_read,
        walkdown::cli::add_simulate, walkdown::cli::add_demo, walkdown::cli::add_crew,
        walkdown::cli::add_show, walkdown::cli::add_day, walkdown::cli::add_verify,
        walkdown::cli::add_report, walkdown::cli::add_export, walkdown::cli::add_extract}) {
    add(app, chosen);
  }
  try {
    app.parse(argc, argv);
  } catch (const CLI::ParseError& error) {
    return say(app, error) == 0 ? Status::nothing_to_act_on : Status::not_done;
  }
  const Status status = chosen();
  if (walkdown::cli::flush_output()) return status;
  walkdown::cli::complain("Standard output took not all of it; look for a full disk.");
  return Status::not_done;
}

}  // namespace

int main(int argc, char** argv) {
  try {
    return static_cast<int>(run(argc, argv));
  } catch (const std::exception& error) {
    // Only what no part could foresee comes here: memory, most likely.
    walkdown::cli::complain(std::string("Gave up: ") + error.what() + ".");
    return static_cast<int>(Status::not_done);
  }
}
