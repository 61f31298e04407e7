// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <memory>
#include <optional>
#include <utility>

#include "checklist/cli/after_text.h"
#include "checklist/cli/commands.h"
#include "checklist/cli/current_text.h"
#include "checklist/cli/files.h"
#include "checklist/cli/inputs.h"
#include "checklist/cli/match_text.h"
#include "checklist/cli/visits.h"
#include "reader/match/alike.h"
#include "reader/match/diagnose.h"

namespace walkdown::cli {
namespace {

struct MatchOptions {
  InputPaths inputs;
  std::string readings;
  bool after = false;
  std::string before;  // readings of the last sweep before the show
  std::string site;    // for the walking order
  std::string from;    // the position where the crew stands
  bool json = false;
};

Result<Sweep> sweep_of(const std::string& path, const tester::LineParser& parser) {
  const auto bytes = read_file(path);
  if (!bytes) return bytes.error();
  return read_sweep(*bytes, parser);
}

void print_text(const Inputs& inputs, const Sweep& sweep, const match::Outcome& outcome,
                const AlikeGroups& alike, const Currents& currents, const Visits& visits) {
  fmt::print("{}: {} pins planned, {} readings taken, {} lines rejected\n{}\n",
             inputs.show.find(show::Role::plan)->name, inputs.planned.plan.pins.size(),
             sweep.samples.size(), sweep.rejected.size(), verdict_counts(outcome));
  fmt::print("{}", tester_text(outcome.field));
  if (!outcome.findings.empty()) {
    fmt::print("\nWhat most likely happened\n{}", findings_text(outcome));
  }
  if (!visits.order.empty()) fmt::print("\n{}", visits_text(visits));
  const std::string wrong = wrong_pins_text(outcome);
  if (!wrong.empty()) fmt::print("\nPins that do not fit\n{}", wrong);
  fmt::print("\nFiring current\n{}", currents_text(currents));
  if (!sweep.rejected.empty()) fmt::print("\nLines rejected\n{}", rejected_text(sweep.rejected));
  if (!alike.empty()) {
    fmt::print("\nElectrically alike: a swap inside a group cannot show; check these by eye\n{}",
               alike_text(alike));
  }
}

Status run_after(const MatchOptions& options, const Inputs& inputs, const Sweep& now,
                 const tester::LineParser& parser) {
  Sweep before;
  if (!options.before.empty()) {
    auto read = sweep_of(options.before, parser);
    if (!read) return not_done(read.error());
    before = std::move(read).value();
  }
  const auto after = match::after_show(inputs.planned.plan, inputs.planned.tester.model,
                                       before.samples, now.samples);
  fmt::print("{}", options.json ? after_json(after) : after_text(after));
  return after.possible_misfires.empty() ? Status::nothing_to_act_on : Status::act;
}

Status run_match(const MatchOptions& options, const Inputs& inputs, const Sweep& sweep) {
  match::Options how;
  how.layout_known = inputs.show.find(show::Role::modules) != nullptr;
  const auto outcome =
      match::diagnose(inputs.planned.plan, inputs.planned.tester.model, sweep.samples, how);
  const AlikeGroups alike = match::alike(inputs.planned.plan);
  const Currents currents = currents_of(inputs.planned.plan, &outcome);
  std::optional<zone::Site> site;
  if (!options.site.empty()) {
    site = site_aloud(options.site);
    if (!site) return Status::not_done;
  }
  const Visits visits =
      visits_of(inputs.planned.plan, outcome, site ? &*site : nullptr, options.from);
  if (options.json) {
    const std::string more =
        fmt::format(R"(,"current":{},"walk":{})", currents_json(currents), visits_json(visits));
    fmt::print("{}", match_json(outcome, alike, sweep.rejected, more));
  } else {
    print_text(inputs, sweep, outcome, alike, currents, visits);
  }
  return to_act_on(outcome) || currents.to_act_on() ? Status::act : Status::nothing_to_act_on;
}

Status run(const MatchOptions& options) {
  if (!options.before.empty() && !options.after) {
    return not_done({Code::usage, "--before is for a sweep after the show", "", "add --after"});
  }
  const auto inputs = load_inputs(options.inputs);
  if (!inputs) return Status::not_done;
  const auto parser = tester::LineParser::make(inputs->planned.tester);
  if (!parser) return not_done(parser.error());
  const auto sweep = sweep_of(options.readings, *parser);
  if (!sweep) return not_done(sweep.error());
  return options.after ? run_after(options, *inputs, *sweep, *parser)
                       : run_match(options, *inputs, *sweep);
}

}  // namespace

void add_match(CLI::App& app, Run& chosen) {
  auto* command = app.add_subcommand("match", "Judge a sweep of readings against the plan");
  auto options = std::make_shared<MatchOptions>();
  add_inputs(*command, options->inputs, PlanAs::positional);
  add_temperature(*command, options->inputs);
  command->add_option("READINGS", options->readings, "Tester lines; - for standard input")
      ->required();
  command->add_flag("--after", options->after,
                    "READINGS are from after the show: what may not have fired");
  command->add_option("--before", options->before, "With --after: the last sweep before the show");
  command->add_option("--site", options->site, "Positions on the ground (GeoJSON): walking order");
  command->add_option("--from", options->from, "The position where the crew stands");
  command->add_flag("--json", options->json, "One JSON object instead of text");
  command->footer(
      "Example: walkdown match show.csv sweep.txt --igniters igniters.toml --temp 14\n"
      "After the show: walkdown match show.csv after.txt --after --before sweep.txt");
  command->callback([options, &chosen] { chosen = [options] { return run(*options); }; });
}

}  // namespace walkdown::cli
