// SPDX-License-Identifier: Apache-2.0
// day enrol, in, out, tag
#include "checklist/cli/day_parts.h"
#include "checklist/desk/crew.h"

namespace walkdown::cli {
namespace {

struct EnrolArguments {
  DayPaths day;
  std::string name;
  std::string role;
  std::string vkey;
  std::string crew;
};

struct PersonArguments {
  DayPaths day;
  std::string person;
  std::string reason;
  std::vector<std::string> positions;
};

Result<record::VerifyKey> key_of(const EnrolArguments& arguments) {
  if (!arguments.vkey.empty()) return record::parse_vkey(arguments.vkey);
  const desk::Crew crew(arguments.crew.empty() ? desk::Crew::default_folder() : arguments.crew);
  const auto member = crew.find(arguments.name);
  if (!member) return member.error();
  return member->key;
}

Status enrol(const EnrolArguments& arguments) {
  const auto key = key_of(arguments);
  if (!key) return not_done(key.error());
  return run_act(arguments.day, [&](desk::Desk& desk) {
    return desk::enrol(desk, arguments.name, arguments.role, *key);
  });
}

Status in(const PersonArguments& arguments) {
  return run_act(arguments.day, [&](desk::Desk& desk) -> desk::Entry {
    for (const auto& position : arguments.positions) {
      const auto& pins = desk.prepared().planned.plan.pins;
      const bool known = std::any_of(pins.begin(), pins.end(), [&](const plan::PlannedPin& pin) {
        return pin.position == position;
      });
      if (!known) {
        return Error{Code::usage, "the plan has no such position", position,
                     "name it as the plan does, or leave it out: then all pins count as unread"};
      }
    }
    return desk::go_in(desk, arguments.person, arguments.positions);
  });
}

Status out(const PersonArguments& arguments) {
  return run_signed(arguments.day, [&](desk::Desk& desk, const desk::Signer& signer) {
    const std::string& person = arguments.person.empty() ? signer.name : arguments.person;
    return desk::come_out(desk, signer, person, arguments.reason);
  });
}

Status hang(const PersonArguments& arguments) {
  return run_act(arguments.day,
                 [&](desk::Desk& desk) { return desk::hang_tag(desk, arguments.person); });
}

Status back(const PersonArguments& arguments) {
  return run_signed(arguments.day, [&](desk::Desk& desk, const desk::Signer& signer) {
    const std::string& person = arguments.person.empty() ? signer.name : arguments.person;
    return desk::take_tag_back(desk, signer, person, arguments.reason);
  });
}

void add_return(CLI::App& command, PersonArguments& arguments) {
  command.add_option("PERSON", arguments.person, "Who; default: the one who signs");
  command.add_option("--reason", arguments.reason,
                     "For somebody else: how it is known; a second person then has to sign too");
  add_record(command, arguments.day);
  add_signing(command, arguments.day);
}

}  // namespace

void add_day_people(CLI::App& day, Run& chosen) {
  auto enrolling = std::make_shared<EnrolArguments>();
  auto* enrol_command =
      add_part(day, "enrol", "Let a person sign in this record",
               "day enrol \"Mara Linde\" lead --record today.record", chosen, enrolling, enrol);
  enrol_command->add_option("NAME", enrolling->name, "As the key is named")->required();
  enrol_command->add_option("ROLE", enrolling->role, "lead, safety, crew, spotter, witness, ...")
      ->required();
  enrol_command->add_option("--vkey", enrolling->vkey,
                            "The public key, where the secret one is elsewhere");
  enrol_command->add_option("--dir", enrolling->crew, "Where the keys are");
  add_record(*enrol_command, enrolling->day);

  auto person = std::make_shared<PersonArguments>();
  auto* in_command =
      add_part(day, "in", "Somebody goes into the field",
               "day in \"Jon Weir\" --position Jetty --record today.record", chosen, person, in);
  in_command->add_option("PERSON", person->person, "Who")->required();
  in_command->add_option("--position", person->positions,
                         "Where to; pins there have to be read again. Default: anywhere");
  add_record(*in_command, person->day);
  auto* out_command =
      add_part(day, "out", "Somebody is out of the field",
               "day out --as \"Jon Weir\" --record today.record", chosen, person, out);
  add_return(*out_command, *person);

  auto* tag = day.add_subcommand("tag", "The tag of each person at the lock box");
  tag->require_subcommand(1);
  tag->footer("Example: walkdown day tag hang \"Jon Weir\" --record today.record");
  auto* hang_command =
      add_part(*tag, "hang", "A tag is hung: the key stays where it is",
               "day tag hang \"Jon Weir\" --record today.record", chosen, person, hang);
  hang_command->add_option("PERSON", person->person, "Whose tag")->required();
  add_record(*hang_command, person->day);
  auto* back_command =
      add_part(*tag, "back", "A tag is taken back by its owner",
               "day tag back --as \"Jon Weir\" --record today.record", chosen, person, back);
  add_return(*back_command, *person);
}

}  // namespace walkdown::cli
