// SPDX-License-Identifier: Apache-2.0
// walkdown day: the whole day from a terminal.
#include "checklist/cli/day_parts.h"

namespace walkdown::cli {

void add_day(CLI::App& app, Run& chosen) {
  auto* day = app.add_subcommand("day", "The day: checklist, people, keys, weather, release");
  day->require_subcommand(1);
  day->footer(
      "Example: walkdown day status --record today.record\n"
      "Each command asks the rule first: what is refused is not written. What makes the day worse "
      "(hold, in, thunder, rehook) is taken from anyone, unsigned.\n"
      "A hold gets through also while another program has the record open.\n"
      "It decides nothing for you: local codes, the maker's data sheet and the licensed person "
      "do.");
  add_day_look(*day, chosen);
  add_day_people(*day, chosen);
  add_day_items(*day, chosen);
  add_day_weather(*day, chosen);
  add_day_keys(*day, chosen);
  add_day_stops(*day, chosen);
  add_day_faults(*day, chosen);
  add_day_witness(*day, chosen);
  add_day_time_stamp(*day, chosen);
}

}  // namespace walkdown::cli
