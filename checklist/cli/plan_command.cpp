// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <memory>

#include "checklist/cli/commands.h"
#include "checklist/cli/inputs.h"
#include "checklist/cli/match_text.h"
#include "reader/match/alike.h"
#include "reader/match/band.h"
#include "reader/match/test_current.h"

namespace walkdown::cli {
namespace {

struct PlanArguments {
  InputPaths inputs;
  bool json = false;
};

void print_json(const audit::Planned& planned, const AlikeGroups& alike) {
  std::string pins;
  for (const auto& pin : planned.plan.pins) {
    const auto band = match::shown_band(pin.load, planned.plan.catalogue, planned.tester.model);
    pins += fmt::format(
        R"({}{{"pin":"{}","cue":{},"low":{:.4f},"high":{:.4f},"mean":{:.4f},"u":{:.4f}}})",
        pins.empty() ? "" : ",", plan::text(pin.id), json_string(pin.cue), band.worst.lo,
        band.worst.hi, band.mean_ohm, band.u_ohm);
  }
  std::string groups;
  for (const auto& group : alike) {
    std::string members;
    for (const auto pin : group) {
      members += fmt::format("{}\"{}\"", members.empty() ? "" : ",", plan::text(pin));
    }
    groups += fmt::format("{}[{}]", groups.empty() ? "" : ",", members);
  }
  fmt::print("{{\"pins\":[{}],\"alike\":[{}]}}\n", pins, groups);
}

void print_text(const audit::Planned& planned, const AlikeGroups& alike) {
  const plan::Plan& plan = planned.plan;
  fmt::print("{} pins on {} modules\n{}\n\nExpected, as this tester would show it\n",
             plan.pins.size(), plan.layout.rails.size(),
             match::judge_test_current(plan, planned.tester.model).say);
  for (const auto& pin : plan.pins) {
    const auto band = match::shown_band(pin.load, plan.catalogue, planned.tester.model);
    fmt::print("  {:<12} {:.2f} to {:.2f} ohm, likely {:.2f} with standard uncertainty {:.2f}\n",
               plan::text(pin.id), band.worst.lo, band.worst.hi, band.mean_ohm, band.u_ohm);
  }
  if (alike.empty()) return;
  fmt::print("\n{} groups of pins are electrically alike; a swap inside one cannot show\n{}",
             alike.size(), alike_text(alike, 1000));
}

Status run(const PlanArguments& arguments) {
  const auto inputs = load_inputs(arguments.inputs);
  if (!inputs) return Status::not_done;
  const AlikeGroups alike = match::alike(inputs->planned.plan);
  if (arguments.json) {
    print_json(inputs->planned, alike);
  } else {
    print_text(inputs->planned, alike);
  }
  return Status::nothing_to_act_on;
}

}  // namespace

void add_plan(CLI::App& app, Run& chosen) {
  auto* command = app.add_subcommand("plan", "Check a plan, and say what each pin should read");
  auto arguments = std::make_shared<PlanArguments>();
  add_inputs(*command, arguments->inputs, PlanAs::positional);
  add_temperature(*command, arguments->inputs);
  command->add_flag("--json", arguments->json, "One JSON object instead of text");
  command->footer(
      "Example: walkdown plan show.csv --igniters igniters.toml --modules modules.toml");
  command->callback([arguments, &chosen] { chosen = [arguments] { return run(*arguments); }; });
}

}  // namespace walkdown::cli
