// SPDX-License-Identifier: Apache-2.0
// day open, status, plan, note, close
#include <fmt/format.h>

#include "checklist/cli/day_parts.h"
#include "checklist/cli/day_status.h"
#include "checklist/cli/show_inputs.h"
#include "checklist/desk/copy.h"
#include "checklist/desk/hold_box.h"
#include "checklist/record/merkle.h"

namespace walkdown::cli {
namespace {

struct OpenArguments {
  DayPaths day;
  ShowPaths show;
};

struct LookArguments {
  std::string record;
  bool json = false;
  std::size_t last = 5;
};

struct TextArguments {
  DayPaths day;
  std::string text;
};

Status open(const OpenArguments& arguments) {
  const auto show = gather_show(arguments.show);
  if (!show) return not_done(show.error());
  const auto made = prepare_aloud(*show);
  if (!made) return Status::not_done;
  const record::SystemClock clock;
  const auto desk = open_desk(arguments.day, *show, clock);
  if (!desk) return not_done(desk.error());
  fmt::print(
      "{} is open: {} pins, checklist \"{}\".\n"
      "Next: enrol the crew (walkdown day enrol), then set the show time (walkdown day "
      "show-time).\n",
      desk->path(), made->planned.plan.pins.size(), made->checklist.name);
  if (made->site && !made->site->positions.empty()) {
    fmt::print("{} lies at {}: is that the place?\n", made->site->positions.front().name,
               zone::say_place(*made->site));
  }
  if (made->zone) fmt::print("Distances: {}.\n", desk::zone_facts(*made->zone).why);
  return Status::nothing_to_act_on;
}

// Looks without keeping anybody from writing.
Result<desk::Copy> look(const LookArguments& arguments) {
  auto copy = desk::Copy::open(arguments.record);
  if (copy && !copy->report().holds) {
    complain("The record does not hold from here on: " + copy->report().why);
  }
  return copy;
}

Status status(const LookArguments& arguments) {
  const auto copy = look(arguments);
  if (!copy) return not_done(copy.error());
  const record::SystemClock clock;
  const day::State state = copy->state({clock.at_ms(), clock.up_ms()});
  const auto call = desk::lying_hold_call(arguments.record);
  if (arguments.json) {
    fmt::print("{}\n", to_json(state).dump());
  } else {
    fmt::print("{}", status_text(copy->folded().day().checklist(), state,
                                 copy->folded().told(arguments.last)));
    fmt::print("\nMark of these {} entries, for the permit: {}\n", copy->report().entries,
               copy->report().mark);
    if (call) {
      fmt::print(
          "  a hold was called and is not yet in the record{}{}: whatever opens it enters it\n",
          call->by.empty() ? "" : ", by " + call->by,
          call->reason.empty() ? "" : " (" + call->reason + ")");
    }
  }
  const bool quiet = state.against.empty() || copy->report().closed;
  const bool good = copy->report().holds && quiet && state.waiting.empty() && !call;
  return good ? Status::nothing_to_act_on : Status::act;
}

Status plan(const LookArguments& arguments) {
  const auto copy = look(arguments);
  if (!copy) return not_done(copy.error());
  const record::SystemClock clock;
  const day::Fold& fold = copy->folded().day();
  const auto schedule = day::schedule(fold, copy->moment({clock.at_ms(), clock.up_ms()}));
  fmt::print("{}", schedule_text(schedule, fold.day().utc_offset_min));
  return schedule.feasible ? Status::nothing_to_act_on : Status::act;
}

Status note(const TextArguments& arguments) {
  return run_act(arguments.day, [&](desk::Desk& desk) { return desk::note(desk, arguments.text); });
}

Status close(const TextArguments& arguments) {
  const record::SystemClock clock;
  auto desk = open_desk(arguments.day, std::nullopt, clock);
  if (!desk) return not_done(desk.error());
  if (const auto closed = desk->close(arguments.text); !closed) return not_done(closed.error());
  const auto head = desk->head();
  fmt::print("The record is closed: {} entries. Its mark, to be written on the permit:\n  {}\n",
             head.size, record::mark(head.root));
  return Status::nothing_to_act_on;
}

void add_look_options(CLI::App& command, LookArguments& arguments) {
  command.add_option("--record", arguments.record, "The record of the day")->required();
}

}  // namespace

void add_day_look(CLI::App& day, Run& chosen) {
  auto opening = std::make_shared<OpenArguments>();
  auto* open_command =
      add_part(day, "open", "Begin a record with the show's files in it",
               "day open --record today.record --plan show.csv --site site.geojson --checklist "
               "evening-show",
               chosen, opening, open);
  add_record(*open_command, opening->day);
  add_show_inputs(*open_command, opening->show);

  auto looking = std::make_shared<LookArguments>();
  auto* status_command = add_part(day, "status", "Where the day stands, and why",
                                  "day status --record today.record", chosen, looking, status);
  add_look_options(*status_command, *looking);
  status_command->add_flag("--json", looking->json, "The whole state as JSON");
  status_command->add_option("--last", looking->last, "So many of the last entries (5)");
  auto* plan_command = add_part(day, "plan", "Backwards from the show time: what has to begin when",
                                "day plan --record today.record", chosen, looking, plan);
  add_look_options(*plan_command, *looking);

  auto text = std::make_shared<TextArguments>();
  auto* note_command =
      add_part(day, "note", "A line of free text",
               "day note \"public gates open\" --record today.record", chosen, text, note);
  note_command->add_option("TEXT", text->text, "The line")->required();
  add_record(*note_command, text->day);
  auto* close_command = add_part(day, "close", "The last entry: nothing can follow it",
                                 "day close --record today.record --reason \"field handed back\"",
                                 chosen, text, close);
  close_command->add_option("--reason", text->text, "Why");
  add_record(*close_command, text->day);
}

}  // namespace walkdown::cli
