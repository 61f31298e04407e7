// SPDX-License-Identifier: Apache-2.0
// day key offer, give, put, take
#include "checklist/cli/day_parts.h"

namespace walkdown::cli {
namespace {

struct KeyArguments {
  DayPaths day;
  std::string key;
  std::string place;
};

// The key that --name names, or the only one there is.
Result<std::string> key_of(const KeyArguments& arguments, const desk::Desk& desk) {
  if (!arguments.key.empty()) return arguments.key;
  const auto& keys = desk.checklist().keys;
  if (keys.size() == 1) return keys.front().name;
  return Error{Code::usage, keys.empty() ? "the checklist has no key" : "there are several keys",
               "", keys.empty() ? "" : "choose one with --name"};
}

template <typename What>
Status with_key(const KeyArguments& arguments, const What& what) {
  return run_signed(arguments.day,
                    [&](desk::Desk& desk, const desk::Signer& signer) -> desk::Entry {
                      const auto key = key_of(arguments, desk);
                      if (!key) return key.error();
                      return what(desk, signer, *key);
                    });
}

Status offer(const KeyArguments& arguments) { return with_key(arguments, desk::offer_key); }
Status give(const KeyArguments& arguments) { return with_key(arguments, desk::give_key); }
Status take(const KeyArguments& arguments) { return with_key(arguments, desk::take_key); }
Status put(const KeyArguments& arguments) {
  return with_key(arguments,
                  [&](desk::Desk& desk, const desk::Signer& signer, const std::string& key) {
                    return desk::put_key(desk, signer, key, arguments.place);
                  });
}

}  // namespace

void add_day_keys(CLI::App& day, Run& chosen) {
  auto* key = day.add_subcommand("key", "Who holds a key: one place or one hand at a time");
  key->require_subcommand(1);
  key->footer(
      "Example: walkdown day key take --as \"Mara Linde\" --record today.record\n"
      "A hand-over is two signatures: the receiver offers to take it, then the holder gives it. "
      "Until both have signed the holder holds it.");
  auto arguments = std::make_shared<KeyArguments>();
  const auto finish = [&](CLI::App* command) {
    command->add_option("--name", arguments->key, "Which key, where there are several");
    add_record(*command, arguments->day);
    add_signing(*command, arguments->day);
  };
  finish(add_part(*key, "take", "Take it out of a place",
                  "day key take --as \"Mara Linde\" --record today.record", chosen, arguments,
                  take));
  finish(add_part(*key, "offer", "Sign for it; the holder has to sign too",
                  "day key offer --as \"Jon Weir\" --record today.record", chosen, arguments,
                  offer));
  finish(add_part(*key, "give", "Give it to the one who has signed for it",
                  "day key give --as \"Mara Linde\" --record today.record", chosen, arguments,
                  give));
  auto* putting = add_part(*key, "put", "Put it into a place",
                           "day key put \"lock box\" --as \"Mara Linde\" --record today.record",
                           chosen, arguments, put);
  putting->add_option("PLACE", arguments->place, "Where, as the checklist names it")->required();
  finish(putting);
}

}  // namespace walkdown::cli
