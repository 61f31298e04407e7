// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <chrono>
#include <memory>
#include <thread>
#include <utility>
#include <variant>
#include <vector>

#include "checklist/cli/commands.h"
#include "checklist/cli/files.h"
#include "checklist/cli/inputs.h"
#include "checklist/cli/stop.h"
#include "checklist/cli/trainee.h"
#include "reader/tester/line.h"
#include "reader/trainer/faults.h"
#include "reader/trainer/lines.h"
#include "reader/trainer/pty.h"
#include "reader/trainer/sweep.h"

namespace walkdown::cli {
namespace {

constexpr auto kLook = std::chrono::milliseconds(2);

struct SimulateArguments {
  InputPaths inputs;
  std::string faults;
  bool draw_faults = false;
  std::uint64_t seed = 1;
  double lines_per_s = 50;
  unsigned sweeps = 0;  // 0: until stopped
};

// The simulated tester speaks one format; a profile that reads another would reject all it sends.
Done speaks(const Inputs& inputs) {
  const auto parser = tester::LineParser::make(inputs.planned.tester);
  if (!parser) return parser.error();
  tester::Reading reading;
  reading.pin = {1, 1, 1};
  reading.micro_ohm = 2'310'000;
  trainer::LineForm form;
  form.check = true;
  form.seq = 1;
  if (std::holds_alternative<tester::Reading>(parser->parse(trainer::line(reading, form)))) {
    return done();
  }
  return Error{Code::usage, "the simulated tester sends lines such as M07,R2,P05,2.31,ohm,1*hh",
               "--tester", "name a profile that reads them, or none"};
}

Result<std::vector<trainer::Fault>> faults_of(const SimulateArguments& arguments,
                                              const plan::Plan& plan) {
  if (arguments.draw_faults) return trainer::random_faults(plan, arguments.seed);
  if (arguments.faults.empty()) return std::vector<trainer::Fault>();
  const auto text = read_file(arguments.faults);
  if (!text) return text.error();
  return trainer::read_faults(*text, base_name(arguments.faults));
}

// Sweeps the field until told to stop, and does meanwhile what the trainee types. Each pin is read
// just before its line goes out, so that what the trainee mends shows at once.
Status serve(const SimulateArguments& arguments, trainer::Field& field,
             trainer::TesterPty& tester) {
  trainer::SweepForm form;
  Trainee trainee(field, tester);
  for (unsigned done = 0; arguments.sweeps == 0 || done < arguments.sweeps; ++done) {
    for (const auto pin : field.pins()) {
      while (tester.queued() > 1) {
        if (stop_asked() || !trainee.listen()) return Status::nothing_to_act_on;
        std::this_thread::sleep_for(kLook);
      }
      tester.send(trainer::sweep(field, {&pin, 1}, form));
    }
  }
  while (!tester.wait_until_read(std::chrono::milliseconds(100))) {
    if (stop_asked() || !trainee.listen()) break;
  }
  return Status::nothing_to_act_on;
}

Status run(const SimulateArguments& arguments) {
  catch_stop();
  const auto inputs = load_inputs(arguments.inputs);
  if (!inputs) return Status::not_done;
  if (const auto heard = speaks(*inputs); !heard) return not_done(heard.error());
  const auto faults = faults_of(arguments, inputs->planned.plan);
  if (!faults) return not_done(faults.error());
  trainer::Field field(inputs->planned.plan, inputs->planned.tester.model, arguments.seed);
  if (const auto made = trainer::apply_faults(*faults, field); !made) return not_done(made.error());
  const auto tester = trainer::TesterPty::open(arguments.lines_per_s);
  if (!tester) return not_done(tester.error());
  fmt::print("{}\n", (*tester)->path());
  if (!flush_output()) return Status::not_done;
  complain(
      fmt::format("a simulated tester with {} things wrong. {}", faults->size(), Trainee::words()));
  return serve(arguments, field, **tester);
}

}  // namespace

void add_simulate(CLI::App& app, Run& chosen) {
  auto* command =
      app.add_subcommand("simulate", "A tester on a pseudo-terminal, for training and tests");
  auto arguments = std::make_shared<SimulateArguments>();
  add_inputs(*command, arguments->inputs, PlanAs::positional);
  auto* script = command->add_option("--faults", arguments->faults, "What is wrong (TOML)");
  command->add_flag("--draw-faults", arguments->draw_faults, "Draw a plausible evening's faults")
      ->excludes(script);
  command->add_option("--seed", arguments->seed, "The same seed gives the same field");
  command->add_option("--rate", arguments->lines_per_s, "Lines a second")
      ->check(CLI::Range(0.1, 20'000.0));
  command->add_option("--sweeps", arguments->sweeps, "End after so many; default: when stopped");
  command->footer(
      "Example: walkdown simulate show.csv --faults faults.toml\n"
      "It prints the path to give to: walkdown read --port PATH --plan show.csv --record R");
  command->callback([arguments, &chosen] { chosen = [arguments] { return run(*arguments); }; });
}

}  // namespace walkdown::cli
