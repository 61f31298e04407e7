// SPDX-License-Identifier: Apache-2.0
// walkdown show: a show's files in one file, for the way between office and field.
#include <fmt/format.h>

#include <filesystem>
#include <memory>

#include "checklist/cli/commands.h"
#include "checklist/cli/files.h"
#include "checklist/cli/show_inputs.h"
#include "checklist/show/archive.h"

namespace walkdown::cli {
namespace {

namespace fs = std::filesystem;

struct ShowArguments {
  ShowPaths paths;
  std::string file;
  std::string output;
};

void describe(const desk::Prepared& made) {
  for (const auto& file : made.show.files) {
    fmt::print("  {:<10} {} ({} bytes)\n", show::word(file.role), file.name, file.text.size());
  }
  fmt::print("{} pins are planned; the checklist is \"{}\".\n", made.planned.plan.pins.size(),
             made.checklist.name);
  if (made.site && !made.site->positions.empty()) {
    fmt::print("{} lies at {}: is that the place?\n", made.site->positions.front().name,
               zone::say_place(*made.site));
  }
  if (made.zone) fmt::print("Distances: {}.\n", desk::zone_facts(*made.zone).why);
}

Status outcome_of(const desk::Prepared& made) {
  return made.zone && !made.zone->holds() ? Status::act : Status::nothing_to_act_on;
}

Status pack(const ShowArguments& arguments) {
  const auto show = gather_show(arguments.paths);
  if (!show) return not_done(show.error());
  const auto made = prepare_aloud(*show);
  if (!made) return Status::not_done;
  const auto bytes = show::pack(made->show);
  if (!bytes) return not_done(bytes.error());
  if (const auto kept = write_file(arguments.output, *bytes); !kept) return not_done(kept.error());
  describe(*made);
  fmt::print("Packed into {} ({} bytes); open a day with: walkdown day open --record R --show {}\n",
             arguments.output, bytes->size(), arguments.output);
  return outcome_of(*made);
}

Status check(const ShowArguments& arguments) {
  ShowPaths paths = arguments.paths;
  if (paths.show.empty()) paths.show = arguments.file;
  const auto show = gather_show(paths);
  if (!show) return not_done(show.error());
  const auto made = prepare_aloud(*show);
  if (!made) return Status::not_done;
  describe(*made);
  fmt::print("Every file in it can be read.\n");
  return outcome_of(*made);
}

// Never over a file that is there: it might be the newer one.
Status unpack(const ShowArguments& arguments) {
  const auto bytes = read_file(arguments.file);
  if (!bytes) return not_done(bytes.error());
  const auto show = show::unpack(*bytes, base_name(arguments.file));
  if (!show) return not_done(show.error());
  const fs::path folder = arguments.output.empty() ? "." : arguments.output;
  std::error_code failed;
  for (const auto& file : show->files) {
    if (!fs::exists(folder / file.name, failed)) continue;
    return not_done({Code::refused, "there is a file of this name already",
                     (folder / file.name).string(), "name another folder with -o"});
  }
  fs::create_directories(folder, failed);
  for (const auto& file : show->files) {
    const std::string path = (folder / file.name).string();
    if (const auto kept = write_file(path, file.text); !kept) return not_done(kept.error());
    fmt::print("  {:<10} {}\n", show::word(file.role), path);
  }
  return Status::nothing_to_act_on;
}

}  // namespace

void add_show(CLI::App& app, Run& chosen) {
  auto* show = app.add_subcommand("show", "A show's files in one file");
  show->require_subcommand(1);
  auto arguments = std::make_shared<ShowArguments>();
  const auto runs = [&](CLI::App* command, Status (*run)(const ShowArguments&)) {
    command->callback(
        [arguments, &chosen, run] { chosen = [arguments, run] { return run(*arguments); }; });
  };
  show->footer(
      "Example: walkdown show pack --plan show.csv --site site.geojson "
      "--checklist evening-show -o show.walkdown");
  auto* pack_command = show->add_subcommand("pack", "Check the files and freeze them into one");
  add_show_inputs(*pack_command, arguments->paths);
  pack_command->add_option("-o,--output", arguments->output, "The show file")->required();
  pack_command->footer(
      "Example: walkdown show pack --plan show.csv --site site.geojson "
      "--checklist evening-show -o show.walkdown");
  runs(pack_command, pack);
  auto* unpack_command =
      show->add_subcommand("unpack", "Put the files of a show file into a folder");
  unpack_command->add_option("FILE", arguments->file, "The show file")->required();
  unpack_command->add_option("-o,--output", arguments->output, "The folder; default: this one");
  unpack_command->footer("Example: walkdown show unpack show.walkdown -o show-files");
  runs(unpack_command, unpack);
  auto* check_command = show->add_subcommand("check", "Whether every file of a show can be read");
  check_command->add_option("FILE", arguments->file, "A show file; default: the files named");
  add_show_inputs(*check_command, arguments->paths);
  check_command->footer("Example: walkdown show check show.walkdown");
  runs(check_command, check);
}

}  // namespace walkdown::cli
