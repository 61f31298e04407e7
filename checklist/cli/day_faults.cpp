// SPDX-License-Identifier: Apache-2.0
// day waive, waive-pin, rehook
#include "checklist/cli/day_parts.h"
#include "reader/plan/pin.h"

namespace walkdown::cli {
namespace {

struct FaultArguments {
  DayPaths day;
  std::string what;
  std::string reason;
  std::vector<std::string> pins;
  audit::Rehook rehook;
};

Status waive(const FaultArguments& arguments) {
  return run_signed(arguments.day, [&](desk::Desk& desk, const desk::Signer& signer) {
    return desk::waive(desk, signer, arguments.what, arguments.reason);
  });
}

Status waive_pin(const FaultArguments& arguments) {
  return run_signed(arguments.day, [&](desk::Desk& desk, const desk::Signer& signer) {
    return desk::waive_pin(desk, signer, arguments.what, arguments.reason);
  });
}

Status rehook(const FaultArguments& arguments) {
  audit::Rehook rehook = arguments.rehook;
  for (const auto& text : arguments.pins) {
    const auto pin = plan::parse_pin(text);
    if (!pin) {
      return not_done({Code::usage, "this is no pin", text, "write it as M01/R1/P05"});
    }
    rehook.pins.push_back(*pin);
  }
  return run_act(arguments.day, [&](desk::Desk& desk) { return desk::rehook(desk, rehook); });
}

}  // namespace

void add_day_faults(CLI::App& day, Run& chosen) {
  auto arguments = std::make_shared<FaultArguments>();
  const auto waives = [&](CLI::App* command, const char* name, const char* help) {
    command->add_option(name, arguments->what, help)->required();
    command->add_option("REASON", arguments->reason, "Why; it stands in every report")->required();
    add_record(*command, arguments->day);
    add_signing(*command, arguments->day);
  };
  waives(
      add_part(day, "waive", "Take one failure of an item on yourself; a second person signs too",
               "day waive wind \"sheltered bank, gusts seen falling\" --as \"Mara Linde\" "
               "--record today.record",
               chosen, arguments, waive),
      "ITEM", "The item");
  waives(add_part(day, "waive-pin", "Take one pin's verdict on yourself; a second person signs too",
                  "day waive-pin M01/R1/P05 \"cue is cut from the show\" --as \"Mara Linde\" "
                  "--record today.record",
                  chosen, arguments, waive_pin),
         "PIN", "The pin");
  auto* rehooking = add_part(day, "rehook", "Something was hooked up anew: read it again",
                             "day rehook M01/R1/P05 --by \"Edda Horn\" --record today.record",
                             chosen, arguments, rehook);
  rehooking->add_option("PIN", arguments->pins, "Pins; with nothing named: the whole field");
  rehooking->add_option("--position", arguments->rehook.positions, "Positions");
  rehooking->add_option("--module", arguments->rehook.module, "A module")
      ->check(CLI::Range(1, 9999));
  rehooking->add_option("--rail", arguments->rehook.rail, "One rail of that module")
      ->check(CLI::Range(1, 9999));
  rehooking->add_option("--by", arguments->rehook.by, "Who did it");
  rehooking->add_option("--why", arguments->rehook.why, "The finding, or the reason");
  add_record(*rehooking, arguments->day);
}

}  // namespace walkdown::cli
