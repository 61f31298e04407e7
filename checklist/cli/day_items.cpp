// SPDX-License-Identifier: Apache-2.0
// day show-time, answer, second, pause
#include <fmt/format.h>
#include <unistd.h>

#include <iostream>

#include "checklist/cli/clock_text.h"
#include "checklist/cli/day_parts.h"
#include "checklist/cli/files.h"
#include "checklist/record/sha256.h"

namespace walkdown::cli {
namespace {

struct ItemArguments {
  DayPaths day;
  std::string item;
  std::string value;
  std::string file;
  std::string when;
  std::optional<std::uint64_t> entry;
};

Status show_time(const ItemArguments& arguments) {
  return run_signed(arguments.day,
                    [&](desk::Desk& desk, const desk::Signer& signer) -> desk::Entry {
                      const auto time = typed_time(arguments.when, desk.now().at_ms);
                      if (!time) return time.error();
                      return desk::set_show_time(desk, signer, time->at_ms, time->utc_offset_min);
                    });
}

void ask(const day::Item& item) {
  fmt::print("{}\n", item.question);
  for (std::size_t i = 0; i < item.choices.size(); ++i) {
    fmt::print("  {}  {}\n", i + 1, item.choices[i]);
  }
  fmt::print("{}> ", item.unit.empty() ? "" : "in " + item.unit + ' ');
  (void)std::fflush(stdout);
}

// A choice may be typed by its number.
std::string chosen_of(const day::Item& item, const std::string& typed) {
  if (typed.size() != 1 || item.choices.empty()) return typed;
  const int number = typed[0] - '0';
  const bool among = number >= 1 && static_cast<std::size_t>(number) <= item.choices.size();
  return among ? item.choices[static_cast<std::size_t>(number) - 1] : typed;
}

// What was said, and how long the answer took: one that came with the command was never asked for,
// so it took no time and is flagged.
struct Heard {
  day::Said said;
  std::int64_t took_ms = 0;
};

Result<Heard> hear(const ItemArguments& arguments, const day::Item& item) {
  const record::SystemClock clock;
  const std::int64_t asked_up_ms = clock.up_ms();
  Heard heard;
  std::string typed = arguments.value;
  if (item.kind == day::Kind::file) {
    if (arguments.file.empty()) {
      return Error{Code::usage, "this item is answered by a file", item.id, "name it with --file"};
    }
    const auto bytes = read_file(arguments.file);
    if (!bytes) return bytes.error();
    heard.said.value = base_name(arguments.file);
    heard.said.sha256 = record::hex(record::sha256(*bytes));
    return heard;
  }
  if (typed.empty()) {
    ask(item);
    if (!std::getline(std::cin, typed)) {
      return Error{Code::usage, "nothing was answered", item.id, "type what was seen"};
    }
  }
  heard.took_ms = clock.up_ms() - asked_up_ms;
  if (item.kind != day::Kind::number) {
    heard.said.value = chosen_of(item, typed);
    return heard;
  }
  const auto milli = typed_milli(typed, item.id);
  if (!milli) return milli.error();
  heard.said.milli = *milli;
  return heard;
}

Result<Heard> ask_item(const ItemArguments& arguments, const desk::Copy& seen) {
  const day::Checklist& list = seen.folded().day().checklist();
  const std::size_t index = list.item(arguments.item);
  if (index != day::Checklist::npos) return hear(arguments, list.items[index]);
  std::string items;
  for (const auto& each : list.items) items += (items.empty() ? "" : ", ") + each.id;
  return Error{Code::usage, "the checklist has no such item", arguments.item,
               "choose one of these: " + items};
}

Status answer(const ItemArguments& arguments) {
  Heard heard;
  return run_signed(
      arguments.day,
      [&](desk::Desk& desk, const desk::Signer& signer) -> desk::Entry {
        // What came between the answer and this moment is no part of how long it took.
        const std::int64_t asked_up_ms = desk.now().up_ms - heard.took_ms;
        return desk::answer(desk, signer, arguments.item, heard.said, asked_up_ms);
      },
      [&](const desk::Copy& seen) -> Done {
        auto answered = ask_item(arguments, seen);
        if (!answered) return answered.error();
        heard = std::move(answered).value();
        return done();
      });
}

Result<std::uint64_t> waiting_entry(const ItemArguments& arguments, const day::State& state) {
  if (state.waiting.empty()) {
    return Error{Code::refused, "nothing waits for a second signature", "",
                 "let the first person sign first"};
  }
  std::string list;
  for (const auto& each : state.waiting) {
    if (arguments.entry ? each.n == *arguments.entry : state.waiting.size() == 1) {
      fmt::print("To confirm: entry {} by {}: {}\n", each.n, each.by, each.what);
      return each.n;
    }
    list += fmt::format("{}{} ({})", list.empty() ? "" : ", ", each.n, each.what);
  }
  if (arguments.entry) {
    return Error{Code::refused,
                 fmt::format("entry {} waits for no second signature", *arguments.entry), "",
                 "name one of these: " + list};
  }
  return Error{Code::usage, "several entries wait for a second signature", list, "name the entry"};
}

// What is confirmed is what stood there when the person looked, whatever came meanwhile.
Status second(const ItemArguments& arguments) {
  std::uint64_t entry = 0;
  return run_signed(
      arguments.day,
      [&](desk::Desk& desk, const desk::Signer& signer) {
        return desk::second(desk, signer, entry);
      },
      [&](const desk::Copy& seen) -> Done {
        const record::SystemClock clock;
        const auto found = waiting_entry(arguments, seen.state({clock.at_ms(), clock.up_ms()}));
        if (!found) return found.error();
        entry = *found;
        return done();
      });
}

Status pause(const ItemArguments& arguments) {
  return run_signed(arguments.day, [&](desk::Desk& desk, const desk::Signer& signer) {
    return desk::close_pause(desk, signer, arguments.item);
  });
}

}  // namespace

void add_day_items(CLI::App& day, Run& chosen) {
  auto arguments = std::make_shared<ItemArguments>();
  const auto signs = [&](CLI::App* command) {
    add_record(*command, arguments->day);
    add_signing(*command, arguments->day);
  };
  auto* time = add_part(day, "show-time", "When the show is; a second time moves it",
                        "day show-time 22:15 --as \"Mara Linde\" --record today.record", chosen,
                        arguments, show_time);
  time->add_option("WHEN", arguments->when, "22:15, or 2026-07-04T22:15:00+02:00")->required();
  signs(time);
  auto* answering = add_part(day, "answer", "Answer an item by what was seen",
                             "day answer edge --as \"Jon Weir\" --record today.record", chosen,
                             arguments, answer);
  answering->add_option("ITEM", arguments->item, "The item's name")->required();
  answering->add_option("VALUE", arguments->value,
                        "What was seen; default: the question is asked here");
  answering->add_option("--file", arguments->file, "The photo or permit, for such an item");
  signs(answering);
  auto* seconding =
      add_part(day, "second", "Look as well, and sign as the second person",
               "day second --as \"Jon Weir\" --record today.record", chosen, arguments, second);
  seconding->add_option("ENTRY", arguments->entry, "Which entry; default: the one that waits");
  signs(seconding);
  auto* pausing = add_part(day, "pause", "Close the pause at the end of a stage",
                           "day pause ground --as \"Mara Linde\" --record today.record", chosen,
                           arguments, pause);
  pausing->add_option("STAGE", arguments->item, "The stage's name")->required();
  signs(pausing);
}

}  // namespace walkdown::cli
