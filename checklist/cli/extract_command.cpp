// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <memory>
#include <utility>

#include "checklist/check/take_extract.h"
#include "checklist/cli/commands.h"
#include "checklist/cli/files.h"
#include "checklist/cli/progress.h"

namespace walkdown::cli {
namespace {

struct ExtractArguments {
  std::string record;
  std::string out;
  std::vector<std::string> where;
  std::vector<std::string> withhold;
  bool withhold_names = false;
};

Status run(const ExtractArguments& arguments) {
  check::ExtractWish wish;
  for (const std::string& expression : arguments.where) {
    auto choice = check::Choice::parse(expression);
    if (!choice) return not_done(choice.error());
    wish.any_of.push_back(std::move(*choice));
  }
  wish.withhold = arguments.withhold;
  wish.withhold_everybody = arguments.withhold_names;
  Progress progress("read", arguments.record);
  record::VerifyOptions options;
  options.progress = [&](std::uint64_t bytes) { progress.at(bytes); };
  const auto extract = check::take_extract(arguments.record, std::move(wish), std::move(options));
  if (!extract) return not_done(extract.error());
  if (const Done kept = write_file(arguments.out, extract->text); !kept) {
    return not_done(kept.error());
  }
  fmt::print("{}: {} entries of {}, mark {}\n", arguments.out, extract->entries, arguments.record,
             extract->mark);
  if (extract->withheld > 0) {
    fmt::print(
        "{} chosen entries name somebody who is withheld, and are given as hashes.\n"
        "Read the extract before you give it away: people can be told without their names.\n",
        extract->withheld);
  }
  return Status::nothing_to_act_on;
}

}  // namespace

void add_extract(CLI::App& app, Run& chosen) {
  auto* command = app.add_subcommand(
      "extract", "Take entries out of a record, each with the proof that it stands there");
  auto arguments = std::make_shared<ExtractArguments>();
  command->add_option("RECORD", arguments->record, "The record")->required();
  command
      ->add_option(
          "--where", arguments->where,
          "Which entries: kind=..., person=..., position=..., pin=..., n=..., at=..., joined "
          "by `and`; given more than once, an entry is taken that fits any")
      ->required()
      ->allow_extra_args(false);
  command->add_option("-o,--output", arguments->out, "The file to write")->required();
  command
      ->add_option("--withhold", arguments->withhold,
                   "Nobody shall read this name: entries that name the person are given as hashes")
      ->allow_extra_args(false);
  command->add_flag("--withhold-names", arguments->withhold_names, "The same for everybody");
  command->footer(
      "Examples:\n"
      "  walkdown extract today.record --where 'kind=reading and pin=M01/R1/P05' -o pin.extract\n"
      "  walkdown extract today.record --where 'position=\"North bank\" and "
      "at=2026-07-04T18:00Z..2026-07-04T19:30Z' --withhold \"Mara Linde\" -o north.extract\n"
      "  walkdown verify north.extract --mark \"1a2b 3c4d 5e6f 7081\"");
  command->callback([arguments, &chosen] { chosen = [arguments] { return run(*arguments); }; });
}

}  // namespace walkdown::cli
