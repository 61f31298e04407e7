// SPDX-License-Identifier: Apache-2.0
// One rule an entry kind: whether the entry may be, and what it changes. FORMAT.md is the manual.
// Internal to this folder.
//
// Whatever makes the day worse (somebody went in, thunder, a hold, a re-hook) is taken from anyone,
// unsigned. Whatever makes it better is signed by somebody who may.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "checklist/day/scene.h"

namespace walkdown::day {

struct Rule {
  std::string_view kind;
  Done (*check)(const Scene& scene);
  // Precondition: check() was fine with the same scene; `day` is the scene's.
  void (*apply)(const Scene& scene, Day& day, PinBook& book);
};

// Null where the kind changes nothing.
[[nodiscard]] const Rule* rule(std::string_view kind);

[[nodiscard]] std::span<const Rule> answer_rules();  // answer, second, pause
[[nodiscard]] std::span<const Rule> people_rules();  // enrol, in, out, tag-hang, tag-back
[[nodiscard]] std::span<const Rule> key_rules();     // key-offer, key-give, key-put, key-take
[[nodiscard]] std::span<const Rule> stop_rules();    // hold, lift, release, withdraw, close
[[nodiscard]] std::span<const Rule> waiver_rules();  // waive, waive-pin
[[nodiscard]] std::span<const Rule> event_rules();   // wind, thunder, rehook, suspended, show-time

// Breaks every answer that this event breaks.
void break_items(const Checklist& list, Day& day, PinBook& book, Event event, std::uint64_t n,
                 const std::string& why);
// After a break the last answered item comes up again, as long as its stage is still being worked
// on.
void ask_again(const Checklist& list, Day& day, std::uint64_t n, const std::string& why);
// The pins at the positions and of the addresses named count as unread from entry n on: all of them
// where nothing is named, or nothing that the plan knows.
struct Touched {
  std::vector<std::string> pins;
  std::vector<std::string> positions;
  std::string module;  // "M07/" or "M07/R2/", as addresses begin; empty: none
};
void undo(const Outside& outside, Day& day, PinBook& book, std::uint64_t n, const Touched& touched);
void fall(Day& day, std::string why);

// A claim by the entry's signer.
[[nodiscard]] Claim claim(const Scene& scene, std::string what);

}  // namespace walkdown::day
