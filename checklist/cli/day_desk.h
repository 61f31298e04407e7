// SPDX-License-Identifier: Apache-2.0
// What every `walkdown day` command begins and ends with: the record opened, the person's key
// opened, and what the entry changed said in sentences.
#pragma once

#include <CLI/CLI.hpp>
#include <chrono>
#include <functional>
#include <optional>
#include <string>

#include "checklist/cli/status.h"
#include "checklist/desk/acts.h"
#include "checklist/desk/copy.h"
#include "checklist/desk/desk.h"
#include "checklist/record/clock.h"

namespace walkdown::cli {

struct DayPaths {
  std::string record;
  std::string station_key;
  std::string as;    // a person's name
  std::string role;  // empty: the one role in which they are enrolled
  std::string crew;  // folder of keys
  std::string passphrase_file;
};

void add_record(CLI::App& command, DayPaths& paths);   // --record, --key
void add_signing(CLI::App& command, DayPaths& paths);  // --as, --role, --dir, --passphrase-file

// `show`: for a new record; nothing goes on with one that is there. busy: another program has it,
// also after `patience`: most have it for a moment only.
inline constexpr auto kPatience = std::chrono::milliseconds(2'000);
Result<desk::Desk> open_desk(const DayPaths& paths, const std::optional<show::Show>& show,
                             const record::Clock& clock,
                             std::chrono::milliseconds patience = kPatience);

// The signer that --as and --role name, the key opened with the passphrase. refused: not enrolled,
// or enrolled in several roles and none was chosen; as Crew::load.
Result<desk::Signer> open_signer(const DayPaths& paths, const day::State& state);

// Opens, acts, and says what that changed.
using Act = std::function<desk::Entry(desk::Desk&)>;
Status run_act(const DayPaths& paths, const Act& act);

// The same with a signature. Whoever types keeps nobody from the record: it is looked at, the
// passphrase is asked for and the key opened, `ask` asks what else there is to ask, and only then
// is the record opened, and every rule asked again.
using Question = std::function<Done(const desk::Copy& seen)>;
using SignedAct = std::function<desk::Entry(desk::Desk&, const desk::Signer&)>;
Status run_signed(const DayPaths& paths, const SignedAct& act, const Question& ask = {});

// After an act: the last entry and what changed with it, or why not.
Status tell_changes(const desk::Desk& desk, const day::State& before, const desk::Entry& entry);

// This computer's key, made where there is none.
Result<record::SigningKey> station_of(const std::string& path);

}  // namespace walkdown::cli
