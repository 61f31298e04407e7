// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <chrono>
#include <memory>
#include <optional>
#include <variant>

#include "checklist/cli/commands.h"
#include "checklist/cli/current_text.h"
#include "checklist/cli/field_record.h"
#include "checklist/cli/intake.h"
#include "checklist/cli/live_facts.h"
#include "checklist/cli/live_view.h"
#include "checklist/cli/match_text.h"
#include "checklist/cli/stop.h"
#include "checklist/cli/visits.h"
#include "reader/match/test_current.h"
#include "reader/tester/link.h"

namespace walkdown::cli {
namespace {

using SteadyClock = std::chrono::steady_clock;
namespace event = tester::event;
constexpr auto kLook = std::chrono::milliseconds(50);      // at the stop flag
constexpr auto kRefresh = std::chrono::milliseconds(250);  // of the view; a diagnosis each

struct ReadArguments {
  InputPaths inputs;
  std::string port;
  std::string record;
  std::string key;
  std::string site;    // for the walking order
  std::string from;    // the position where the crew stands
  double seconds = 0;  // 0: until stopped
  bool once = false;   // until the tester is unplugged
};

// The loop of a live reading: what the link says goes to the intake, what changed to the view.
class Session {
 public:
  Session(const ReadArguments& arguments, FieldRecord& record, Intake& intake, tester::Link& link)
      : arguments_(&arguments), record_(&record), intake_(&intake), link_(&link) {}

  Done run() {
    const auto begin = SteadyClock::now();
    announce();
    while (!over_ && !stop_asked()) {
      auto took = std::visit([this](const auto& what) { return on(what); }, link_->next(kLook));
      if (!took) return took;
      const auto now = SteadyClock::now();
      if (changed_ && now - shown_ >= kRefresh) show(now);
      const std::chrono::duration<double> ran = now - begin;
      if (arguments_->seconds > 0 && ran.count() >= arguments_->seconds) over_ = true;
    }
    return done();
  }

 private:
  Done on(const event::Bytes& bytes) {
    link_word_ = "reading";
    changed_ = true;
    auto fed = intake_->feed(bytes.bytes);
    announce();
    return fed;
  }
  Done on(const event::Quiet&) { return word("quiet"); }
  Done on(const event::Unplugged&) {
    over_ = arguments_->once;
    const auto hung_up = intake_->hang_up();
    if (!over_) view_.say("The tester is unplugged; plug it in again, reading goes on by itself.");
    return hung_up ? word("unplugged") : hung_up;
  }
  Done on(const event::Back&) {
    view_.say("The tester is back.");
    return word("quiet");
  }
  Done on(const event::Trouble& trouble) {
    view_.say(trouble.error.sentence());
    return word("trouble");
  }
  Done on(const event::TimedOut&) { return done(); }
  Done on(const event::Stopped&) {
    over_ = true;
    return done();
  }

  Done word(const char* text) {
    link_word_ = text;
    changed_ = true;
    return done();
  }

  void announce() {
    if (!intake_->walk()) return;
    const auto pin = intake_->walk()->current();
    if (pin == announced_) return;
    announced_ = pin;
    view_.say(pin ? fmt::format("Now probe {} ({} of {}).", plan::text(*pin),
                                intake_->walk()->done() + 1, intake_->walk()->of())
                  : std::string("All pins are walked."));
  }

  void show(SteadyClock::time_point now) {
    view_.show(live_facts(*record_, link_word_));
    shown_ = now;
    changed_ = false;
  }

  const ReadArguments* arguments_;
  FieldRecord* record_;
  Intake* intake_;
  tester::Link* link_;
  LiveView view_{stdout};
  std::string link_word_ = "quiet";
  std::optional<plan::PinId> announced_;
  SteadyClock::time_point shown_{};
  bool changed_ = true;
  bool over_ = false;
};

std::optional<tester::Walk> walk_for(const tester::LineParser& parser,
                                     const audit::Planned& planned) {
  if (parser.addressed()) return std::nullopt;
  std::vector<plan::PinId> pins;
  for (const auto& pin : planned.plan.pins) pins.push_back(pin.id);
  return tester::Walk(std::move(pins), planned.tester.model);
}

void caution(const audit::Planned& planned) {
  fmt::print("{}\n", match::judge_test_current(planned.plan, planned.tester.model).say);
  fmt::print(
      "Testing sends current through live igniters: clear the danger area first. Local codes, "
      "the maker's data sheet and the licensed person decide.\n");
}

Status finish(FieldRecord& record, const plan::Plan& plan, const ReadArguments& arguments,
              const zone::Site* site) {
  const auto outcome = record.claim();
  if (!outcome) return not_done(outcome.error());
  fmt::print("\n{}\n{}{}", verdict_counts(*outcome), tester_text(outcome->field),
             findings_text(*outcome));
  fmt::print("{}", visits_text(visits_of(plan, *outcome, site, arguments.from)));
  const Currents currents = currents_of(plan, &*outcome);
  fmt::print("{}", currents_text(currents));
  fmt::print("{} entries are on disk in {}; check them with: walkdown verify {}\n",
             record.counts().entries, arguments.record, arguments.record);
  return to_act_on(*outcome) || currents.to_act_on() ? Status::act : Status::nothing_to_act_on;
}

Status run(const ReadArguments& arguments) {
  catch_stop();
  const auto inputs = load_inputs(arguments.inputs);
  if (!inputs) return Status::not_done;
  const auto may = match::may_read(inputs->planned.plan, inputs->planned.tester.model);
  if (!may) return not_done(may.error());
  std::optional<zone::Site> site;
  if (!arguments.site.empty()) {
    site = site_aloud(arguments.site);
    if (!site) return Status::not_done;
  }
  auto link = tester::Link::open(arguments.port, inputs->planned.tester.port);
  if (!link) return not_done(link.error());
  const record::SystemClock clock;
  auto record = FieldRecord::open(arguments.record, *inputs, arguments.key, clock);
  if (!record) return not_done(record.error());
  caution(inputs->planned);
  const tester::LineParser parser = record->parser();
  Intake intake(parser, walk_for(parser, inputs->planned), record->writer());
  const auto ran = Session(arguments, *record, intake, *link).run();
  if (!ran) return not_done(ran.error());
  return finish(*record, inputs->planned.plan, arguments, site ? &*site : nullptr);
}

}  // namespace

void add_read(CLI::App& app, Run& chosen) {
  auto* command = app.add_subcommand("read", "Read a tester live, and keep the record");
  auto arguments = std::make_shared<ReadArguments>();
  command->add_option("--port", arguments->port, "Where the tester is, such as /dev/ttyUSB0")
      ->required();
  command->add_option("--record", arguments->record, "The record: made, or continued")->required();
  add_inputs(*command, arguments->inputs, PlanAs::option);
  add_temperature(*command, arguments->inputs);
  command->add_option("--key", arguments->key,
                      "This station's key file; default: in your data folder");
  command->add_option("--site", arguments->site,
                      "Positions on the ground (GeoJSON): walking order");
  command->add_option("--from", arguments->from, "The position where the crew stands");
  command->add_flag("--once", arguments->once, "End when the tester is unplugged");
  command->add_option("--seconds", arguments->seconds, "End after so many seconds")
      ->check(CLI::Range(0.0, 1e6));
  command->footer(
      "Example: walkdown read --port /dev/ttyUSB0 --plan show.csv --record today.record\n"
      "Ctrl-C ends it: what was read is diagnosed, claimed and sealed.");
  command->callback([arguments, &chosen] { chosen = [arguments] { return run(*arguments); }; });
}

}  // namespace walkdown::cli
