// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/day_desk.h"

#include <fmt/format.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <thread>
#include <utility>

#include "checklist/cli/passphrase.h"
#include "checklist/day/duration.h"
#include "checklist/desk/crew.h"
#include "checklist/record/keys.h"

namespace walkdown::cli {
namespace {

std::vector<std::string> roles_of(const day::State& state, const std::string& name) {
  std::vector<std::string> roles;
  for (const auto& person : state.people) {
    if (person.name == name) roles.push_back(person.role);
  }
  return roles;
}

std::string join(const std::vector<std::string>& words) {
  std::string list;
  for (const auto& word : words) list += (list.empty() ? "" : ", ") + word;
  return list;
}

Result<std::string> role_of(const DayPaths& paths, const day::State& state) {
  const auto roles = roles_of(state, paths.as);
  if (roles.empty()) {
    return Error{Code::refused, "nobody of this name is enrolled", paths.as,
                 "enrol them with: walkdown day enrol"};
  }
  const std::string& wanted = paths.role.empty() ? roles.front() : paths.role;
  if (paths.role.empty() && roles.size() > 1) {
    return Error{Code::usage, paths.as + " has several roles", join(roles),
                 "choose one with --role"};
  }
  if (std::find(roles.begin(), roles.end(), wanted) == roles.end()) {
    return Error{Code::refused, fmt::format("{} is not enrolled as {}", paths.as, wanted),
                 join(roles), "choose one of these with --role, or enrol them anew"};
  }
  return wanted;
}

}  // namespace

void add_record(CLI::App& command, DayPaths& paths) {
  command.add_option("--record", paths.record, "The record of the day")->required();
  command.add_option("--key", paths.station_key,
                     "This computer's key file; default: in your data folder");
}

void add_signing(CLI::App& command, DayPaths& paths) {
  command.add_option("--as", paths.as, "Who signs")->required();
  command.add_option("--role", paths.role, "In which role, where they have several");
  command.add_option("--dir", paths.crew, "Where the keys are; default: your data folder");
  command.add_option("--passphrase-file", paths.passphrase_file,
                     "Its first line is the passphrase; default: typed at the terminal");
}

Result<record::SigningKey> station_of(const std::string& path) {
  std::array<char, 256> name{};
  const bool named =
      gethostname(name.data(), name.size() - 1) == 0 && record::is_key_name(name.data());
  return record::station_key(path.empty() ? record::default_station_path() : path,
                             named ? name.data() : "station");
}

Result<desk::Desk> open_desk(const DayPaths& paths, const std::optional<show::Show>& show,
                             const record::Clock& clock, std::chrono::milliseconds patience) {
  const auto station = station_of(paths.station_key);
  if (!station) return station.error();
  const auto end = std::chrono::steady_clock::now() + patience;
  while (true) {
    auto desk = desk::Desk::open(paths.record, show, *station, clock);
    if (desk || desk.error().code != Code::busy) return desk;
    if (std::chrono::steady_clock::now() >= end) break;
    std::this_thread::sleep_for(std::chrono::milliseconds(50));
  }
  return Error{Code::busy, "another program is writing this record", paths.record,
               "act in that program, or end it first (Ctrl-C ends `walkdown read`; nothing is "
               "lost); a hold gets through: walkdown day hold"};
}

Result<desk::Signer> open_signer(const DayPaths& paths, const day::State& state) {
  const auto role = role_of(paths, state);
  if (!role) return role.error();
  const desk::Crew crew(paths.crew.empty() ? desk::Crew::default_folder() : paths.crew);
  if (const auto there = crew.find(paths.as); !there) return there.error();
  const auto secret = passphrase(paths.passphrase_file, paths.as, Ask::once);
  if (!secret) return secret.error();
  auto key = crew.load(paths.as, secret->text());
  if (!key) return key.error();
  return desk::Signer{std::move(key).value(), paths.as, *role};
}

Status run_act(const DayPaths& paths, const Act& act) {
  const record::SystemClock clock;
  auto desk = open_desk(paths, std::nullopt, clock);
  if (!desk) return not_done(desk.error());
  const day::State before = desk->state();
  return tell_changes(*desk, before, act(*desk));
}

Status run_signed(const DayPaths& paths, const SignedAct& act, const Question& ask) {
  const auto seen = desk::Copy::open(paths.record);
  if (!seen) return not_done(seen.error());
  const record::SystemClock clock;
  const auto signer = open_signer(paths, seen->state());
  if (!signer) return not_done(signer.error());
  if (ask) {
    if (const Done asked = ask(*seen); !asked) return not_done(asked.error());
  }
  auto desk = open_desk(paths, std::nullopt, clock);
  if (!desk) return not_done(desk.error());
  const day::State before = desk->state();
  return tell_changes(*desk, before, act(*desk, *signer));
}

Status tell_changes(const desk::Desk& desk, const day::State& before, const desk::Entry& entry) {
  if (!entry) return not_done(entry.error());
  const day::State after = desk.state();
  const auto told = desk.told(1);  // nothing of ours is written behind it
  fmt::print("{}  {}\n", day::say_clock(after.at_ms, after.utc_offset_min),
             told.empty() ? std::string() : told.front().say);
  for (const auto& sentence : changes(desk.checklist(), before, after))
    fmt::print("  - {}\n", sentence);
  fmt::print("Entry {} is on disk.\n", *entry);
  if (const auto wrong = desk.disagrees()) {
    complain("What was written does not hold, which is a fault of this program: " + *wrong);
    return Status::act;
  }
  return Status::nothing_to_act_on;
}

}  // namespace walkdown::cli
