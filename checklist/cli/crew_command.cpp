// SPDX-License-Identifier: Apache-2.0
// walkdown crew: the keys of people.
#include <fmt/format.h>

#include <memory>

#include "checklist/cli/commands.h"
#include "checklist/cli/files.h"
#include "checklist/cli/passphrase.h"
#include "checklist/desk/crew.h"

namespace walkdown::cli {
namespace {

struct CrewArguments {
  std::string folder;
  std::string name;
  std::string passphrase_file;
  std::string output = "-";
};

desk::Crew crew_of(const CrewArguments& arguments) {
  return desk::Crew(arguments.folder.empty() ? desk::Crew::default_folder() : arguments.folder);
}

Status add_member(const CrewArguments& arguments) {
  const desk::Crew crew = crew_of(arguments);
  const auto secret = passphrase(arguments.passphrase_file, arguments.name, Ask::twice);
  if (!secret) return not_done(secret.error());
  const auto member = crew.add(arguments.name, secret->text());
  if (!member) return not_done(member.error());
  fmt::print(
      "{} has a key now, in {}\nIts public half is\n  {}\nThe passphrase is nowhere else: whoever "
      "forgets it needs a new key under another name.\n",
      member->name, crew.path_of(member->name), record::text(member->key));
  return Status::nothing_to_act_on;
}

Status list_members(const CrewArguments& arguments) {
  const desk::Crew crew = crew_of(arguments);
  const auto all = crew.list();
  if (all.empty()) fmt::print("No keys in {}; make one with: walkdown crew add\n", crew.folder());
  for (const auto& member : all) {
    fmt::print("{:<24} {}\n", member.name, record::text(member.key));
  }
  return Status::nothing_to_act_on;
}

// One vkey a line: what `verify --keys` reads.
Status export_keys(const CrewArguments& arguments) {
  const desk::Crew crew = crew_of(arguments);
  std::string text;
  if (arguments.name.empty()) {
    for (const auto& member : crew.list()) text += record::text(member.key) + '\n';
  } else {
    const auto member = crew.find(arguments.name);
    if (!member) return not_done(member.error());
    text = record::text(member->key) + '\n';
  }
  if (arguments.output == "-") {
    fmt::print("{}", text);
  } else if (const auto written = write_file(arguments.output, text); !written) {
    return not_done(written.error());
  }
  return Status::nothing_to_act_on;
}

}  // namespace

void add_crew(CLI::App& app, Run& chosen) {
  auto* crew = app.add_subcommand("crew", "Keys of people, each under its own passphrase");
  crew->require_subcommand(1);
  crew->footer("Example: walkdown crew add \"Mara Linde\"");
  auto arguments = std::make_shared<CrewArguments>();
  const auto with_folder = [&](CLI::App* command, Status (*run)(const CrewArguments&)) {
    command->add_option("--dir", arguments->folder,
                        "Where the keys are; default: your data folder");
    command->callback(
        [arguments, &chosen, run] { chosen = [arguments, run] { return run(*arguments); }; });
  };
  auto* add = crew->add_subcommand("add", "Make a key for a person");
  add->add_option("NAME", arguments->name, "The person's name, as it stands in the record")
      ->required();
  add->add_option("--passphrase-file", arguments->passphrase_file,
                  "Its first line is the passphrase; default: typed at the terminal, twice");
  add->footer("Example: walkdown crew add \"Mara Linde\"");
  with_folder(add, add_member);
  auto* list = crew->add_subcommand("list", "Who has a key here");
  list->footer("Example: walkdown crew list");
  with_folder(list, list_members);
  auto* out = crew->add_subcommand("export", "The public keys, for whoever checks a record");
  out->add_option("NAME", arguments->name, "One person; default: everybody");
  out->add_option("-o,--output", arguments->output, "Where to; default: standard output");
  out->footer(
      "Example: walkdown crew export -o crew.keys, and then: walkdown verify R --keys crew.keys");
  with_folder(out, export_keys);
}

}  // namespace walkdown::cli
