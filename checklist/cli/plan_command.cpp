// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <cmath>
#include <memory>
#include <string>
#include <vector>

#include "checklist/cli/commands.h"
#include "checklist/cli/current_text.h"
#include "checklist/cli/inputs.h"
#include "checklist/cli/match_text.h"
#include "reader/match/alike.h"
#include "reader/match/band.h"
#include "reader/match/coverage_text.h"
#include "reader/match/firing_current.h"
#include "reader/match/test_current.h"

namespace walkdown::cli {
namespace {

struct PlanArguments {
  InputPaths inputs;
  bool json = false;
};

std::string coverage_json(const match::Coverage& coverage) {
  std::string kinds;
  for (const auto& kind : coverage.kinds) {
    kinds += fmt::format(R"({}{{"kind":"{}","what":{},"possible":{},"shown":{:.4f},)"
                         R"("invisible":{:.1f},"weighed":{}}})",
                         kinds.empty() ? "" : ",", match::text(kind.kind), json_string(kind.what),
                         kind.possible, std::floor(kind.share() * 1e4) / 1e4, kind.invisible,
                         kind.weighed);
  }
  return "[" + kinds + "]";
}

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
  const auto current = match::judge_test_current(planned.plan, planned.tester.model);
  fmt::print(
      "{{\"pins\":[{}],\"alike\":[{}],\"coverage\":{},\"tester_current\":{},\"current\":{}}}\n",
      pins, groups, coverage_json(match::coverage(planned.plan, planned.tester.model)),
      json_string(current.say), currents_json(currents_of(planned.plan, nullptr)));
}

void print_lines(const char* title, const std::vector<std::string>& lines) {
  if (lines.empty()) return;
  fmt::print("\n{}\n", title);
  for (const auto& line : lines) fmt::print("  {}\n", line);
}

void print_coverage(const audit::Planned& planned, const AlikeGroups& alike) {
  const auto coverage = match::coverage(planned.plan, planned.tester.model);
  print_lines("What this test would show, and what no test can",
              match::coverage_lines(coverage, alike));
  print_lines("What the commonest loads hide", match::load_lines(coverage));
  print_lines("What would raise that", coverage.advice);
  if (!alike.empty()) {
    fmt::print("\nElectrically alike: a swap inside a group cannot show; check these by eye\n{}",
               alike_text(alike, 1000));
  }
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
  fmt::print("\nFiring current, every loop at its worst\n{}",
             currents_text(currents_of(plan, nullptr)));
  print_coverage(planned, alike);
}

Status run(const PlanArguments& arguments) {
  const auto inputs = load_inputs(arguments.inputs);
  if (!inputs) return Status::not_done;
  for (const auto& problem : match::lint_supply(inputs->planned.plan)) {
    complain("note: " + problem.sentence());
  }
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
