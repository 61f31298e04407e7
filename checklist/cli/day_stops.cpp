// SPDX-License-Identifier: Apache-2.0
// day hold, lift, release, withdraw
#include "checklist/cli/day_parts.h"

namespace walkdown::cli {
namespace {

struct StopArguments {
  DayPaths day;
  std::string by;
  std::string reason;
};

Status hold(const StopArguments& arguments) {
  return run_act(arguments.day, [&](desk::Desk& desk) {
    return desk::hold(desk, arguments.by, arguments.reason);
  });
}

Status withdraw(const StopArguments& arguments) {
  return run_act(arguments.day, [&](desk::Desk& desk) {
    return desk::withdraw(desk, arguments.by, arguments.reason);
  });
}

Status lift(const StopArguments& arguments) {
  return run_signed(arguments.day, [&](desk::Desk& desk, const desk::Signer& signer) {
    return desk::lift(desk, signer, arguments.reason);
  });
}

Status release(const StopArguments& arguments) {
  return run_signed(arguments.day, [&](desk::Desk& desk, const desk::Signer& signer) {
    return desk::release(desk, signer);
  });
}

}  // namespace

void add_day_stops(CLI::App& day, Run& chosen) {
  auto arguments = std::make_shared<StopArguments>();
  const auto unsigned_options = [&](CLI::App* command) {
    command->add_option("REASON", arguments->reason, "Why, if there is time to say");
    command->add_option("--by", arguments->by, "Who calls it");
    add_record(*command, arguments->day);
  };
  unsigned_options(add_part(day, "hold", "Stop: anyone, at once, unsigned",
                            "day hold \"somebody at the jetty\" --record today.record", chosen,
                            arguments, hold));
  unsigned_options(add_part(day, "withdraw", "Take the release back: anyone, unsigned",
                            "day withdraw \"wind is rising\" --record today.record", chosen,
                            arguments, withdraw));
  auto* lifting = add_part(day, "lift", "End a hold: the lead, with a reason",
                           "day lift \"the jetty is empty\" --as \"Mara Linde\" --record "
                           "today.record",
                           chosen, arguments, lift);
  lifting->add_option("REASON", arguments->reason, "Why it is over")->required();
  add_record(*lifting, arguments->day);
  add_signing(*lifting, arguments->day);
  auto* releasing =
      add_part(day, "release", "Sign the release; it stands once the second person has signed",
               "day release --as \"Mara Linde\" --record today.record", chosen, arguments, release);
  add_record(*releasing, arguments->day);
  add_signing(*releasing, arguments->day);
}

}  // namespace walkdown::cli
