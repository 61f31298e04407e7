// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <algorithm>
#include <memory>
#include <utility>
#include <vector>

#include "checklist/cli/commands.h"
#include "checklist/cli/crew_hand.h"
#include "checklist/cli/demo_day.h"
#include "checklist/cli/demo_field.h"
#include "checklist/cli/demo_files.h"
#include "checklist/cli/files.h"
#include "checklist/cli/match_text.h"
#include "checklist/cli/show_inputs.h"
#include "checklist/cli/stop.h"
#include "checklist/cli/verify_record.h"
#include "checklist/report/build.h"
#include "checklist/report/html.h"
#include "reader/match/after.h"
#include "reader/match/test_current.h"
#include "reader/trainer/faults.h"

namespace walkdown::cli {
namespace {

constexpr double kLinesPerS = 600;  // slow enough to watch, quick enough for a minute
constexpr unsigned kReadings = 3;   // of each pin; two at least tell an intermittent joint
constexpr int kRounds = 6;
constexpr const char* kHand = "Ines Holm";  // of the invented crew
constexpr std::int64_t kMend_ms = 100'000;  // of the demo's clock: to walk there and re-hook
constexpr std::size_t kMisfires = 2;        // invented too

struct DemoArguments {
  std::string folder;
  std::uint64_t seed = 7;
};

void heading(const char* text) { fmt::print("\n{}\n", text); }

// Does what each finding says, records what was touched, and gives back what to read again.
Result<std::vector<plan::PinId>> mend(const match::Outcome& outcome, trainer::Field& field,
                                      FieldRecord& record, DemoClock& clock) {
  std::vector<plan::PinId> again;
  for (const auto& finding : outcome.findings) {
    clock.skip(kMend_ms);
    const auto hands = act_on(finding, field, kHand);
    if (!hands) {
      fmt::print("  not done: {}\n", hands.error().sentence());
      continue;
    }
    fmt::print("  {} {}\n", kHand, hands->did);
    for (const auto& rehook : hands->rehooks) {
      const auto kept = record.writer().append_and_wait(
          {std::string(audit::kRehook), audit::rehook_body(rehook)});
      if (!kept) return kept.error();
    }
    again.insert(again.end(), hands->read_again.begin(), hands->read_again.end());
  }
  std::sort(again.begin(), again.end());
  again.erase(std::unique(again.begin(), again.end()), again.end());
  return again;
}

// Reads, tells, re-hooks as told and reads again, until all that is planned fits.
Result<match::Outcome> prove_field(trainer::Field& field, FieldRecord& record, DemoField& live,
                                   DemoClock& clock) {
  heading("The first sweep");
  if (const auto read = live.read(field.pins(), kReadings); !read) return read.error();
  for (int round = 1;; ++round) {
    auto outcome = record.claim();
    if (!outcome) return outcome.error();
    fmt::print("  {}\n", verdict_counts(*outcome));
    if (!to_act_on(*outcome) || round > kRounds) return outcome;
    heading("What most likely happened");
    fmt::print("{}", findings_text(*outcome));
    if (outcome->findings.empty()) fmt::print("{}", wrong_pins_text(*outcome));
    heading("At the modules");
    const auto again = mend(*outcome, field, record, clock);
    if (!again) return again.error();
    if (again->empty()) return outcome;
    heading("Read again what was touched");
    if (const auto read = live.read(*again, kReadings); !read) return read.error();
  }
}

Result<trainer::Field> faulty_field(const Inputs& inputs, const std::string& script,
                                    std::uint64_t seed) {
  const auto text = read_file(script);
  if (!text) return text.error();
  const auto faults = trainer::read_faults(*text, base_name(script));
  if (!faults) return faults.error();
  trainer::Field field(inputs.planned.plan, inputs.planned.tester.model, seed);
  if (const auto made = trainer::apply_faults(*faults, field); !made) return made.error();
  return field;
}

void preface(const Inputs& inputs, const DemoFiles& files, const std::string& port) {
  fmt::print(
      "A demonstration: the show, its people and its faults are invented, the tester is simulated "
      "on the pseudo-terminal {}.\n{}\n{} pins on {} modules; the files are in {}\n",
      port, match::judge_test_current(inputs.planned.plan, inputs.planned.tester.model).say,
      inputs.planned.plan.pins.size(), inputs.planned.plan.layout.rails.size(), files.folder);
}

// The whole show: the files that reading needs, and those of the day.
Result<show::Show> whole_show(const DemoFiles& files) {
  ShowPaths paths;
  paths.inputs = files.inputs;
  paths.site = files.site;
  paths.checklist = files.checklist;
  paths.distances = files.distances;
  return gather_show(paths);
}

// What is left of the field when the show is over: igniters burn through, all but a few.
void burn(trainer::Field& field, const plan::Plan& plan) {
  const std::size_t last = plan.pins.size() - kMisfires;
  for (std::size_t i = 0; i < last; ++i) {
    if (plan.pins[i].load.count == 0) continue;
    // A pin that had no load to burn stays as it is.
    [[maybe_unused]] const auto burnt = field.set_fault(plan.pins[i].id, trainer::FaultKind::open);
  }
}

Result<std::size_t> sweep_after(trainer::Field& field, FieldRecord& record, DemoField& live) {
  const auto& planned = record.desk().prepared().planned;
  burn(field, planned.plan);
  const auto before = record.desk().samples();
  if (const auto read = live.read(field.pins(), 1); !read) return read.error();
  const auto all = record.desk().samples();
  const auto after = std::span(all).subspan(before.size());
  const auto found = match::after_show(planned.plan, planned.tester.model, before, after);
  const auto live_pins = static_cast<std::size_t>(
      std::count_if(found.pins.begin(), found.pins.end(), [](const match::AfterPin& pin) {
        return pin.word == match::AfterWord::did_not_fire ||
               pin.word == match::AfterWord::some_left ||
               pin.word == match::AfterWord::treat_as_live;
      }));
  fmt::print(
      "  {} of {} pins still read a load; {} more show nothing for sure and are looked at in the "
      "search. An open pin proves nothing.\n",
      live_pins, found.pins.size(), found.possible_misfires.size() - live_pins);
  return live_pins;
}

// The day up to the field, the field, and the day to its end.
Result<match::Outcome> run_day(DemoDay& day, trainer::Field& field, FieldRecord& record,
                               DemoField& live, DemoClock& clock) {
  if (const auto morning = day.morning(); !morning) return morning.error();
  auto outcome = prove_field(field, record, live, clock);
  if (!outcome || to_act_on(*outcome)) return outcome;
  if (const auto evening = day.evening(); !evening) return evening.error();
  if (const auto show = day.show(); !show) return show.error();
  const auto after = day.after([&] { return sweep_after(field, record, live); });
  if (!after) return after.error();
  return outcome;
}

Status finish(FieldRecord& record, const DemoFiles& files, const match::Outcome& outcome) {
  const auto closed = record.desk().close("the end of the demonstration");
  if (!closed) return not_done(closed.error());
  heading("The record");
  const auto report = verify_record(files.record, {});
  if (!report) return not_done(report.error());
  fmt::print("{}", verify_text(files.record, *report));
  const auto model = report::build(files.record);
  if (!model) return not_done(model.error());
  const Done kept = write_file(files.report, report::html(*model));
  if (!kept) return not_done(kept.error());
  fmt::print(
      "The report for a person: {}\nLook at it yourself:\n  walkdown verify {}\n"
      "  walkdown day status --record {}\n",
      files.report, files.record, files.record);
  return report->holds && !to_act_on(outcome) ? Status::nothing_to_act_on : Status::act;
}

Status run(const DemoArguments& arguments) {
  catch_stop();
  const auto files = lay_out_demo(arguments.folder);
  if (!files) return not_done(files.error());
  const auto inputs = load_inputs(files->inputs);
  if (!inputs) return Status::not_done;
  auto field = faulty_field(*inputs, files->faults, arguments.seed);
  if (!field) return not_done(field.error());
  const auto show = whole_show(*files);
  if (!show) return not_done(show.error());
  DemoClock clock(kDemoStart_at_ms);
  auto record = FieldRecord::open(files->record, *show, files->station_key, clock);
  if (!record) return not_done(record.error());
  auto live = DemoField::open(*field, *record, clock, inputs->planned.tester.port, kLinesPerS);
  if (!live) return not_done(live.error());
  preface(*inputs, *files, live->port());
  auto day = DemoDay::begin(record->desk(), clock, files->folder + "/crew",
                            [](const std::string& line) { fmt::print("{}\n", line); });
  if (!day) return not_done(day.error());
  const auto outcome = run_day(*day, *field, *record, *live, clock);
  if (!outcome) return not_done(outcome.error());
  return finish(*record, *files, *outcome);
}

}  // namespace

void add_demo(CLI::App& app, Run& chosen) {
  auto* command = app.add_subcommand("demo", "A day on a simulated field, in about a minute");
  auto arguments = std::make_shared<DemoArguments>();
  command->add_option("--dir", arguments->folder,
                      "Where its files go; default: a new folder for temporary files");
  command->add_option("--seed", arguments->seed, "Another field with the same faults");
  command->footer("Example: walkdown demo --dir demo-today");
  command->callback([arguments, &chosen] { chosen = [arguments] { return run(*arguments); }; });
}

}  // namespace walkdown::cli
