// SPDX-License-Identifier: Apache-2.0
// The order of time in a record. Both clocks only go forward, and they go at the same pace; where
// they do not, an entry must say so:
// - `clock-step`: the wall clock was set. Its body has `by_ms`, by how much (negative: back).
// - `resumed`: the program began anew, perhaps after a reboot; the boot clock may start anew. Where
//   the wall clock stands before the last entry, its body has `back_ms`, by how much.
// Everything else keeps at - up within kPace of where `open`, or the last of these, left it.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "checklist/record/line.h"

namespace walkdown::record {

inline constexpr std::int64_t kPaceMs = 2000;  // our choice: above any drift between two entries

class Times {
 public:
  // Takes the next entry's times. A sentence where they do not fit.
  [[nodiscard]] std::optional<std::string> accept(const EntryView& entry);

  // What a `clock-step` entry at this moment must have as `by_ms`; nothing where none is needed.
  [[nodiscard]] std::optional<std::int64_t> step(std::int64_t at_ms, std::int64_t up_ms) const;

  // The boot clock can be compared with that of the last entry, and the wall clock kept its pace.
  [[nodiscard]] bool same_run(std::int64_t at_ms, std::int64_t up_ms) const;

  [[nodiscard]] std::int64_t at_ms() const { return at_ms_; }  // of the last entry
  [[nodiscard]] std::int64_t up_ms() const { return up_ms_; }

 private:
  [[nodiscard]] std::optional<std::string> check(const EntryView& entry) const;

  std::int64_t at_ms_ = 0;
  std::int64_t up_ms_ = 0;
  std::int64_t offset_ms_ = 0;  // at - up, as last told
};

}  // namespace walkdown::record
