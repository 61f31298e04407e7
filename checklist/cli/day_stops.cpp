// SPDX-License-Identifier: Apache-2.0
// day hold, lift, release, withdraw
#include <fmt/format.h>

#include <chrono>

#include "checklist/cli/day_parts.h"
#include "checklist/desk/ask_hold.h"

namespace walkdown::cli {
namespace {

constexpr auto kAtOnce = std::chrono::milliseconds(0);
constexpr auto kHoldPatience = std::chrono::seconds(8);  // a long record takes seconds to open

struct StopArguments {
  DayPaths day;
  std::string by;
  std::string reason;
};

Status ask_other_program(const StopArguments& arguments, const record::Clock& clock) {
  fmt::print("Another program has the record open. Asking it to enter the hold ...\n");
  (void)std::fflush(stdout);
  desk::HoldAsk ask{arguments.day.record, arguments.by, arguments.reason, kHoldPatience, [&] {
                      // Opened and closed again: that takes the call up.
                      (void)open_desk(arguments.day, std::nullopt, clock, kAtOnce);
                    }};
  const auto entry = desk::ask_for_hold(ask);
  if (!entry) return not_done(entry.error());
  fmt::print("The hold is called: entry {} is on disk.\n", *entry);
  return Status::nothing_to_act_on;
}

// Anyone, at once: also while another program has the record.
Status hold(const StopArguments& arguments) {
  const record::SystemClock clock;
  auto desk = open_desk(arguments.day, std::nullopt, clock, kAtOnce);
  if (!desk && desk.error().code == Code::busy) return ask_other_program(arguments, clock);
  if (!desk) {
    complain("The hold is NOT recorded: shout.");
    return not_done(desk.error());
  }
  const day::State before = desk->state();
  return tell_changes(*desk, before, desk::hold(*desk, arguments.by, arguments.reason));
}

Status withdraw(const StopArguments& arguments) {
  return run_act(arguments.day, [&](desk::Desk& desk) {
    return desk::withdraw(desk, arguments.by, arguments.reason);
  });
}

Status lift(const StopArguments& arguments) {
  // A hold that is called while the passphrase is typed is not lifted with the others.
  std::optional<std::uint64_t> known;
  return run_signed(
      arguments.day,
      [&](desk::Desk& desk, const desk::Signer& signer) {
        return desk::lift(desk, signer, arguments.reason, known);
      },
      [&](const desk::Copy& seen) {
        const auto holds = seen.state().holds;
        if (!holds.empty()) known = holds.back().n;
        return done();
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
