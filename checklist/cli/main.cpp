// SPDX-License-Identifier: Apache-2.0
// walkdown: reads and records. It never fires, arms or transmits.
#include <CLI/CLI.hpp>
#include <exception>

#include "checklist/cli/commands.h"

namespace {

using walkdown::cli::Status;

Status run(int argc, char** argv) {
  CLI::App app{
      "Proves the wiring of an electrically fired display, and keeps the record of it.\n"
      "It reads and records; it never fires, arms or transmits."};
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
    return app.exit(error) == 0 ? Status::nothing_to_act_on : Status::not_done;
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
