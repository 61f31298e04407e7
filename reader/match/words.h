// SPDX-License-Identifier: Apache-2.0
// The words in which verdicts and findings are given out, in files, on screens and in records.
// They are an interface: never rename one.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

namespace walkdown::match {

// What the readings of one pin say. Only `fits` is good.
enum class Verdict : std::uint8_t {
  fits,      // inside the worst case, and likely to be what was planned
  doubtful,  // inside the worst case, but something wrong explains it better
  low,       // below the worst case, more than the lead alone
  high,      // above the worst case
  open,      // above the tester's range
  shorted,   // "short": no more than the lead itself
  unsteady,  // repeats differ by more than the tester explains
  stray,     // a reading where nothing is planned
  unread,    // planned, and no reading
  stale,     // the readings are too old, or the pin was re-hooked since
};

// What most likely happened.
enum class Kind : std::uint8_t {
  // one pin
  open,
  shorted,  // "short"
  missing_igniter,
  extra_igniter,
  poor_joint,
  leak,
  intermittent,
  stray,
  wrong_lead,
  wrong_igniter,
  unknown,
  // several pins
  swapped,
  shifted,
  reversed,
  rails_exchanged,
  modules_exchanged,
  // the field
  tester_offset,
  wire_differs,
};

inline constexpr std::size_t kVerdicts = 10;
inline constexpr std::size_t kKinds = 18;

// The contract word: Verdict::shorted is "short", Kind::rails_exchanged is "rails-exchanged".
[[nodiscard]] std::string_view text(Verdict verdict);
[[nodiscard]] std::string_view text(Kind kind);

// Back again; empty for any other word.
[[nodiscard]] std::optional<Verdict> parse_verdict(std::string_view word);
[[nodiscard]] std::optional<Kind> parse_kind(std::string_view word);

// True for the kinds that move loads: swapped to modules_exchanged.
[[nodiscard]] constexpr bool moves_loads(Kind kind) {
  return kind >= Kind::swapped && kind <= Kind::modules_exchanged;
}

}  // namespace walkdown::match
