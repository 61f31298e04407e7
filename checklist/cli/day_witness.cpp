// SPDX-License-Identifier: Apache-2.0
// day witness head, sign, add, state
#include <fmt/format.h>

#include "checklist/cli/day_parts.h"
#include "checklist/cli/files.h"
#include "checklist/cli/passphrase.h"
#include "checklist/cli/qr_text.h"
#include "checklist/desk/crew.h"
#include "checklist/desk/witness.h"
#include "checklist/record/cosign.h"

namespace walkdown::cli {
namespace {

struct WitnessArguments {
  DayPaths day;
  std::string file;
  std::string output;
  std::string text;
  bool qr = false;
};

// For a person to carry: as a file, as text, or as a code for a camera.
Status keep(const WitnessArguments& arguments, const std::string& text) {
  const std::string& path = arguments.output;
  if (arguments.qr) {
    const auto code = qr_text(text);
    if (!code) return not_done(code.error());
    fmt::print("{}", *code);
    if (path.empty()) return Status::nothing_to_act_on;
  }
  if (path.empty() || path == "-") {
    fmt::print("{}", text);
    return Status::nothing_to_act_on;
  }
  const auto kept = write_file(path, text);
  return kept ? Status::nothing_to_act_on : not_done(kept.error());
}

Status head(const WitnessArguments& arguments) {
  const auto note = desk::head_note(arguments.day.record);
  if (!note) return not_done(note.error());
  return keep(arguments, *note);
}

// On the witness's own machine: no record is needed there.
Status sign(const WitnessArguments& arguments) {
  const auto note = read_file(arguments.file);
  if (!note) return not_done(note.error());
  const DayPaths& paths = arguments.day;
  const desk::Crew crew(paths.crew.empty() ? desk::Crew::default_folder() : paths.crew);
  if (const auto there = crew.find(paths.as); !there) return not_done(there.error());
  const auto secret = passphrase(paths.passphrase_file, paths.as, Ask::once);
  if (!secret) return not_done(secret.error());
  const auto key = crew.load(paths.as, secret->text());
  if (!key) return not_done(key.error());
  const record::SystemClock clock;
  const auto cosigned = record::cosign(as_carried(*note), *key, clock.at_ms() / 1000);
  if (!cosigned) return not_done(cosigned.error());
  return keep(arguments, *cosigned);
}

Status add(const WitnessArguments& arguments) {
  const auto note = read_file(arguments.file);
  if (!note) return not_done(note.error());
  return run_act(arguments.day,
                 [&](desk::Desk& desk) { return desk::add_cosignature(desk, as_carried(*note)); });
}

Status state(const WitnessArguments& arguments) {
  return run_signed(arguments.day, [&](desk::Desk& desk, const desk::Signer& signer) {
    return desk::state_as(desk, signer, arguments.text);
  });
}

}  // namespace

void add_day_witness(CLI::App& day, Run& chosen) {
  auto* witness = day.add_subcommand("witness", "The authority's own person signs the record");
  witness->require_subcommand(1);
  witness->footer(
      "Example: walkdown day witness head --record today.record -o head.note\n"
      "The witness signs on a machine of their own, where no record is needed: carry the head "
      "there "
      "and the signature back as a file, as text, or by --qr and a camera.");
  auto arguments = std::make_shared<WitnessArguments>();
  auto* heading =
      add_part(*witness, "head", "The record's head of this moment, to be signed",
               "day witness head --record today.record -o head.note", chosen, arguments, head);
  heading->add_option("--record", arguments->day.record, "The record")->required();
  heading->add_option("-o,--output", arguments->output, "Where to; default: standard output");
  heading->add_flag("--qr", arguments->qr, "As a QR code, for the witness's camera");
  auto* signing = add_part(*witness, "sign", "Sign a head, on a machine of one's own",
                           "day witness sign head.note --as \"Olga Brandt\" -o signed.note", chosen,
                           arguments, sign);
  signing
      ->add_option("FILE", arguments->file, "The head, as a file; - for text from standard input")
      ->required();
  signing->add_option("-o,--output", arguments->output, "Where to; default: standard output");
  signing->add_flag("--qr", arguments->qr, "As a QR code, to be carried back");
  add_signing(*signing, arguments->day);
  auto* adding =
      add_part(*witness, "add", "Put a witness's signature into the record",
               "day witness add signed.note --record today.record", chosen, arguments, add);
  adding
      ->add_option("FILE", arguments->file,
                   "What the witness has signed; - for text from standard input")
      ->required();
  add_record(*adding, arguments->day);
  auto* stating = add_part(*witness, "state", "A signed statement of one's own",
                           "day witness state \"walked the line at 20:40\" --as \"Olga Brandt\" "
                           "--record today.record",
                           chosen, arguments, state);
  stating->add_option("TEXT", arguments->text, "What is stated")->required();
  add_record(*stating, arguments->day);
  add_signing(*stating, arguments->day);
}

}  // namespace walkdown::cli
