// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <memory>

#include "checklist/cli/commands.h"
#include "checklist/cli/files.h"
#include "checklist/cli/inputs.h"
#include "checklist/cli/match_text.h"
#include "reader/match/alike.h"
#include "reader/match/diagnose.h"

namespace walkdown::cli {
namespace {

struct MatchOptions {
  InputPaths inputs;
  std::string readings;
  bool json = false;
};

void print_text(const Inputs& inputs, const Sweep& sweep, const match::Outcome& outcome,
                const AlikeGroups& alike) {
  fmt::print("{}: {} pins planned, {} readings taken, {} lines rejected\n{}\n",
             inputs.show.find(show::Role::plan)->name, inputs.planned.plan.pins.size(),
             sweep.samples.size(), sweep.rejected.size(), verdict_counts(outcome));
  if (!outcome.findings.empty()) {
    fmt::print("\nWhat most likely happened\n{}", findings_text(outcome));
  }
  const std::string wrong = wrong_pins_text(outcome);
  if (!wrong.empty()) fmt::print("\nPins that do not fit\n{}", wrong);
  if (!sweep.rejected.empty()) fmt::print("\nLines rejected\n{}", rejected_text(sweep.rejected));
  if (!alike.empty()) {
    fmt::print("\nElectrically alike: a swap inside a group cannot show; check these by eye\n{}",
               alike_text(alike));
  }
}

Status run(const MatchOptions& options) {
  const auto inputs = load_inputs(options.inputs);
  if (!inputs) return Status::not_done;
  const auto bytes = read_file(options.readings);
  if (!bytes) return not_done(bytes.error());
  const auto parser = tester::LineParser::make(inputs->planned.tester);
  if (!parser) return not_done(parser.error());
  const Sweep sweep = read_sweep(*bytes, *parser);
  const plan::Plan& plan = inputs->planned.plan;
  match::Options how;
  how.layout_known = inputs->show.find(show::Role::modules) != nullptr;
  const auto outcome = match::diagnose(plan, inputs->planned.tester.model, sweep.samples, how);
  const AlikeGroups alike = match::alike(plan);
  if (options.json) {
    fmt::print("{}", match_json(outcome, alike, sweep.rejected));
  } else {
    print_text(*inputs, sweep, outcome, alike);
  }
  return to_act_on(outcome) ? Status::act : Status::nothing_to_act_on;
}

}  // namespace

void add_match(CLI::App& app, Run& chosen) {
  auto* command = app.add_subcommand("match", "Judge a sweep of readings against the plan");
  auto options = std::make_shared<MatchOptions>();
  add_inputs(*command, options->inputs, PlanAs::positional);
  add_temperature(*command, options->inputs);
  command->add_option("READINGS", options->readings, "Tester lines; - for standard input")
      ->required();
  command->add_flag("--json", options->json, "One JSON object instead of text");
  command->footer("Example: walkdown match show.csv sweep.txt --igniters igniters.toml --temp 14");
  command->callback([options, &chosen] { chosen = [options] { return run(*options); }; });
}

}  // namespace walkdown::cli
